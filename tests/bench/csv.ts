import Papa from "papaparse";
import { readLongLog } from "../../src/app/files/import/longLog.ts";

const ROWS = 1_000_000;
const RUNS = 5;

/**
 * Reads a log of a million rows as the page's worker does, with progress, and compares the time with that of PapaParse
 * alone, which only cuts the same bytes into cells. At least half of PapaParse's speed (a ratio of 0.5) is promised.
 */
export function csv(): void {
  const logs: readonly (readonly [string, Uint8Array])[] = [
    ["two columns", logOf("position (mm),backlash (mm)", (at, lost) => `${at},${lost}`)],
    ["with times, Windows line ends", logOf("position (mm),backlash (mm),time", timed, "\r\n")],
    [
      "decimal commas, micrometres",
      logOf("Position (mm);Umkehrspiel (µm)", (at, lost) => `${at};${lost}`.replaceAll(".", ",")),
    ],
    ["every cell in quotes", logOf('"position (mm)","backlash (mm)"', (at, lost) => `"${at}","${lost}"`)],
  ];
  for (const [name, bytes] of logs) {
    const library = fastest(() => Papa.parse(new TextDecoder().decode(bytes)));
    const reader = fastest(() => {
      const read = readLongLog(bytes, {}, () => undefined);
      if (!read.ok || read.value.thinned?.count !== ROWS) throw new Error(`${name} was not read whole.`);
    });
    console.log(
      `${name}: ${(library / reader).toFixed(2)} of PapaParse's speed ` +
        `(${(reader / 1000).toFixed(2)} s against ${(library / 1000).toFixed(2)} s here, ` +
        `${(bytes.length / 1e6).toFixed(0)} MB, ${ROWS.toLocaleString("en")} rows)`,
    );
  }
}

/** Milliseconds that the fastest of a few runs takes: what else the machine does only ever adds to it. */
function fastest(work: () => unknown): number {
  const times = Array.from({ length: RUNS }, () => {
    const begun = performance.now();
    work();
    return performance.now() - begun;
  });
  return Math.min(...times);
}

function logOf(
  headings: string,
  row: (position: string, backlash: string, index: number) => string,
  lineEnd = "\n",
): Uint8Array {
  const rows = Array.from({ length: ROWS }, (_, index) =>
    row((index * 0.0004).toFixed(4), (0.2 + ((index * 7919) % 100) / 1000).toFixed(3), index),
  );
  return new TextEncoder().encode([headings, ...rows, ""].join(lineEnd));
}

function timed(position: string, backlash: string, index: number): string {
  return `${position},${backlash},09:${String(index % 60).padStart(2, "0")}:00`;
}
