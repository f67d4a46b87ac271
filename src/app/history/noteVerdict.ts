declare global {
  interface HTMLElementEventMap {
    /** The verdict that is shown is acted upon: it is to be noted as it is. */
    "tightspot-note-verdict": CustomEvent<null>;
  }
}

/** Asks for the verdict that is shown to be noted in the slide's history. */
export function noteVerdict(from: EventTarget): void {
  from.dispatchEvent(new CustomEvent("tightspot-note-verdict", { bubbles: true, composed: true }));
}
