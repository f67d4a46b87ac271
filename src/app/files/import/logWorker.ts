import { previewOf } from "../../../intake/preview.ts";
import type { LogTold, LogToRead } from "./logMessages.ts";
import { readLongLog } from "./longLog.ts";

/** Reads one log; it is stopped by ending the worker. */
self.onmessage = ({ data: { content, options } }: MessageEvent<LogToRead>) => {
  tell({ kind: "columns", preview: previewOf(content) });
  if (options === null) return;
  tell({ kind: "read", outcome: readLongLog(content, options, (done) => tell({ kind: "progress", done })) });
};

function tell(told: LogTold): void {
  self.postMessage(told);
}
