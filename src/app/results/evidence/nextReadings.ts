import { html } from "lit";
import type { EvidencePartMaker } from "./evidencePart.ts";

/** Which readings would tell most, and why. */
export const nextReadings: EvidencePartMaker = ({ assessment, lengths, isReady }) => {
  const next = assessment.nextReadings;
  if (next.length === 0 || !isReady) return null;
  return {
    title: "What to read next",
    isOpen: assessment.verdict === "measure-more",
    content: html`<ol class="lines next">
      ${next.map(
        (reading) => html`<li>
          <strong class="figures">
            ${"position" in reading ? `At about ${lengths.spot(reading.position)}` : "End float"}
          </strong>
          <span>${reading.why}</span>
        </li>`,
      )}
    </ol>`,
  };
};
