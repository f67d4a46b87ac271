import { html, nothing } from "lit";

/** What can be asked for of the part of the travel that is shown. */
export interface Zooming {
  readonly closer: () => void;
  readonly back: () => void;
  readonly whole: () => void;
  /** Along the travel, by a share of what is shown. */
  readonly along: (share: number) => void;
}

/** What one press goes along by. */
const HALF = 0.5;

export function zoomButtons(isWhole: boolean, { closer, back, whole, along }: Zooming) {
  const button = (name: string, sign: string, act: () => void, off = false) => html`<button
    type="button"
    class="quiet"
    aria-label=${name}
    title=${name}
    ?disabled=${off}
    @click=${act}
  >
    <span aria-hidden="true">${sign}</span>
  </button>`;
  return html`<div class="zoom screen-only">
    ${
      isWhole
        ? nothing
        : html`${button("Back along the travel", "‹", () => along(-HALF))}
            ${button("Further along the travel", "›", () => along(HALF))}
            <button type="button" class="quiet whole" @click=${whole}>Whole travel</button>`
    }
    ${button("Show it closer", "+", closer)} ${button("Show more of it", "−", back, isWhole)}
  </div>`;
}
