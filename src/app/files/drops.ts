import type { ReactiveController, ReactiveControllerHost } from "lit";

/** Files dropped anywhere on the page, and whether one is held over it. */
export class Drops implements ReactiveController {
  isOver = false;

  constructor(
    private readonly host: ReactiveControllerHost,
    private readonly take: (files: readonly File[]) => void,
  ) {
    host.addController(this);
  }

  hostConnected(): void {
    window.addEventListener("dragover", this.#onDragOver);
    window.addEventListener("dragleave", this.#onDragLeave);
    window.addEventListener("drop", this.#onDrop);
  }

  hostDisconnected(): void {
    window.removeEventListener("dragover", this.#onDragOver);
    window.removeEventListener("dragleave", this.#onDragLeave);
    window.removeEventListener("drop", this.#onDrop);
  }

  readonly #onDragOver = (event: DragEvent): void => {
    if (event.dataTransfer?.types.includes("Files") !== true) return;
    event.preventDefault();
    this.#become(true);
  };

  readonly #onDragLeave = (event: DragEvent): void => {
    if (event.relatedTarget === null) this.#become(false);
  };

  readonly #onDrop = (event: DragEvent): void => {
    const files = Array.from(event.dataTransfer?.files ?? []);
    if (files.length === 0) return;
    event.preventDefault();
    this.#become(false);
    this.take(files);
  };

  #become(isOver: boolean): void {
    if (this.isOver === isOver) return;
    this.isOver = isOver;
    this.host.requestUpdate();
  }
}
