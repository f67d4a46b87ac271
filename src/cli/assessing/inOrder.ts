import { once } from "node:events";
import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import { assessTask, type Reply, type Request } from "./assessTask.ts";

/** The built worker lies beside the built command. */
const WORKER = new URL("./assessing.js", import.meta.url);

/** Fewer surveys than this are assessed sooner than another thread starts and compiles the analysis. */
const WORTH_A_WORKER = 6;

/**
 * Assesses surveys on as many cores as are worth their start, and yields each with its reply in the order given, as soon
 * as it and those before it are done. The number of threads does not change a result: each survey has its own seed.
 */
export async function* assessInOrder<Asked extends Request>(
  requests: readonly Asked[],
): AsyncGenerator<readonly [Asked, Reply]> {
  const workers = Math.min(availableParallelism(), Math.floor(requests.length / WORTH_A_WORKER));
  if (workers < 2) {
    for (const request of requests) yield [request, assessTask(request)];
    return;
  }
  for (const { request, reply } of sharedOut(requests, workers)) yield [request, await reply];
}

interface Awaited<Asked> {
  readonly request: Asked;
  readonly reply: Promise<Reply>;
  readonly settle: (reply: Reply) => void;
}

/** Shares requests out: each worker takes the next one when it is free. */
function sharedOut<Asked extends Request>(
  requests: readonly Asked[],
  workers: number,
): readonly Awaited<Asked>[] {
  const all = requests.map(awaited);
  const queue = all.values();
  const lane = async (): Promise<void> => {
    let worker = new Worker(WORKER);
    for (const { request, settle } of queue) {
      try {
        settle(await ask(worker, request));
      } catch (fault) {
        // The thread ended at this survey, for example out of memory: the next survey gets a new one.
        settle({ fault });
        worker = new Worker(WORKER);
      }
    }
    await worker.terminate();
  };
  for (let i = 0; i < workers; i++) void lane();
  return all;
}

function awaited<Asked>(request: Asked): Awaited<Asked> {
  let settle: (reply: Reply) => void = () => undefined;
  const reply = new Promise<Reply>((resolve) => {
    settle = resolve;
  });
  return { request, reply, settle: (given) => settle(given) };
}

async function ask(worker: Worker, { inspection, survey }: Request): Promise<Reply> {
  worker.postMessage({ inspection, survey });
  const [reply] = await once(worker, "message");
  return reply;
}
