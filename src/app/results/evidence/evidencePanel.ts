import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { Assessment } from "../../../analysis/assessment.ts";
import { lengthsIn } from "../../../inspection/lengths.ts";
import type { Slide } from "../../../inspection/schema.ts";
import type { Part } from "../../../report/blocks.ts";
import { chances } from "../../../report/evidence/chances.ts";
import { checks } from "../../../report/evidence/checks.ts";
import type { EvidencePart } from "../../../report/evidence/evidence.ts";
import { EVIDENCE } from "../../../report/evidence/index.ts";
import { nextReadings } from "../../../report/evidence/nextReadings.ts";
import { numbers } from "../../../report/evidence/numbers.ts";
import { positioning } from "../../../report/evidence/positioning.ts";
import { controls, sectionFold } from "../../ui/sharedStyles.ts";
import { isReady } from "../headline.ts";
import { blockTemplate } from "./blocks.ts";
import evidencePanelCss from "./evidencePanel.css?inline";

/** Parts that say nothing before there are stations enough for a verdict. */
const AFTER_FIRST_VERDICT: readonly EvidencePart[] = [nextReadings, chances, numbers];

/** Parts that may be open from the start, and when they are. */
const OPEN = new Map<EvidencePart, (assessment: Assessment) => boolean>([
  [nextReadings, ({ verdict }) => verdict === "measure-more"],
  [chances, () => true],
  [checks, ({ checks: findings }) => findings.some(({ severity }) => severity !== "note")],
  [positioning, () => true],
]);

/** What the verdict rests on, each part behind its title. */
@customElement("tightspot-basis")
export class EvidencePanel extends LitElement {
  static override styles = [controls, sectionFold, unsafeCSS(evidencePanelCss)];

  @property({ attribute: false }) slide: Slide | null = null;
  @property({ attribute: false }) assessment: Assessment | null = null;

  override render() {
    const { slide, assessment } = this;
    if (slide === null || assessment === null) return nothing;
    const assessed = { assessment, slide, lengths: lengthsIn(slide.units, assessment.resolution) };
    return html`<section class="sheet" aria-label="What the verdict rests on">
      ${EVIDENCE.map((make) => {
        const part = make(assessed);
        // Each part stays at its place in the list, so that what was opened stays open.
        if (part === null || (!isReady(assessment) && AFTER_FIRST_VERDICT.includes(make))) return nothing;
        return html`<details ?open=${OPEN.get(make)?.(assessment)}>
          <summary><h2>${part.title}${count(part)}</h2></summary>
          <div class="content">${part.blocks.map(blockTemplate)}</div>
        </details>`;
      })}
    </section>`;
  }
}

/** How many entries stand behind the title. */
function count({ blocks: [block] }: Part): string {
  return block?.kind === "list" ? ` (${block.entries.length})` : "";
}
