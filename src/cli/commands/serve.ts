import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { createServer, type Server } from "node:http";
import { fileURLToPath } from "node:url";
import sirv from "sirv";
import { failed, type Outcome, succeeded } from "../../inspection/problem.ts";
import { type Command, type CommandLine, type ExitCode, textOf } from "../command.ts";
import { printProblem, write } from "../output.ts";

const DEFAULT_HOST = "127.0.0.1";
const DEFAULT_PORT = 8356;
/** So many ports from the default one are tried before giving up. */
const PORTS_TRIED = 20;
const LARGEST_PORT = 65535;

/** The built page lies beside the built command. */
const PAGE = fileURLToPath(new URL("../page/", import.meta.url));

/** The page, served from the built files until it is interrupted. */
export const serve: Command = {
  name: "serve",
  operands: "",
  summary: "the page, for this machine only unless told otherwise",
  options: [
    { name: "port", value: "N", help: `port to listen on (${DEFAULT_PORT}, or the next that is free)` },
    { name: "host", value: "ADDRESS", help: `address to listen on (${DEFAULT_HOST}: this machine only)` },
    { name: "open", help: "open the page in the browser" },
  ],
  run,
};

async function run(line: CommandLine): Promise<ExitCode> {
  const server = createPageServer();
  const listening = server.ok ? await listen(server.value, line) : server;
  if (!listening.ok) {
    printProblem(listening.problem);
    return 2;
  }
  const ended = interruption(listening.value.server);
  await write(`The page is at ${listening.value.address} (Ctrl+C ends this)\n`);
  if (line.options.open === true) openInBrowser(listening.value.address);
  await ended;
  return 0;
}

function createPageServer(): Outcome<Server> {
  if (!existsSync(`${PAGE}index.html`)) {
    return failed("", "the page has not been built", 'Run "npm run build" first.');
  }
  const page = sirv(PAGE, { etag: true });
  return succeeded(
    createServer((request, response) => {
      if (request.method !== "GET" && request.method !== "HEAD") {
        response.writeHead(405, { Allow: "GET, HEAD" }).end();
        return;
      }
      page(request, response, () => {
        response
          .writeHead(404, { "Content-Type": "text/plain; charset=utf-8" })
          .end("There is no such page.\n");
      });
    }),
  );
}

interface Listening {
  readonly server: Server;
  readonly address: string;
}

async function listen(server: Server, line: CommandLine): Promise<Outcome<Listening>> {
  const host = textOf(line, "host") ?? DEFAULT_HOST;
  const stated = textOf(line, "port");
  const first = stated === undefined ? DEFAULT_PORT : Number(stated);
  if (!Number.isInteger(first) || first < 0 || first > LARGEST_PORT) {
    return failed("--port", `"${stated}" is not a port`, `Give a whole number up to ${LARGEST_PORT}.`);
  }
  const last = stated === undefined ? first + PORTS_TRIED - 1 : first;
  for (let port = first; port <= last; port++) {
    const code = await tryPort(server, port, host);
    if (code === null) return succeeded({ server, address: addressOf(server, host) });
    if (code !== "EADDRINUSE") {
      return failed(`${host}:${port}`, `cannot be listened on (${code})`, "Give another --host or --port.");
    }
  }
  const taken = first === last ? `port ${first} is taken` : `ports ${first} to ${last} are taken`;
  return failed(host, taken, "Give a free one with --port.");
}

/** Null when the server listens, else the code of the error. */
function tryPort(server: Server, port: number, host: string): Promise<string | null> {
  return new Promise((resolve) => {
    const refused = (error: NodeJS.ErrnoException): void => resolve(error.code ?? error.message);
    server.once("error", refused);
    server.listen(port, host, () => {
      server.off("error", refused);
      resolve(null);
    });
  });
}

function addressOf(server: Server, host: string): string {
  const bound = server.address();
  if (bound === null || typeof bound === "string") throw new Error("The server listens on no port.");
  return `http://${host.includes(":") ? `[${host}]` : host}:${bound.port}/`;
}

/** Resolves when the process is interrupted and the server has closed. */
function interruption(server: Server): Promise<void> {
  return new Promise((resolve) => {
    const end = (): void => {
      server.close(() => resolve());
      server.closeAllConnections();
    };
    process.once("SIGINT", end);
    process.once("SIGTERM", end);
  });
}

/** Opens an address in the browser of this machine; does nothing where there is no browser. */
function openInBrowser(address: string): void {
  const [program, ...words] = openerOf(process.platform);
  const opener = spawn(program, [...words, address], { detached: true, stdio: "ignore" });
  // Without an opener, the user has the address that was printed.
  opener.on("error", () => undefined);
  opener.unref();
}

function openerOf(platform: NodeJS.Platform): readonly [string, ...string[]] {
  if (platform === "darwin") return ["open"];
  // The empty word is the window's title: without it `start` takes the address as the title.
  return platform === "win32" ? ["cmd", "/c", "start", ""] : ["xdg-open"];
}
