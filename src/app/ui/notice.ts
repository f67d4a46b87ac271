/** A short message to the user, with one action if there is something to do. */
export interface Notice {
  readonly text: string;
  /** A screen reader speaks `wrong` at once. */
  readonly tone: "done" | "wrong";
  readonly action?: { readonly label: string; readonly act: () => void };
}

declare global {
  interface HTMLElementEventMap {
    "tightspot-notice": CustomEvent<Notice>;
    /** The notice was dismissed, or its action taken. */
    "tightspot-notice-done": CustomEvent<Notice>;
  }
}

/** The notices after a new one. An error stays until it is dismissed, any other notice until the next one. */
export function withNotice(notices: readonly Notice[], next: Notice): readonly Notice[] {
  const remaining = notices.filter(({ tone }) => tone === "wrong" || next.tone === "wrong");
  return [...remaining.filter(({ text }) => text !== next.text), next];
}

/** Shows a notice. */
export function notify(from: EventTarget, notice: Notice): void {
  from.dispatchEvent(new CustomEvent("tightspot-notice", { detail: notice, bubbles: true, composed: true }));
}
