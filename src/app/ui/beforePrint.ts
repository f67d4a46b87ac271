import type { ReactiveController, ReactiveControllerHost } from "lit";

let printing = false;
window.addEventListener("beforeprint", () => {
  printing = true;
});
window.addEventListener("afterprint", () => {
  printing = false;
});

/** Whether the page is being made ready for paper, which waits for nothing. */
export function isPrinting(): boolean {
  return printing;
}

/** Makes an element ready for paper: one that is there when printing begins, and one that only comes to be for it. */
export class BeforePrint implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #makeReady: () => void;

  constructor(host: ReactiveControllerHost, makeReady: () => void) {
    this.#host = host;
    this.#makeReady = makeReady;
    host.addController(this);
  }

  hostConnected(): void {
    window.addEventListener("beforeprint", this.#makeReady);
    if (printing) void this.#host.updateComplete.then(this.#makeReady);
  }

  hostDisconnected(): void {
    window.removeEventListener("beforeprint", this.#makeReady);
  }
}
