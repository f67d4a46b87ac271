import { html, LitElement, nothing, unsafeCSS } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { Assessment } from "../../../analysis/assessment.ts";
import { lengthsIn } from "../../../inspection/lengths.ts";
import type { Slide } from "../../../inspection/schema.ts";
import { controls, sectionFold } from "../../ui/sharedStyles.ts";
import { isReady } from "../headline.ts";
import { alternatives } from "./alternatives.ts";
import { assumed } from "./assumed.ts";
import { chances } from "./chances.ts";
import { checks } from "./checks.ts";
import evidencePanelCss from "./evidencePanel.css?inline";
import type { EvidencePartMaker } from "./evidencePart.ts";
import { nextReadings } from "./nextReadings.ts";
import { numbers } from "./numbers.ts";
import { positioning } from "./positioning.ts";
import { uncertainty } from "./uncertainty.ts";

/** In the order in which they are asked for. */
const PARTS: readonly EvidencePartMaker[] = [
  nextReadings,
  chances,
  checks,
  alternatives,
  numbers,
  positioning,
  uncertainty,
  assumed,
];

/** What the verdict rests on, part by part, each opened on asking. */
@customElement("tightspot-basis")
export class EvidencePanel extends LitElement {
  static override styles = [controls, sectionFold, unsafeCSS(evidencePanelCss)];

  @property({ attribute: false }) slide: Slide | null = null;
  @property({ attribute: false }) assessment: Assessment | null = null;

  override render() {
    const { slide, assessment } = this;
    if (slide === null || assessment === null) return nothing;
    const lengths = lengthsIn(slide.units, assessment.resolution);
    const basis = { assessment, slide, lengths, isReady: isReady(assessment) };
    return html`<section class="sheet" aria-label="What the verdict rests on">
      ${PARTS.map((make) => {
        const part = make(basis);
        if (part === null) return nothing;
        return html`<details ?open=${part.isOpen}>
          <summary><h2>${part.title}</h2></summary>
          <div class="content">${part.content}</div>
        </details>`;
      })}
    </section>`;
  }
}
