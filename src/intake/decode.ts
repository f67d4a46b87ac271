import { failed, type Outcome, succeeded } from "../inspection/problem.ts";

/** How much of a text may be control characters before it is taken for something else. */
const MOST_CONTROLS = 0.05;
/** So much of a text shows what it is. */
const SAMPLE = 100_000;

/**
 * The text of a log, whatever wrote it: UTF-8 or UTF-16 with or without a byte-order mark, else Latin-1 as Windows
 * writes it. Line ends come out as line feeds. What is not a text is refused.
 */
export function decodeText(source: Uint8Array | string): Outcome<string> {
  const decoded = typeof source === "string" ? source : decodeBytes(source);
  const text = withLineFeeds(decoded.replace(/^\uFEFF/, ""));
  const sample = text.slice(0, SAMPLE);
  if (sample.trim() === "" && text.trim() === "") {
    return failed("", "there is nothing in it", "Choose a file, or paste a table, with readings.");
  }
  if (text.includes("\0") || controlsIn(sample) > MOST_CONTROLS * sample.length) {
    return failed(
      "",
      "this is not a text but another kind of file",
      "Save the readings as CSV (in a spreadsheet program: Save as, CSV) and open that.",
    );
  }
  return succeeded(text);
}

function withLineFeeds(text: string): string {
  return text.includes("\r") ? text.replaceAll("\r\n", "\n").replaceAll("\r", "\n") : text;
}

function decodeBytes(bytes: Uint8Array): string {
  const utf16 = utf16Of(bytes);
  if (utf16 !== undefined) return new TextDecoder(utf16).decode(bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

/** UTF-16 is known by its mark, or by the zero that stands beside nearly every character of a Western text. */
function utf16Of(bytes: Uint8Array): "utf-16le" | "utf-16be" | undefined {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return "utf-16le";
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return "utf-16be";
  const sample = bytes.subarray(0, SAMPLE);
  const pairs = Math.floor(sample.length / 2);
  if (pairs === 0) return undefined;
  const zeros = [0, 0];
  sample.forEach((byte, index) => {
    if (byte === 0) zeros[index % 2] = (zeros[index % 2] ?? 0) + 1;
  });
  const [even = 0, odd = 0] = zeros;
  if (odd > 0.7 * pairs && even < 0.1 * pairs) return "utf-16le";
  return even > 0.7 * pairs && odd < 0.1 * pairs ? "utf-16be" : undefined;
}

function controlsIn(text: string): number {
  let count = 0;
  for (let index = 0; index < text.length; index++) {
    const code = text.charCodeAt(index);
    if (code < 0x20 && code !== 0x09 && code !== 0x0a && code !== 0x0c) count++;
  }
  return count;
}
