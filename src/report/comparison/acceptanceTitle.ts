import type { Conformance } from "../../analysis/assessment.ts";
import type { Acceptance } from "../../analysis/comparison/comparison.ts";
import type { Lengths } from "../../inspection/lengths.ts";

const CLAIM: Readonly<Record<Conformance, (limit: string) => string>> = {
  proven: (limit) => `Proven: lost motion keeps the limit of ${limit}`,
  disproven: (limit) => `Disproven: lost motion exceeds the limit of ${limit}`,
  "not proven": (limit) => `Not proven: whether lost motion keeps the limit of ${limit} is open`,
};

/** Whether the limit is kept, in a line that needs no colour. */
export function acceptanceTitle({ conformance, limit }: Acceptance, lengths: Lengths): string {
  return CLAIM[conformance](lengths.position(limit));
}
