import type { Block, Part } from "./blocks.ts";

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

/** Sections with an empty line between them; one without lines is left out. */
export function sectionsText(sections: readonly (readonly string[])[]): string {
  const text = sections.filter((lines) => lines.length > 0).map((lines) => lines.join("\n"));
  return `${text.join("\n\n")}\n`;
}

/** A title with its blocks under it, in lines no wider than the width; nothing where there is no such part. */
export function partLines(part: Part | null, width: number): readonly string[] {
  if (part === null) return [];
  return [...wrapped(part.title, width), ...part.blocks.flatMap((block) => blockLines(block, width))];
}

function blockLines(block: Block, width: number): readonly string[] {
  switch (block.kind) {
    case "paragraph":
      return wrapped(block.text, width);
    case "list":
      return items(
        block.entries.map(({ lead, text }) => (lead === undefined ? text : `${lead}. ${text}`)),
        width,
      );
    case "facts":
      return columns(block.rows, width);
    case "table":
      return [
        ...wrapped(block.caption, width),
        ...columns(
          [block.columns.map(({ name }) => name), ...block.rows.map(({ cells }) => cells)].map(
            ([name = "", ...cells]) => [name, cells.join(", ")],
          ),
          width,
        ),
      ];
    case "bars":
      return columns(
        block.bars.map(({ name, words }) => [name, words]),
        width,
      );
  }
}
