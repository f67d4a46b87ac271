const INDENT = "  ";
const BULLET = "- ";

/** Spaces, but for the one between a figure and its unit. */
const BREAKS = /(?<!\d)\s+|\s+(?!(?:mm|in)\b)/;

/**
 * Breaks a text into lines no wider than the width, between words; a word that is wider stands alone. A figure and
 * its unit stay together.
 */
export function wrapped(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(BREAKS).filter((each) => each !== "")) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (longer.length <= width || line === "") {
      line = longer;
    } else {
      lines.push(line);
      line = word;
    }
  }
  return line === "" ? lines : [...lines, line];
}

/** A list with one entry after another, each wrapped and set in. */
export function items(entries: readonly string[], width: number): readonly string[] {
  const margin = INDENT.length + BULLET.length;
  return entries.flatMap((entry) =>
    wrapped(entry, width - margin).map((line, index) =>
      index === 0 ? `${INDENT}${BULLET}${line}` : `${" ".repeat(margin)}${line}`,
    ),
  );
}

/** Rows of a name and what belongs to it, the latter wrapped in a column of its own. */
export function columns(rows: readonly (readonly [string, string])[], width: number): readonly string[] {
  const widest = Math.max(...rows.map(([name]) => name.length));
  const margin = INDENT.length + widest + INDENT.length;
  return rows.flatMap(([name, value]) =>
    wrapped(value, width - margin).map((line, index) =>
      index === 0 ? `${INDENT}${name.padEnd(widest)}${INDENT}${line}` : `${" ".repeat(margin)}${line}`,
    ),
  );
}
