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
    /** A notice that was dismissed, or acted upon. */
    "tightspot-notice-done": CustomEvent<Notice>;
  }
}

/**
 * The notices to show once another has come. What went wrong stays until it is dismissed; what was done, until
 * something else is done.
 */
export function withNotice(notices: readonly Notice[], next: Notice): readonly Notice[] {
  const staying = notices.filter(({ tone }) => tone === "wrong" || next.tone === "wrong");
  return [...staying.filter(({ text }) => text !== next.text), next];
}

/** Shows a notice. */
export function notify(from: EventTarget, notice: Notice): void {
  from.dispatchEvent(new CustomEvent("tightspot-notice", { detail: notice, bubbles: true, composed: true }));
}
