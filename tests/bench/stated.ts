import type { Truth } from "../simulator/simulatedSlide.ts";
import type { Judgement } from "./score.ts";

/** Where one group of stated chances ends and the next begins. */
const EDGES = [0, 0.5, 0.7, 0.8, 0.9, 0.95, 0.98, 0.995] as const;

/** How often the likeliest verdict was right, by the chance that was stated of it: the one should be as the other. */
export class StatedChances {
  private readonly groups = EDGES.map(() => ({ stated: 0, right: 0, cases: 0 }));

  add({ bestGuess, chance }: Judgement, truth: Truth): void {
    if (chance === undefined) return;
    const group = this.groups[EDGES.findLastIndex((edge) => chance >= edge)];
    if (group === undefined) return;
    group.cases++;
    group.stated += chance;
    if (bestGuess === truth.verdict) group.right++;
  }

  lines(): readonly string[] {
    return this.groups.flatMap(({ stated, right, cases }, index) => {
      if (cases === 0) return [];
      const mean = (sum: number): string => ((100 * sum) / cases).toFixed(1);
      const from = `chance stated from ${100 * EDGES[index]} %`;
      return [`${from.padEnd(34)}${mean(stated)} on average, right in ${mean(right)} of ${cases}`];
    });
  }
}
