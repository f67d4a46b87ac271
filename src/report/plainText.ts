import type { Block, Figure, Part, Table } from "./blocks.ts";

const INDENT = "  ";
const BULLET = "- ";
const COLUMN_GAP = "    ";

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

/** A title with its blocks under it, in lines no wider than the width; nothing for a part without text. */
export function partLines(part: Part | null, width: number): readonly string[] {
  const lines = part?.blocks.flatMap((block) => blockLines(block, width)) ?? [];
  return part === null || lines.length === 0 ? [] : [...wrapped(part.title, width), ...lines];
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
      return [...wrapped(block.caption, width), ...tableLines(block, width)];
    case "bars":
      return columns(
        block.bars.map(({ name, words }) => [name, words]),
        width,
      );
    case "picture":
      return [];
  }
}

/** Figures stand in columns; where a cell holds words, the row's cells follow one another. */
function tableLines({ columns: headings, rows }: Table, width: number): readonly string[] {
  const names = headings.map(({ name }) => name);
  const cells = rows.map((row) => row.cells.map(cellText));
  if (headings.every(({ holds }) => holds === "figures")) {
    const all = [names, ...cells];
    const widths = names.map((_, column) => Math.max(...all.map((row) => row[column]?.length ?? 0)));
    return all.map(
      (row) => INDENT + row.map((cell, column) => cell.padStart(widths[column] ?? 0)).join(COLUMN_GAP),
    );
  }
  if (names.length === 2)
    return columns(
      [names, ...cells].map(([name = "", cell = ""]) => [name, cell]),
      width,
    );
  return columns(
    cells.map(([name = "", ...others]) => [
      name,
      others.map((cell, index) => `${names[index + 1]?.toLowerCase()} ${cell}`).join("; "),
    ]),
    width,
  );
}

function cellText(cell: string | Figure): string {
  if (typeof cell === "string") return cell;
  return cell.interval === "" ? cell.value : `${cell.value}, ${cell.interval}`;
}
