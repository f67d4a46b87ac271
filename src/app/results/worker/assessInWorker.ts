import { failed, type Outcome } from "../../../inspection/problem.ts";
import type { ComparisonQuestion, ComparisonReply, Question, Reply } from "./messages.ts";
import AssessWorker from "./worker.ts?worker";

export type { Answer, ComparisonReply } from "./messages.ts";

/** A worker that answers one question at a time. */
export interface InWorker<Asked> {
  /** Asks a question. It replaces one that is still waiting. */
  ask(question: Asked): void;
  /** Ends the worker, without a further reply. */
  close(): void;
}

export type Assessor = InWorker<Question>;
export type Comparer = InWorker<ComparisonQuestion>;

/**
 * Assesses surveys in a worker, so that typing never waits for it.
 *
 * @param onReply gets the reply to the latest question, never one to an earlier question
 */
export function createAssessor(onReply: (reply: Reply) => void): Assessor {
  return askInWorker(onReply, { answer: notRun("assessment"), draws: null });
}

/** Compares surveys in a worker of its own, so that a verdict never waits for a comparison. */
export function createComparer(onReply: (reply: ComparisonReply) => void): Comparer {
  return askInWorker(onReply, notRun("comparison"));
}

function askInWorker<Asked, Answered>(
  onReply: (reply: Answered) => void,
  ifBroken: Answered,
): InWorker<Asked> {
  let worker: Worker | null = null;
  let waiting: Asked | null = null;
  let isBusy = false;

  const send = (question: Asked): void => {
    isBusy = true;
    waiting = null;
    worker ??= start();
    worker.postMessage(question);
  };
  const finish = (reply: Answered): void => {
    isBusy = false;
    if (waiting !== null) send(waiting);
    else onReply(reply);
  };
  const start = (): Worker => {
    const fresh = new AssessWorker();
    fresh.onmessage = ({ data }: MessageEvent<Answered>) => finish(data);
    fresh.onerror = () => {
      fresh.terminate();
      worker = null;
      finish(ifBroken);
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

function notRun(what: string): Outcome<never> {
  return failed(
    "",
    `the ${what} could not be run in this browser`,
    "Load the page again; what was entered is kept.",
  );
}
