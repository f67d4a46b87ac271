import { failed } from "../../inspection/problem.ts";
import type { Question, Reply } from "./messages.ts";
import AssessWorker from "./worker.ts?worker";

export type { Answer } from "./messages.ts";

export interface Assessor {
  /** Asks for an assessment. A question still waiting is dropped for this one. */
  ask(question: Question): void;
  /** Lets the worker go; nothing is told any more. */
  close(): void;
}

/**
 * Assesses in a worker, one question at a time, so that typing never waits for it.
 *
 * @param tell is given the reply to the latest question, never one that was overtaken
 */
export function assessorOf(tell: (reply: Reply) => void): Assessor {
  let worker: Worker | null = null;
  let waiting: Question | null = null;
  let isBusy = false;

  const send = (question: Question): void => {
    isBusy = true;
    waiting = null;
    worker ??= started();
    worker.postMessage(question);
  };
  const settle = (reply: Reply): void => {
    isBusy = false;
    if (waiting !== null) send(waiting);
    else tell(reply);
  };
  const started = (): Worker => {
    const fresh = new AssessWorker();
    fresh.onmessage = ({ data }: MessageEvent<Reply>) => settle(data);
    fresh.onerror = () => {
      fresh.terminate();
      worker = null;
      const answer = failed(
        "",
        "the assessment could not be run in this browser",
        "Load the page again; what was entered is kept.",
      );
      settle({ answer, kept: null });
    };
    return fresh;
  };

  return {
    ask(question) {
      if (isBusy) waiting = question;
      else send(question);
    },
    close() {
      worker?.terminate();
    },
  };
}
