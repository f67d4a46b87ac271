import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { cpSync, mkdirSync } from "node:fs";
import { createServer, request } from "node:http";
import type { AddressInfo } from "node:net";
import { dirname } from "node:path";
import { text } from "node:stream/consumers";
import { afterEach, describe, expect, it } from "vitest";
import { COMMAND, workshop } from "./command.ts";

/** The command as it is installed, beside a page that is no more than a word. */
const { file, path } = workshop();
for (const name of ["page", "page/parts"]) mkdirSync(path(name));
const command = path("cli/tightspot.js");
cpSync(dirname(COMMAND), dirname(command), { recursive: true });
file("cli/package.json", '{"type": "module"}');
file("page/index.html", "<title>Tightspot</title>");
file("page/parts/main.js", "void 0;");
file("secret.txt", "not for the page");

const running: ChildProcess[] = [];
afterEach(() => {
  for (const child of running.splice(0)) child.kill("SIGKILL");
});

function serve(...args: readonly string[]) {
  const child = spawn(process.execPath, [command, "serve", ...args], { stdio: ["ignore", "pipe", "pipe"] });
  running.push(child);
  return child;
}

/** The address that the command says it serves the page at. */
async function addressOf(child: ReturnType<typeof serve>): Promise<URL> {
  const [said] = await once(child.stdout, "data");
  const address = /http:\S+/.exec(String(said))?.[0];
  if (address === undefined) throw new Error(`No address in: ${said}`);
  return new URL(address);
}

/** Asks for a path as it stands, with no tidying of dots on the way. */
async function ask(address: URL, path: string, method = "GET"): Promise<{ status?: number; body: string }> {
  const { hostname, port } = address;
  const asked = request({ hostname, port, path, method });
  asked.end();
  const [response] = await once(asked, "response");
  return { status: response.statusCode, body: await text(response) };
}

describe("tightspot serve", () => {
  it("serves the page on this machine only, and says where", async () => {
    const address = await addressOf(serve("--port", "0"));
    expect(address.hostname).toBe("127.0.0.1");
    expect(await ask(address, "/")).toEqual({ status: 200, body: "<title>Tightspot</title>" });
    expect((await ask(address, "/parts/main.js")).status).toBe(200);
    expect((await ask(address, "/none")).status).toBe(404);
    expect((await ask(address, "/", "POST")).status).toBe(405);
  });

  it.each([
    "/../secret.txt",
    "/%2e%2e/secret.txt",
    "/parts/..%2f..%2fsecret.txt",
    "/..%5csecret.txt",
    "//secret.txt",
  ])("gives nothing from outside the page for %s", async (outside) => {
    const { status, body } = await ask(await addressOf(serve("--port", "0")), outside);
    expect(status).toBe(404);
    expect(body).not.toContain("not for the page");
  });

  it("ends cleanly when it is interrupted", async () => {
    const child = serve("--port", "0");
    await addressOf(child);
    child.kill("SIGINT");
    expect(await once(child, "close")).toEqual([0, null]);
  });

  it("takes the next port that is free where none was asked for", async () => {
    const first = serve();
    const second = serve();
    const [one, other] = [await addressOf(first), await addressOf(second)];
    expect(one.port).not.toBe(other.port);
  });

  it("says so where the port asked for is taken", async () => {
    const taken = createServer().listen(0, "127.0.0.1");
    await once(taken, "listening");
    const { port } = taken.address() as AddressInfo;
    const child = serve("--port", String(port));
    const complaints = text(child.stderr);
    expect(await once(child, "close")).toEqual([2, null]);
    expect(await complaints).toContain(`port ${port} is taken`);
    taken.close();
  });

  it("says how to build the page where it is not built", async () => {
    const alone = `${path("alone")}/cli/tightspot.js`;
    cpSync(dirname(COMMAND), dirname(alone), { recursive: true });
    file("alone/cli/package.json", '{"type": "module"}');
    const child = spawn(process.execPath, [alone, "serve"], { stdio: ["ignore", "ignore", "pipe"] });
    const complaints = text(child.stderr);
    expect(await once(child, "close")).toEqual([2, null]);
    expect(await complaints).toContain("npm run build");
  });
});
