/** A file to open, and the name to keep it under where it has one already: a sample. */
export interface Opening {
  readonly file: File;
  readonly id?: string;
}

declare global {
  interface HTMLElementEventMap {
    "tightspot-open": CustomEvent<Opening>;
  }
}

/** Asks the page to open a file. */
export function askToOpen(from: EventTarget, opening: Opening): void {
  from.dispatchEvent(new CustomEvent("tightspot-open", { detail: opening, bubbles: true, composed: true }));
}
