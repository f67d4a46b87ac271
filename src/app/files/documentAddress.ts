import type { ReactiveController, ReactiveControllerHost } from "lit";

/** The address of a document made by the page, valid while the host is on the page. */
export class DocumentAddress implements ReactiveController {
  #text = "";
  #address = "";

  constructor(host: ReactiveControllerHost) {
    host.addController(this);
  }

  /** @param text the HTML document */
  of(text: string): string {
    if (text !== this.#text) {
      URL.revokeObjectURL(this.#address);
      this.#text = text;
      this.#address = URL.createObjectURL(new Blob([text], { type: "text/html" }));
    }
    return this.#address;
  }

  hostDisconnected(): void {
    URL.revokeObjectURL(this.#address);
    this.#text = "";
  }
}
