import { html, nothing } from "lit";
import type { Counts } from "../../../intake/typedFigure.ts";

/** What stands beside a whole figure now and then, by what it counts: a fraction of an inch, half a division. */
const FRACTION_KEYS: Readonly<Record<Counts, string | null>> = {
  mm: null,
  in: "/",
  divisions: "½",
  plain: null,
};

const SPOKEN: Readonly<Record<string, string>> = { "/": "slash", "½": "half", "−": "minus", ".": "point" };

export interface Keypad {
  readonly counts: Counts;
  /** What Enter does here. */
  readonly enter: string;
  readonly pressed: (text: string) => void;
  readonly erased: () => void;
  readonly entered: () => void;
}

/** Large keys for a phone at the machine. They never take the cursor out of the field. */
export function keypad({ counts, enter, pressed, erased, entered }: Keypad) {
  const key = (text: string, type = text, rank = "") => html`<button
    type="button"
    tabindex="-1"
    class=${rank}
    aria-label=${SPOKEN[text] ?? nothing}
    @click=${() => pressed(type)}
  >
    ${text}
  </button>`;
  const fraction = FRACTION_KEYS[counts];
  return html`<div class="keypad" role="group" aria-label="Keypad" @pointerdown=${keepCursor}>
    ${["7", "8", "9"].map((digit) => key(digit))}
    <button type="button" tabindex="-1" aria-label="Erase" @click=${erased}>⌫</button>
    ${["4", "5", "6"].map((digit) => key(digit))} ${key("−", "-")} ${["1", "2", "3"].map((digit) => key(digit))}
    <button type="button" tabindex="-1" class="chief enter" @click=${entered}>${enter}</button>
    ${fraction === null ? key("0", "0", "wide") : html`${key(fraction)} ${key("0")}`} ${key(".")}
  </div>`;
}

function keepCursor(event: Event): void {
  event.preventDefault();
}
