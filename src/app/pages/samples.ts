/** A sample inspection, loaded when it is opened. */
export interface Sample {
  /** Its file's name without the ending. */
  readonly name: string;
  readonly slide: string;
  readonly shows: string;
  /** Its file, or null if it cannot be loaded. */
  load(): Promise<File | null>;
}

/** From least to most work. */
const LABELS = [
  ["leave-alone-drilling-table", "Drilling table", "in order"],
  [
    "correct-end-float-surface-grinder-cross-feed",
    "Surface grinder, cross feed",
    "play in the thrust bearing",
  ],
  ["adjust-nut-lathe-2-cross-slide", "Lathe 2, cross slide", "a worn nut that can be taken up"],
  ["replace-nuts-mill-table", "Mill, table", "a worn nut that cannot"],
  ["remake-screw-worn-middle-boring-mill-table", "Boring mill, table", "a screw worn in the middle"],
  ["remake-screw-worn-at-one-end-planer-head", "Planer, tool head", "a screw worn at one end"],
  ["before-and-after-mill-saddle", "Mill, saddle", "before and after new nuts"],
  ["before-and-after-lathe-1-cross-slide", "Lathe 1, cross slide", "before and after adjusting"],
  ["running-in-boring-mill-saddle", "Boring mill 2, saddle", "six surveys while running in"],
  ["positioning-pattern-mill-table", "Pattern mill, table", "positions read on a scale"],
  ["measure-more-lathe-4-cross-slide", "Lathe 4, cross slide", "too few readings to tell"],
  ["no-verdict-mill-knee", "Mill, knee", "a screw that holds up a load"],
] as const;

/** The address of each: a file beside the page, or data within the single file. */
const ADDRESSES = import.meta.glob<string>("../../../sample-data/*.json", {
  query: "?url",
  import: "default",
  eager: true,
});

export const SAMPLES: readonly Sample[] = LABELS.map(([name, slide, shows]) => ({
  name,
  slide,
  shows,
  load: async () => {
    const address = ADDRESSES[`../../../sample-data/${name}.json`];
    if (address === undefined) throw new Error(`There is no sample ${name}.`);
    const response = await fetch(address).catch(() => null);
    return response?.ok === true ? new File([await response.blob()], `${name}.json`) : null;
  },
}));
