/** A gauge that ends its lines with nothing is taken to have ended one when it has been quiet so long, in milliseconds. */
const QUIET = 150;

/**
 * Cuts what comes in from a gauge into lines, at line feeds, carriage returns, or silence.
 *
 * @param tell is given each line that holds anything, without control characters
 */
export function lineSplitter(tell: (line: string) => void): { add(text: string): void; close(): void } {
  let rest = "";
  let quiet: ReturnType<typeof setTimeout> | undefined;
  const flush = (line: string): void => {
    const clean = [...line]
      .filter((sign) => sign >= " " && sign !== "\u007f")
      .join("")
      .trim();
    if (clean !== "") tell(clean);
  };
  return {
    add(text) {
      clearTimeout(quiet);
      const lines = (rest + text).split(/[\r\n]+/);
      rest = lines.pop() ?? "";
      for (const line of lines) flush(line);
      quiet = setTimeout(() => {
        flush(rest);
        rest = "";
      }, QUIET);
    },
    close: () => clearTimeout(quiet),
  };
}
