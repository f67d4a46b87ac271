import { previewOf } from "../../intake/preview.ts";
import { readingCsv } from "../../intake/readCsv.ts";
import type { LogTold, LogToRead } from "./logMessages.ts";

/** Reads one log; it is stopped by ending the worker. */
self.onmessage = ({ data: { content, options } }: MessageEvent<LogToRead>) => {
  tell({ kind: "columns", preview: previewOf(content) });
  if (options === null) return;
  const steps = readingCsv(content, options);
  for (;;) {
    const step = steps.next();
    if (step.done === true) {
      tell({ kind: "read", outcome: step.value });
      return;
    }
    tell({ kind: "progress", ...step.value });
  }
};

function tell(told: LogTold): void {
  self.postMessage(told);
}
