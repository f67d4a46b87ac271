import { heightAt } from "./heightAt.ts";
import type { Point } from "./linesAbove.ts";
import type { ProfilePicture, SpotMark } from "./profilePicture.ts";

const PROFILE = "•";
const OVER_LIMIT = "/";
const LIMIT = "╌";
/** The pointer to a spot, and how many rows below the spot it is. */
const POINTERS: Readonly<
  Record<SpotMark["name"], { readonly character: string; readonly rowsDown: number }>
> = {
  "tight spot": { character: "▲", rowsDown: 1 },
  "loosest spot": { character: "▼", rowsDown: -1 },
};
/** Approximate number of rows; the exact number puts every tick on a row. */
const ROWS = 10;

interface Grid {
  readonly columns: number;
  /** Number of rows above the axis. */
  readonly rows: number;
  column(x: number): number;
  row(y: number): number;
}

/** The picture of a profile in characters for a terminal, one string for each line; width in characters. */
export function profileText(picture: ProfilePicture, width: number): readonly string[] {
  const { xAxis, yAxis, limit, median, spots } = picture;
  const gutter = Math.max(...yAxis.ticks.map(({ label }) => label.length));
  const grid = gridFor(picture, width - gutter - limit.label.length - 3);
  const lines = cellsOf(picture, grid).map((cells, row) => {
    const tick = yAxis.ticks.find(({ at }) => grid.row(at) === row)?.label ?? "";
    const side = row === grid.rows ? "└" : tick === "" ? "│" : "┤";
    const name = row === grid.row(limit.y) ? ` ${limit.label}` : "";
    return `${tick.padStart(gutter)} ${side}${cells.join("")}${name}`.trimEnd();
  });
  const ends = [xAxis.from, xAxis.to].map((end) => String(Number(end.toFixed(3))));
  const room = grid.columns - (ends[0]?.length ?? 0);
  return [
    `${" ".repeat(gutter)} ${yAxis.label}`,
    ...lines,
    `${" ".repeat(gutter + 2)}${ends[0]}${padded(xAxis.label, ends[1] ?? "", room)}`,
    "",
    ...(spots.length === 0
      ? [`${PROFILE} ${median.label}`]
      : spots.map(({ name, label }) => `${POINTERS[name].character} ${label}`)
    ).map((line) => `${" ".repeat(gutter + 2)}${line}`),
  ];
}

function gridFor({ xAxis, yAxis }: ProfilePicture, columns: number): Grid {
  const intervals = yAxis.ticks.length - 1;
  const rows = intervals * Math.max(1, Math.round(ROWS / intervals));
  return {
    columns,
    rows,
    column: (x) => Math.round(((x - xAxis.from) / (xAxis.to - xAxis.from)) * (columns - 1)),
    row: (y) => Math.round(((yAxis.to - y) / (yAxis.to - yAxis.from)) * rows),
  };
}

/** The characters of the plot, row by row from the top; the last row is the axis. */
function cellsOf(picture: ProfilePicture, grid: Grid): string[][] {
  const { xAxis, median, limit, spots, exceeding } = picture;
  const limitRow = grid.row(limit.y);
  const profileRows = Array.from({ length: grid.columns }, (_, column) => {
    const x = xAxis.from + (column / (grid.columns - 1)) * (xAxis.to - xAxis.from);
    return { row: grid.row(heightAt(median.points, x)), exceeds: exceeding.some((part) => spans(part, x)) };
  });
  const cells = Array.from({ length: grid.rows + 1 }, (_, row) =>
    profileRows.map((profile): string => {
      if (row === profile.row) return PROFILE;
      if (profile.exceeds && row > profile.row && row <= limitRow) return OVER_LIMIT;
      if (row === limitRow) return LIMIT;
      return row === grid.rows ? "─" : " ";
    }),
  );
  for (const { x, y, name } of spots) {
    const { character, rowsDown } = POINTERS[name];
    const row = Math.min(Math.max(grid.row(y) + rowsDown, 0), grid.rows);
    cells[row]?.splice(grid.column(x), 1, character);
  }
  return cells;
}

function spans(part: readonly Point[], x: number): boolean {
  const [first, last] = [part[0], part.at(-1)];
  return first !== undefined && last !== undefined && first.x <= x && x <= last.x;
}

/** One text in the middle of a line and one at its end. */
function padded(middle: string, end: string, width: number): string {
  const before = Math.max(1, Math.floor((width - middle.length) / 2));
  return `${" ".repeat(before)}${middle}`.padEnd(width - end.length) + end;
}
