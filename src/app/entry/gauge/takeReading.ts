/** A value is taken once nothing has followed it for so long, in milliseconds: no hand presses a button faster. */
const SETTLED = 400;
/** So many values within so long were not sent by hand, one for each station. */
const TOO_MANY = 3;
const WITHIN = 5000;

export interface Taker {
  /** A value has come in. */
  came(value: string): void;
  close(): void;
}

/**
 * Takes values that the gauge's button sends, and none of a gauge that sends without being asked.
 *
 * @param take is given each value to take
 * @param flood is called, instead, when values come in faster than a slide can be moved
 */
export function takerOf(take: (value: string) => void, flood: () => void): Taker {
  let waiting: ReturnType<typeof setTimeout> | undefined;
  let times: readonly number[] = [];
  let burst = 0;
  return {
    came(value) {
      burst = waiting === undefined ? 1 : burst + 1;
      clearTimeout(waiting);
      if (burst >= TOO_MANY) {
        waiting = setTimeout(() => {
          waiting = undefined;
        }, SETTLED);
        flood();
        return;
      }
      waiting = setTimeout(() => {
        waiting = undefined;
        const now = Date.now();
        times = [...times.filter((time) => now - time < WITHIN), now];
        if (times.length >= TOO_MANY) {
          times = [];
          flood();
        } else take(value);
      }, SETTLED);
    },
    close: () => clearTimeout(waiting),
  };
}
