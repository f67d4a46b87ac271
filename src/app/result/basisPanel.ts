import { html, LitElement, nothing } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { Assessment } from "../../analysis/assessment.ts";
import { lengthsIn } from "../../inspection/lengths.ts";
import type { Slide } from "../../inspection/schema.ts";
import { controls } from "../style/controls.ts";
import { partFold } from "../style/fold.ts";
import { alternatives } from "./basis/alternatives.ts";
import { assumed } from "./basis/assumed.ts";
import { chances } from "./basis/chances.ts";
import { checks } from "./basis/checks.ts";
import { nextReadings } from "./basis/nextReadings.ts";
import { numbers } from "./basis/numbers.ts";
import type { PartMaker } from "./basis/part.ts";
import { positioning } from "./basis/positioning.ts";
import { uncertainty } from "./basis/uncertainty.ts";
import { basisStyle } from "./basisStyle.ts";
import { isReady } from "./headline.ts";

/** In the order in which they are asked for. */
const PARTS: readonly PartMaker[] = [
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
export class BasisPanel extends LitElement {
  static override styles = [controls, partFold, basisStyle];

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
