import { parentPort } from "node:worker_threads";
import { assessTask, type Request } from "./assessTask.ts";

// Assesses the surveys sent to this thread, one after the other.
if (parentPort === null) throw new Error("This runs as a worker of the command.");
const port = parentPort;
port.on("message", (request: Request) => port.postMessage(assessTask(request)));
