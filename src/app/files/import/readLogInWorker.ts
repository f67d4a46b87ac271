import { failed, type Outcome } from "../../../inspection/problem.ts";
import type { Preview } from "../../../intake/preview.ts";
import type { Unsettled } from "../../../intake/question.ts";
import type { CsvOptions } from "../../../intake/understanding.ts";
import type { LogReadings, LogTold, LogToRead } from "./logMessages.ts";
import LogWorker from "./logWorker.ts?worker";

/** A log as far as it could be read, and its columns as they stand in it; null where there is no table. */
export interface LogRead {
  readonly outcome: Outcome<LogReadings> | Unsettled;
  readonly preview: Preview | null;
}

/** The columns of a log as they stand in it. Fails where there is no table in it. */
export function previewInWorker(content: LogToRead["content"]): Promise<Outcome<Preview>> {
  return new Promise((resolve) => {
    const worker = startWorker({ content, options: null }, (told) => {
      worker.terminate();
      if (told.kind === "columns") resolve(told.preview);
      if (told.kind === "read" && !told.outcome.ok) resolve(told.outcome);
    });
  });
}

/**
 * Reads a log in a worker, so that the page stays usable however long it is.
 *
 * @param told is given how much of it is read, from 0 to 1
 * @param signal stops the reading at once; nothing is told after that
 */
export function readLogInWorker(
  content: LogToRead["content"],
  options: CsvOptions,
  told: (done: number) => void,
  signal: AbortSignal,
): Promise<LogRead> {
  return new Promise((resolve) => {
    let preview: Preview | null = null;
    const worker = startWorker({ content, options }, (news) => {
      switch (news.kind) {
        case "columns":
          preview = news.preview.ok ? news.preview.value : null;
          return;
        case "progress":
          told(news.done);
          return;
        case "read":
          worker.terminate();
          resolve({ preview, outcome: news.outcome });
      }
    });
    signal.addEventListener("abort", () => worker.terminate());
  });
}

/** A worker that does not run tells that, too. */
function startWorker(log: LogToRead, hear: (told: LogTold) => void): Worker {
  const worker = new LogWorker();
  worker.onmessage = ({ data }: MessageEvent<LogTold>) => hear(data);
  worker.onerror = () => {
    const cure = "Load the page again; what was entered is kept.";
    hear({ kind: "read", outcome: failed("", "the log could not be read in this browser", cure) });
  };
  worker.postMessage(log);
  return worker;
}
