import * as z from "zod/mini";

/** How a gauge is listened to. It belongs to the gauge and this device, not to an inspection. */
const schema = z.object({
  baudRate: z.number(),
  format: z.enum(["8N1", "7E1", "7O1", "7N2", "8E1", "8O1"]),
  pick: z.union([
    z.object({ by: z.literal("itself") }),
    z.object({ by: z.literal("place"), place: z.number() }),
    z.object({ by: z.literal("pattern"), pattern: z.string() }),
  ]),
  takesByItself: z.boolean(),
  /** Whether it was connected when the page was left. */
  isConnected: z.boolean(),
});

export type GaugeSettings = z.infer<typeof schema>;
export const FORMATS = schema.shape.format.options;
export const BAUD_RATES = [1200, 2400, 4800, 9600, 19200, 38400, 57600, 115200];

const USUAL: GaugeSettings = {
  baudRate: 9600,
  format: "8N1",
  pick: { by: "itself" },
  takesByItself: true,
  isConnected: false,
};
const KEY = "tightspot-gauge";

/** The settings of last time; the usual ones where there are none. */
export function gaugeSettings(): GaugeSettings {
  try {
    const kept = schema.safeParse(JSON.parse(localStorage.getItem(KEY) ?? "null"));
    return kept.success ? kept.data : USUAL;
  } catch {
    return USUAL;
  }
}

/** Keeps the settings for next time, where the browser keeps anything. */
export function keepGaugeSettings(settings: GaugeSettings): void {
  try {
    localStorage.setItem(KEY, JSON.stringify(settings));
  } catch {
    // They are as good as ever until the page is closed.
  }
}
