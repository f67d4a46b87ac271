import type { ReactiveController, ReactiveControllerHost } from "lit";

/** What pasted text is called as a file. */
export const PASTED = "What was pasted";

/** Tables and inspections pasted anywhere on the page but into a field, which keeps what is pasted there. */
export class Pastes implements ReactiveController {
  constructor(
    host: ReactiveControllerHost,
    private readonly take: (file: File) => void,
  ) {
    host.addController(this);
  }

  hostConnected(): void {
    window.addEventListener("paste", this.#onPaste);
  }

  hostDisconnected(): void {
    window.removeEventListener("paste", this.#onPaste);
  }

  readonly #onPaste = (event: ClipboardEvent): void => {
    const [at] = event.composedPath();
    if (event.defaultPrevented || (at instanceof HTMLElement && at.matches("input, textarea, select")))
      return;
    const text = event.clipboardData?.getData("text/plain") ?? "";
    // A word or two are neither a table nor an inspection.
    if (!text.trim().includes("\n")) return;
    event.preventDefault();
    this.take(new File([text], PASTED));
  };
}
