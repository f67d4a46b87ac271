import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { type Browser, type BrowserContext, chromium, type Page } from "playwright-core";
import sirv from "sirv";
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

/** The built page on a server of its own, and a browser to open it in. */
export interface ServedPage {
  readonly address: string;
  /** A browser profile that was never used, with the page open in it. */
  open(size?: Size): Promise<Page>;
  /** The same, in a browser profile that may keep the page for use without network. */
  openToStay(size?: Size): Promise<Page>;
  /** Another tab of the same profile. */
  openBeside(page: Page): Promise<Page>;
  close(): Promise<void>;
}

/**
 * @param folder what is served
 * @param flags of the browser, beside the usual ones
 */
export async function servePage(folder = "dist/page", flags: readonly string[] = []): Promise<ServedPage> {
  // Looked up at each request, as they may be built anew meanwhile.
  const files = sirv(folder, { dev: true });
  const server = createServer((request, response) => files(request, response));
  await new Promise<void>((listening) => server.listen(0, "127.0.0.1", listening));
  const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
  const browser = await launched(flags);
  return {
    address,
    // Most tests look at other things, and are faster where the page is not kept in every new profile.
    open: async (size = DESK) => openIn(await newProfile(browser, size, "block"), address),
    openToStay: async (size = DESK) => openIn(await newProfile(browser, size, "allow"), address),
    openBeside: (page) => openIn(page.context(), page.url()),
    close: async () => {
      await browser.close();
      await new Promise((closed) => server.close(closed));
    },
  };
}

/** @param flags of the browser, beside the usual ones */
export async function launched(flags: readonly string[] = []): Promise<Browser> {
  const executablePath = findChromium();
  if (executablePath === null) throw new Error("There is no Chromium: see tests/browser/findChromium.js.");
  return chromium.launch({ executablePath, args: [...ARGUMENTS, ...flags] });
}

function newProfile(
  browser: Browser,
  viewport: Size,
  serviceWorkers: "allow" | "block",
): Promise<BrowserContext> {
  return browser.newContext({ viewport, locale: "en-GB", serviceWorkers });
}

async function openIn(context: BrowserContext, address: string): Promise<Page> {
  const page = await context.newPage();
  await page.goto(address);
  return page;
}
