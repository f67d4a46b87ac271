/** A short message to the reader, with one thing to do about it where there is one. */
export interface Notice {
  readonly text: string;
  /** `wrong` is spoken at once by a screen reader. */
  readonly tone: "done" | "wrong";
  readonly action?: { readonly label: string; readonly act: () => void };
}

declare global {
  interface HTMLElementEventMap {
    "tightspot-notice": CustomEvent<Notice>;
  }
}

/** Shows a notice, in place of the one before. */
export function notify(from: EventTarget, notice: Notice): void {
  from.dispatchEvent(new CustomEvent("tightspot-notice", { detail: notice, bubbles: true, composed: true }));
}
