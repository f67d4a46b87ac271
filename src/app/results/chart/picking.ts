/** A pointer that has gone so far, in pixels, picks a stretch out; one that has not, points. */
const PICKED_FROM = 10;

/** A stretch of a chart that is being picked out with a pointer: from where it was pressed to where it is, in pixels. */
export interface Picking {
  readonly from: number;
  readonly to: number;
}

export function isPicked({ from, to }: Picking): boolean {
  return Math.abs(to - from) >= PICKED_FROM;
}

/** How far across what hears them the events of a pointer are, in pixels. */
export function across({ clientX, currentTarget }: MouseEvent): number {
  if (!(currentTarget instanceof Element)) throw new Error("A pointer's events are heard on an element.");
  return clientX - currentTarget.getBoundingClientRect().left;
}
