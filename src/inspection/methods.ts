/** The ways of measuring. Apart from the schema, so that what only asks about them need not load that. */
export const METHODS = ["push-pull", "indicator-pair", "dial-pair", "positioning"] as const;

export type Method = (typeof METHODS)[number];

/** Whether a survey by this method may hold pairs of readings. */
export function takesPairs(method: Method): boolean {
  return method === "indicator-pair" || method === "dial-pair";
}
