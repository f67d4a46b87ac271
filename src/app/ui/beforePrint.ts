import type { ReactiveController, ReactiveControllerHost } from "lit";

let printing = false;
window.addEventListener("beforeprint", () => {
  printing = true;
});
window.addEventListener("afterprint", () => {
  printing = false;
});

/** Whether the page is being printed: elements then render everything at once. */
export function isPrinting(): boolean {
  return printing;
}

/** Prepares an element for printing, also if it is added to the page while printing. */
export class BeforePrint implements ReactiveController {
  readonly #host: ReactiveControllerHost;
  readonly #prepare: () => void;

  constructor(host: ReactiveControllerHost, prepare: () => void) {
    this.#host = host;
    this.#prepare = prepare;
    host.addController(this);
  }

  hostConnected(): void {
    window.addEventListener("beforeprint", this.#prepare);
    if (printing) void this.#host.updateComplete.then(this.#prepare);
  }

  hostDisconnected(): void {
    window.removeEventListener("beforeprint", this.#prepare);
  }
}
