import type { EvidencePart } from "./evidence.ts";

/** The readings that would say most about the decision, each with the reason. */
export const nextReadings: EvidencePart = ({ assessment, lengths }) => {
  if (assessment.nextReadings.length === 0) return null;
  const entries = assessment.nextReadings.map((reading) => ({
    lead: "endFloat" in reading ? "The end float" : `At about ${lengths.spot(reading.position)}`,
    text: reading.why,
  }));
  return { title: "What to read next", blocks: [{ kind: "list", entries }] };
};
