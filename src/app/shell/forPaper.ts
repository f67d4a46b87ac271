import type { ReactiveController, ReactiveControllerHost } from "lit";

let isPrinting = false;
window.addEventListener("beforeprint", () => {
  isPrinting = true;
});
window.addEventListener("afterprint", () => {
  isPrinting = false;
});

/** Whether the page is being made ready for paper, which waits for nothing. */
export function isForPaper(): boolean {
  return isPrinting;
}

/** Makes an element ready for paper: one that is there when printing begins, and one that only comes to be for it. */
export class ForPaper implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #makeReady: () => void;

  constructor(host: ReactiveControllerHost, makeReady: () => void) {
    this.#host = host;
    this.#makeReady = makeReady;
    host.addController(this);
  }

  hostConnected(): void {
    window.addEventListener("beforeprint", this.#makeReady);
    if (isPrinting) void this.#host.updateComplete.then(this.#makeReady);
  }

  hostDisconnected(): void {
    window.removeEventListener("beforeprint", this.#makeReady);
  }
}
