import type { ReactiveController, ReactiveControllerHost } from "lit";

/** The name of pasted text as a file. */
export const PASTED = "What was pasted";

/** How the browser passes files to an installed page; the language's own types lack it. */
interface LaunchQueue {
  setConsumer(open: (launch: { readonly files?: readonly FileSystemFileHandle[] }) => void): void;
}

/**
 * Files that reach the page other than by its own buttons: dropped on it, pasted into it, or opened with the installed
 * page by the system.
 */
export class IncomingFiles implements ReactiveController {
  /** Whether a file is being dragged over the page. */
  isDragging = false;

  /**
   * @param open is called with the files
   * @param fail is called if files opened by the system can no longer be read
   */
  constructor(
    private readonly host: ReactiveControllerHost,
    private readonly open: (files: readonly File[]) => void,
    private readonly fail: () => void,
  ) {
    host.addController(this);
  }

  hostConnected(): void {
    window.addEventListener("dragover", this.#onDragOver);
    window.addEventListener("dragleave", this.#onDragLeave);
    window.addEventListener("drop", this.#onDrop);
    window.addEventListener("paste", this.#onPaste);
    if (!("launchQueue" in window)) return;
    (window.launchQueue as LaunchQueue).setConsumer(({ files = [] }) => {
      if (files.length === 0) return;
      void Promise.all(files.map((handle) => handle.getFile())).then(this.open, this.fail);
    });
  }

  hostDisconnected(): void {
    window.removeEventListener("dragover", this.#onDragOver);
    window.removeEventListener("dragleave", this.#onDragLeave);
    window.removeEventListener("drop", this.#onDrop);
    window.removeEventListener("paste", this.#onPaste);
  }

  readonly #onDragOver = (event: DragEvent): void => {
    if (event.dataTransfer?.types.includes("Files") !== true) return;
    event.preventDefault();
    this.#setDragging(true);
  };

  readonly #onDragLeave = (event: DragEvent): void => {
    if (event.relatedTarget === null) this.#setDragging(false);
  };

  readonly #onDrop = (event: DragEvent): void => {
    const files = Array.from(event.dataTransfer?.files ?? []);
    if (files.length === 0) return;
    event.preventDefault();
    this.#setDragging(false);
    this.open(files);
  };

  /** Opens pasted tables and inspections. Text pasted into a field stays there, and a word or two are ignored. */
  readonly #onPaste = (event: ClipboardEvent): void => {
    const [at] = event.composedPath();
    if (event.defaultPrevented || (at instanceof HTMLElement && at.matches("input, textarea, select")))
      return;
    const text = event.clipboardData?.getData("text/plain") ?? "";
    if (!text.trim().includes("\n")) return;
    event.preventDefault();
    this.open([new File([text], PASTED)]);
  };

  #setDragging(isDragging: boolean): void {
    if (this.isDragging === isDragging) return;
    this.isDragging = isDragging;
    this.host.requestUpdate();
  }
}
