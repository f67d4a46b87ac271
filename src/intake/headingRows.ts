import { readCell } from "./cell.ts";
import { columnUnit } from "./heading.ts";
import type { Table } from "./tableParts.ts";

/** The table with what a merged heading, and rows of units or of repeats' numbers below it, say of the columns. */
export function withRowsBelow(table: Table): Table {
  return withNumbersBelow(withUnitsBelow(withBlankHeadings(table)));
}

/** Takes in a row of nothing but the numbers of repeats, below a heading that stands over all of them. */
function withNumbersBelow(table: Table): Table {
  const numbers = table.sample[0]?.cells ?? [];
  const repeats = numbers.filter(
    (cell, column) => cell !== "" && table.headings[column]?.role === "backlash",
  );
  const others = numbers.filter((cell, column) => cell !== "" && table.headings[column]?.role !== "backlash");
  const areInOrder = repeats.length >= 2 && repeats.every((cell, index) => Number(cell) === index + 1);
  return areInOrder && others.length === 0 ? withoutFirstRow(table) : table;
}

/** Takes in a row of nothing but units under the headings. */
function withUnitsBelow(table: Table): Table {
  const cells = table.sample[0]?.cells ?? [];
  const units = cells.map((cell) => columnUnit(cell.toLowerCase().replace(/^[([]|[)\]]$/g, "")));
  const hasUnits = units.some((unit) => unit !== undefined);
  const onlyUnits = cells.every((cell, column) => cell === "" || units[column] !== undefined);
  if (!hasUnits || !onlyUnits) return table;
  const headings = table.headings.map((heading, column) => {
    const unit = units[column];
    return unit === undefined ? heading : { ...heading, unit };
  });
  return { ...withoutFirstRow(table), headings };
}

/** The table without its first row of data, which turned out to be part of the headings. */
function withoutFirstRow(table: Table): Table {
  const [first, ...sample] = table.sample;
  return first === undefined ? table : { ...table, headingsEnd: first.line, sample };
}

/** A heading over several columns, as spreadsheets merge it: the columns beside it without one are its repeats. */
function withBlankHeadings(table: Table): Table {
  const headings = [...table.headings];
  for (const [column, heading] of table.headings.entries()) {
    const before = headings[column - 1];
    const isBlank = table.written[column] === "" && before?.role === "backlash" && heading.role === undefined;
    const cells = table.sample.map(({ cells }) => cells[column] ?? "").filter((cell) => cell !== "");
    const figures = cells.filter((cell) => readCell(cell, "none").kind !== "fault").length;
    if (isBlank && before && figures > 0 && figures * 2 > cells.length) headings[column] = before;
  }
  return { ...table, headings };
}
