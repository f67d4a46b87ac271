import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { type Browser, type BrowserContext, chromium, type Page } from "playwright-core";
import sirv from "sirv";
import { afterEach, beforeAll, onTestFinished } from "vitest";
import { findChromium } from "./findChromium.js";

export const ARGUMENTS = [
  "--headless",
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

export interface Size {
  readonly width: number;
  readonly height: number;
}

const DESK: Size = { width: 1280, height: 900 };

/** What a wait for a state of the page takes at most, in ms: other programs may hold up the browser for long. */
const PATIENCE = 60_000;

/** The built page on a server, and a browser to open it in. */
export interface ServedPage {
  readonly address: string;
  /** An empty browser profile with the page open in it. */
  open(size?: Size): Promise<Page>;
  /** The same, in a profile that no other test uses, for what changes more of it than its storage. */
  openApart(size?: Size): Promise<Page>;
  /** The same, in a profile that may keep the page for use without network. */
  openToStay(size?: Size): Promise<Page>;
  /** Another tab of the same profile. */
  openBeside(page: Page): Promise<Page>;
}

export interface OwnServedPage extends ServedPage {
  close(): Promise<void>;
}

/**
 * The built page on a server and in a browser of its own. Most tests take `useServedPage`, which is faster.
 *
 * @param folder what is served
 * @param flags of the browser, beside the usual ones
 */
export async function servePage(folder = "dist/page", flags: readonly string[] = []): Promise<OwnServedPage> {
  const [server, browser] = await Promise.all([served(folder), launched(flags)]);
  return {
    ...opener(server.address, browser),
    close: async () => {
      await browser.close();
      await server.close();
    },
  };
}

/**
 * The built page in the Chromium that all test files of a worker share; call it at the top of a test file.
 *
 * The first page that a test opens is in the worker's profile, which is emptied before; a second one is in a profile
 * of its own. All that a test opened is closed after it.
 */
export function useServedPage(): ServedPage {
  let all: (ServedPage & Shared) | undefined;
  let isProfileUsed = false;
  const shared = (): ServedPage & Shared => {
    if (all === undefined) throw new Error("The page is served once the tests run.");
    return all;
  };
  const closedAfterwards = async (opening: Promise<Page>): Promise<Page> => {
    const page = await opening;
    onTestFinished(() => page.context().close());
    return page;
  };

  beforeAll(async () => {
    const worker = await ofWorker();
    all = { ...opener(worker.server.address, worker.browser), ...worker };
  });

  afterEach(async () => {
    await Promise.all(
      shared()
        .profile.pages()
        .map((page) => page.close()),
    );
    isProfileUsed = false;
  });

  return {
    get address() {
      return shared().address;
    },
    open: (size = DESK) => {
      if (isProfileUsed) return closedAfterwards(shared().openApart(size));
      isProfileUsed = true;
      return openIn(shared().profile, shared().address, size, emptied);
    },
    openApart: (size) => closedAfterwards(shared().openApart(size)),
    openToStay: (size) => closedAfterwards(shared().openToStay(size)),
    openBeside: (page) => shared().openBeside(page),
  };
}

/** An empty page in the Chromium that all test files of a worker share, for a document that needs no server. */
export async function blankPage(size: Size = DESK): Promise<Page> {
  const page = await (await ofWorker()).profile.newPage();
  await page.setViewportSize(size);
  return page;
}

/** The Chromium that all test files of a worker share; it ends with the worker. */
export async function sharedBrowser(): Promise<Browser> {
  return (await ofWorker()).browser;
}

/** @param flags of the browser, beside the usual ones */
export async function launched(flags: readonly string[] = []): Promise<Browser> {
  const executablePath = findChromium();
  if (executablePath === null) throw new Error("There is no Chromium: see tests/browser/findChromium.js.");
  return chromium.launch({ executablePath, args: [...ARGUMENTS, ...flags] });
}

interface Server {
  readonly address: string;
  close(): Promise<unknown>;
}

interface Shared {
  readonly server: Server;
  readonly browser: Browser;
  readonly profile: BrowserContext;
}

let sharedByFiles: Promise<Shared> | undefined;

function ofWorker(): Promise<Shared> {
  sharedByFiles ??= Promise.all([served("dist/page"), launched()]).then(async ([server, browser]) => ({
    server,
    browser,
    profile: await newProfile(browser, DESK, "block"),
  }));
  return sharedByFiles;
}

async function served(folder: string): Promise<Server> {
  // Looked up at each request, as they may be built anew meanwhile.
  const files = sirv(folder, { dev: true });
  const server = createServer((request, response) => files(request, response));
  await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    close: () => new Promise((closed) => server.close(closed)),
  };
}

function opener(address: string, browser: Browser): ServedPage {
  // Most tests look at other things, and are faster where the page is not kept in every new profile.
  const openApart = async (size = DESK) => openIn(await newProfile(browser, size, "block"), address, size);
  return {
    address,
    open: openApart,
    openApart,
    openToStay: async (size = DESK) => openIn(await newProfile(browser, size, "allow"), address, size),
    openBeside: (page) => openIn(page.context(), page.url(), page.viewportSize() ?? DESK),
  };
}

function newProfile(
  browser: Browser,
  viewport: Size,
  serviceWorkers: "allow" | "block",
): Promise<BrowserContext> {
  return browser.newContext({ viewport, locale: "en-GB", serviceWorkers });
}

/** @param before done in the new tab before it goes to the address */
async function openIn(
  context: BrowserContext,
  address: string,
  size: Size,
  before?: (page: Page, address: string) => Promise<void>,
): Promise<Page> {
  const page = await context.newPage();
  page.setDefaultTimeout(PATIENCE);
  const { width, height } = page.viewportSize() ?? {};
  if (width !== size.width || height !== size.height) await page.setViewportSize(size);
  await before?.(page, address);
  await page.goto(address);
  return page;
}

/** Deletes all that an address has stored in the profile of a page. */
async function emptied(page: Page, address: string): Promise<void> {
  const devtools = await page.context().newCDPSession(page);
  const { origin } = new URL(address);
  await devtools.send("Storage.clearDataForOrigin", { origin, storageTypes: "all" });
  await devtools.detach();
}
