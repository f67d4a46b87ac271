import { html, LitElement, unsafeCSS } from "lit";
import { customElement, property } from "lit/decorators.js";
import type { UnitDoubt } from "../../../intake/unitDoubts.ts";
import { capitalised } from "../../../report/words.ts";
import { controls } from "../../ui/sharedStyles.ts";
import unitQuestionCss from "./unitQuestion.css?inline";

/** The answer: the columns in doubt, and their unit. */
export interface UnitSaid {
  readonly columns: readonly number[];
  readonly unit: string;
}

declare global {
  interface HTMLElementEventMap {
    "tightspot-unit-said": CustomEvent<UnitSaid>;
  }
}

const UNIT_WORDS: Readonly<Record<string, string>> = {
  mm: "millimetres",
  in: "inches",
  cm: "centimetres",
  m: "metres",
  thou: "thousandths of an inch",
  µm: "micrometres",
  "mm/100": "hundredths of a millimetre",
  divisions: "divisions of the dial",
};

/** Asks for the unit of figures that make no sense in the unit that they were read in. */
@customElement("tightspot-unit-question")
export class UnitQuestion extends LitElement {
  static override styles = [controls, unsafeCSS(unitQuestionCss)];

  @property({ attribute: false }) doubt: UnitDoubt | null = null;

  override render() {
    const { doubt } = this;
    if (doubt === null) return "";
    const { what, unit, likely } = doubt;
    const sentence = `${capitalised(what)}.`;
    const choices = [...likely.slice(0, 3), unit];
    return html`<div role="alert">
      <p>${sentence} What ${doubt.of === "lost motion" ? "is it" : "are they"} in?</p>
      <div class="choices">
        ${choices.map(
          (choice) => html`<button type="button" @click=${() => this.#say(choice)}>
            ${capitalised(UNIT_WORDS[choice] ?? choice)}${choice === unit ? ", after all" : ""}
          </button>`,
        )}
      </div>
    </div>`;
  }

  #say(unit: string): void {
    const detail = { columns: this.doubt?.columns ?? [], unit };
    this.dispatchEvent(new CustomEvent("tightspot-unit-said", { detail }));
  }
}
