/** The ways of measuring. Not in the schema, so that importing them does not load zod. */
export const METHODS = ["push-pull", "indicator-pair", "dial-pair", "positioning"] as const;

export type Method = (typeof METHODS)[number];

/** Whether a survey by this method may have pairs of readings. */
export function takesPairs(method: Method): boolean {
  return method === "indicator-pair" || method === "dial-pair";
}
