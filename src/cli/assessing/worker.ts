import { parentPort } from "node:worker_threads";
import { assessTask, type Request } from "./assessTask.ts";

// A thread that assesses what it is sent, one survey after the other.
if (parentPort === null) throw new Error("This runs as a worker of the command.");
const port = parentPort;
port.on("message", (request: Request) => port.postMessage(assessTask(request)));
