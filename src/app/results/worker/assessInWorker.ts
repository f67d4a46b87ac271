import { failed, type Outcome } from "../../../inspection/problem.ts";
import type { ComparisonQuestion, ComparisonReply, Question, Reply } from "./messages.ts";
import AssessWorker from "./worker.ts?worker";

export type { Answer, ComparisonReply } from "./messages.ts";

/** Somebody to ask who works aside. */
export interface WorkerAnswer<Asked> {
  /** Asks a question. One still waiting is dropped for this one. */
  ask(question: Asked): void;
  /** Lets the worker go; nothing is told any more. */
  close(): void;
}

export type Assessor = WorkerAnswer<Question>;
export type Comparer = WorkerAnswer<ComparisonQuestion>;

/**
 * Assesses in a worker, one question at a time, so that typing never waits for it.
 *
 * @param tell is given the reply to the latest question, never one that was overtaken
 */
export function createAssessor(tell: (reply: Reply) => void): Assessor {
  return askAside(tell, { answer: notRun("assessment"), kept: null });
}

/** The same for comparisons, in a worker of their own, so that a verdict never waits for one. */
export function createComparer(tell: (reply: ComparisonReply) => void): Comparer {
  return askAside(tell, notRun("comparison"));
}

function askAside<Asked, Told>(tell: (reply: Told) => void, whenBroken: Told): WorkerAnswer<Asked> {
  let worker: Worker | null = null;
  let waiting: Asked | null = null;
  let isBusy = false;

  const send = (question: Asked): void => {
    isBusy = true;
    waiting = null;
    worker ??= started();
    worker.postMessage(question);
  };
  const settle = (reply: Told): void => {
    isBusy = false;
    if (waiting !== null) send(waiting);
    else tell(reply);
  };
  const started = (): Worker => {
    const fresh = new AssessWorker();
    fresh.onmessage = ({ data }: MessageEvent<Told>) => settle(data);
    fresh.onerror = () => {
      fresh.terminate();
      worker = null;
      settle(whenBroken);
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
