import type { ReactiveController, ReactiveControllerHost } from "lit";

/** What a browser hands to an installed page that it is to open files with; the language's own types do not have it. */
interface LaunchQueue {
  setConsumer(take: (launch: { readonly files?: readonly FileSystemFileHandle[] }) => void): void;
}

/** Files that the system opens with the installed page, as by double click; elsewhere there are none. */
export class Launches implements ReactiveController {
  constructor(
    host: ReactiveControllerHost,
    private readonly take: (files: readonly File[]) => void,
    /** Called where the system offered files that cannot be had any more. */
    private readonly gone: () => void,
  ) {
    host.addController(this);
  }

  hostConnected(): void {
    if (!("launchQueue" in window)) return;
    (window.launchQueue as LaunchQueue).setConsumer(({ files = [] }) => {
      if (files.length === 0) return;
      void Promise.all(files.map((handle) => handle.getFile())).then(this.take, this.gone);
    });
  }
}
