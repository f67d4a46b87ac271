import type { Method } from "../../../src/inspection/schema.ts";
import type { CsvOptions } from "../../../src/intake/understanding.ts";

/** A log as a shop might keep it, in a file of this folder, and what must come of it: written by hand. */
export interface UglyLog {
  readonly file: string;
  readonly what: string;
  readonly options?: CsvOptions;
}

export interface ReadLog extends UglyLog {
  readonly units: "mm" | "in" | undefined;
  /** Push-pull where it is left out. */
  readonly method?: Method;
  /** A reading in full, or only its figures: position and backlash, or position, advancing and retracting. */
  readonly readings: readonly (readonly number[] | Readonly<Record<string, unknown>>)[];
  /** The lines that are refused, each with a piece of the reason. */
  readonly refused?: readonly (readonly [line: number, reason: string])[];
}

export interface RefusedLog extends UglyLog {
  /** Where it fails, and a piece of the reason. */
  readonly fails: readonly [where: string, reason: string];
}

export const UGLY_LOGS: readonly (ReadLog | RefusedLog)[] = [
  {
    file: "titles-comments-rules.csv",
    what: "a title, a blank line, comments and a rule above and between the rows",
    units: undefined,
    readings: [
      [0, 0.21],
      [50, 0.22],
    ],
  },
  {
    file: "semicolons-decimal-commas.csv",
    what: "semicolons and decimal commas",
    units: "mm",
    readings: [
      [0, 0.21],
      [12.5, 0.22],
    ],
  },
  {
    file: "tabs-windows-line-ends.csv",
    what: "tabs, as pasted from a spreadsheet, with Windows line ends",
    units: "in",
    readings: [
      [0, 0.008],
      [1.5, 0.0095],
    ],
  },
  {
    file: "pipes.csv",
    what: "a table drawn with pipes",
    units: "mm",
    readings: [
      [0, 0.21],
      [40, 0.225],
    ],
  },
  {
    file: "stated-separator.csv",
    what: "a stated separator that the headings alone would not show",
    units: "mm",
    readings: [
      [0, 0.21],
      [30, 0.2],
    ],
  },
  {
    file: "byte-order-mark.csv",
    what: "a byte-order mark before the headings",
    units: undefined,
    readings: [[0, 0.2]],
  },
  {
    file: "utf-16-little-end.csv",
    what: "UTF-16 with its mark, little end first",
    units: "mm",
    readings: [[0, 0.2]],
  },
  {
    file: "utf-16-big-end.csv",
    what: "UTF-16 with its mark, big end first",
    units: undefined,
    readings: [[0, 0.2]],
  },
  {
    file: "utf-16-unmarked.csv",
    what: "UTF-16 without a mark",
    units: undefined,
    readings: [[0, 0.2]],
  },
  {
    file: "latin-1.csv",
    what: "Latin-1 with a micro sign",
    units: "mm",
    readings: [[0, 0.2]],
  },
  {
    file: "old-line-ends.csv",
    what: "line ends of an old machine",
    units: undefined,
    readings: [
      [0, 0.2],
      [10, 0.3],
    ],
  },
  {
    file: "repeats-in-columns.csv",
    what: "repeats in columns, some left empty or dashed",
    units: undefined,
    readings: [
      [0, 0.2],
      [0, 0.21],
      [25, 0.22],
      [25, 0.23],
    ],
  },
  {
    file: "repeats-by-run-number.csv",
    what: "repeats headed by run and number only, columns in another order",
    units: "in",
    readings: [
      [2, 0.008],
      [2, 0.009],
      [4, 0.007],
      [4, 0.0075],
    ],
  },
  {
    file: "repeats-by-bare-number.csv",
    what: "repeats headed by bare numbers",
    units: undefined,
    readings: [
      [0, 0.2],
      [0, 0.21],
    ],
  },
  {
    file: "bad-cell-among-repeats.csv",
    what: "an unreadable cell among repeats",
    units: undefined,
    readings: [
      [0, 0.2],
      [10, 0.22],
      [10, 0.23],
    ],
    refused: [[2, '"reading 2" is "o.21", which is not a number']],
  },
  {
    file: "pairs-in-shop-words.csv",
    what: "pairs by the words of the shop, without a method",
    units: "mm",
    method: "indicator-pair",
    readings: [
      [0, 5, 4.79],
      [50, 5, 4.81],
    ],
  },
  {
    file: "pairs-repeated.csv",
    what: "pairs repeated",
    units: undefined,
    method: "indicator-pair",
    readings: [
      [0, 1, 0.8],
      [0, 1, 0.79],
      [9, 1, 0.7],
    ],
  },
  {
    file: "half-a-pair.csv",
    what: "half a pair",
    units: undefined,
    method: "indicator-pair",
    readings: [[0, 1, 0.8]],
    refused: [[3, '"retracting" is empty beside its other half']],
  },
  {
    file: "dial-divisions.csv",
    what: "readings of the handwheel's dial in divisions",
    units: "in",
    method: "dial-pair",
    readings: [
      [0, 98, 3],
      [2, 97.5, 2],
    ],
  },
  {
    file: "dial-said-above.csv",
    what: "readings of a dial said so by a line above, which are not converted",
    units: "mm",
    method: "dial-pair",
    readings: [[25.4, 98, 3]],
  },
  {
    file: "units-in-cells.csv",
    what: "units written in the cells, several of them",
    units: "mm",
    readings: [
      [0, 0.21],
      [25.4, 0.2032],
      [88.9, 0.2],
    ],
  },
  {
    file: "unit-missing-among-others.csv",
    what: "a number without a unit where the others have different ones",
    units: "mm",
    readings: [
      [0, 0.21],
      [10, 0.2032],
    ],
    refused: [[4, '"backlash" has no unit']],
  },
  {
    file: "units-row.csv",
    what: "units in a row of their own",
    units: "mm",
    readings: [[0, 0.21]],
  },
  {
    file: "thousands-both-ways.csv",
    what: "thousands set off, both ways round",
    units: undefined,
    readings: [
      [1234.5, 0.2],
      [1234.5, 0.2],
    ],
  },
  {
    file: "thousands-or-thousandths.csv",
    what: "thousands that might be thousandths",
    units: undefined,
    readings: [[0, 200]],
    refused: [[3, "may mean thousands or thousandths"]],
  },
  {
    file: "thousands-told-by-commas.csv",
    what: "thousands that the decimal commas around them tell",
    units: undefined,
    readings: [
      [1250, 0.21],
      [1500, 0.2],
    ],
  },
  {
    file: "commas-between-commas.csv",
    what: "decimal commas between commas in a few rows",
    units: undefined,
    readings: [
      [0, 0.21],
      [20, 0.23],
    ],
    refused: [[3, "more cells than the 2 columns"]],
  },
  {
    file: "missing-words-summary.csv",
    what: "missing cells, words and a summary below",
    units: undefined,
    readings: [
      [0, 0.21],
      [40, 0.23],
    ],
    refused: [
      [3, '"position" is empty'],
      [4, "it has a position but no reading"],
      [5, "it has a position but no reading"],
      [6, '"position" is "second pass", which is not a number'],
      [8, '"position" is "Mean", which is not a number'],
    ],
  },
  {
    file: "note-over-two-lines.csv",
    what: "a note with a line break and the separator in quotes",
    units: undefined,
    readings: [[0, 0.2]],
    refused: [[4, '"backlash" is "x"']],
  },
  {
    file: "quote-never-closed.csv",
    what: "a quote that is never closed",
    units: undefined,
    readings: [
      [0, 0.2],
      [10, 0.3],
      [20, 0.4],
    ],
  },
  {
    file: "no-number-overflow-exponent.csv",
    what: "a number that is no number, an overflow and an exponent",
    units: undefined,
    readings: [
      [2, 0.21],
      [3, -0.01],
    ],
    refused: [
      [2, '"position" is "NaN"'],
      [3, '"backlash" is "1e999"'],
    ],
  },
  {
    file: "numbered-rows.csv",
    what: "a column of numbers headed by #",
    units: undefined,
    readings: [
      [0, 0.2],
      [10, 0.25],
    ],
  },
  {
    file: "units-only-known-to-reader.csv",
    what: "units that only the person who opens it knows",
    options: { units: "in" },
    units: "in",
    readings: [[1, 0.008]],
  },
  {
    file: "one-column-labelled.csv",
    what: "one labelled column beside one that is not",
    units: "in",
    readings: [[1, 0.008]],
  },
  {
    file: "targets-in-rows.csv",
    what: "positions read at targets, a row for each, with directions as signs and words",
    units: "mm",
    method: "positioning",
    readings: [
      { target: 0, direction: "advancing", reading: 0.012, run: 1 },
      { target: 0, direction: "retracting", reading: -0.03, run: 1 },
      { target: 50, direction: "advancing", reading: 50.01, run: 2 },
      { target: 50, direction: "retracting", reading: 49.97, run: 2 },
    ],
  },
  {
    file: "targets-with-a-column-for-each-direction.csv",
    what: "positions read at targets, with a column for each direction and run",
    units: "mm",
    method: "positioning",
    readings: [
      { target: 0, direction: "advancing", reading: 0.01, run: 1 },
      { target: 0, direction: "retracting", reading: -0.02, run: 1 },
      { target: 0, direction: "advancing", reading: 0.012, run: 2 },
      { target: 0, direction: "retracting", reading: -0.021, run: 2 },
      { target: 100, direction: "advancing", reading: 100, run: 1 },
      { target: 100, direction: "retracting", reading: 99.96, run: 1 },
    ],
  },
  {
    file: "targets-with-runs-not-counted.csv",
    what: "positions read at targets, whose runs nothing counts, and a direction that is none",
    units: undefined,
    method: "positioning",
    readings: [
      { target: 10, direction: "advancing", reading: 10.02, run: 1 },
      { target: 10, direction: "retracting", reading: 9.97, run: 1 },
      { target: 10, direction: "advancing", reading: 10.01, run: 2 },
      { target: 20, direction: "advancing", reading: 20, run: 1 },
    ],
    refused: [[6, '"approach" is "sideways", which is no direction']],
  },
  {
    file: "words-german.csv",
    what: "headings in German behind a byte-order mark",
    units: "mm",
    readings: [{ position: 0, backlash: 0.21, note: "Gehäuse klemmt" }, [50, 0.22]],
  },
  {
    file: "words-french.csv",
    what: "headings in French, in Latin-1",
    units: "mm",
    readings: [{ position: 0, backlash: 0.21, note: "serré" }],
  },
  {
    file: "words-spanish.csv",
    what: "headings in Spanish between tabs",
    units: "mm",
    readings: [
      [0, 0.21],
      [25, 0.2],
    ],
  },
  {
    file: "heading-over-several-columns.csv",
    what: "one heading over three columns, as spreadsheets merge cells",
    units: undefined,
    readings: [
      [0, 0.2],
      [0, 0.21],
      [0, 0.22],
      [25, 0.23],
      [25, 0.24],
    ],
  },
  {
    file: "repeats-numbered-below-the-heading.csv",
    what: "one heading over three columns, which are numbered in the row below",
    units: undefined,
    readings: [
      [0, 0.2],
      [0, 0.21],
      [0, 0.19],
    ],
  },
  {
    file: "date-and-time.csv",
    what: "a column for the date beside one for the time",
    units: undefined,
    readings: [
      { position: 0, backlash: 0.21, time: "2026-03-14 09:30" },
      { position: 25, backlash: 0.22, time: "2026-03-14" },
    ],
  },
  {
    file: "struck-yes-and-no.csv",
    what: "a column that says of each reading whether it is struck",
    units: undefined,
    readings: [[0, 0.2], { position: 0, backlash: 0.9, excluded: "bumped the stand" }, [25, 0.21]],
  },
  {
    file: "kept-as-text.csv",
    what: "figures that a spreadsheet was made to keep as text",
    units: undefined,
    readings: [
      [0, 0.21],
      [25, 0.22],
    ],
  },
  {
    file: "fractions-in-one-character.csv",
    what: "fractions of an inch written as one character",
    units: "in",
    readings: [
      [0.5, 0.008],
      [3.5, 0.009],
      [12.75, 0.01],
    ],
  },
  {
    file: "thousands-by-apostrophe.csv",
    what: "thousands set off by an apostrophe",
    units: undefined,
    readings: [
      [1250.5, 0.21],
      [900, 0.2],
    ],
  },
  {
    file: "thousands-by-blank.csv",
    what: "thousands set off by blanks that do not break",
    units: "mm",
    readings: [
      [1250.5, 0.21],
      [1300, 0.2],
    ],
  },
  {
    file: "columns-set-out-with-blanks.csv",
    what: "columns set out with blanks below a title",
    units: undefined,
    readings: [
      { position: 0, backlash: 0.21, note: "snug" },
      { position: 25, backlash: 0.22, note: "gib tight" },
    ],
  },
  {
    file: "columns-set-out-with-single-blanks.csv",
    what: "columns with one blank between them",
    units: undefined,
    readings: [
      [0, 0.21],
      [25, 0.22],
      [-5, 0.2],
    ],
  },
  {
    file: "blanks-where-a-cell-is-missing.csv",
    what: "columns set out with blanks, where it cannot be told which cell is missing",
    units: undefined,
    method: "indicator-pair",
    readings: [
      [0, 1, 0.8],
      [50, 1.01, 0.8],
    ],
    refused: [[3, "fewer cells than the 3 columns"]],
  },
  {
    file: "ditto-marks.csv",
    what: "ditto marks, which are no quotes around what stands between them",
    units: undefined,
    readings: [
      { position: 0, backlash: 0.2, note: "gib snug" },
      { position: 10, backlash: 0.3, note: '"' },
      { position: 20, backlash: 0.4, note: '"' },
      { position: 30, backlash: 0.4, note: '"' },
    ],
  },
  {
    file: "logs-put-together.csv",
    what: "two logs put together, with their headings",
    units: undefined,
    readings: [
      [0, 0.2],
      [25, 0.21],
      [0, 0.22],
      [25, 0.23],
    ],
  },
  {
    file: "trailing-separators.csv",
    what: "rows that a spreadsheet padded with separators",
    units: undefined,
    readings: [
      [0, 0.21],
      [25, 0.22],
    ],
  },
  {
    file: "tenths-beside-millimetres.csv",
    what: "tenths, which are of a thousandth of an inch, among millimetres",
    units: "mm",
    readings: [[0, 0.2]],
    refused: [[3, '"backlash" is in tenths']],
  },
  {
    file: "units-line.csv",
    what: "the unit in a line above",
    units: "mm",
    readings: [[0, 0.21]],
  },
  {
    file: "lines-of-the-slide.csv",
    what: "lines that say something of the slide, padded by a spreadsheet",
    units: "mm",
    readings: [[0, 0.21]],
  },
  {
    file: "no-headings.csv",
    what: "figures without headings",
    fails: ["", "there is no row of headings"],
  },
  {
    file: "unknown-headings.csv",
    what: "headings that say nothing known",
    fails: ["line 1", 'the columns found are "Where", "How much"'],
  },
  {
    file: "two-positions.csv",
    what: "two columns that could each be the position",
    fails: ["line 1", "2 columns could each be the position"],
  },
  {
    file: "one-quantity-in-two-units.csv",
    what: "one lost motion written in two units, which is not two readings",
    fails: ["line 1", "2 columns could each be the backlash"],
  },
  {
    file: "empty.csv",
    what: "nothing",
    fails: ["", "there is nothing in it"],
  },
  {
    file: "picture.csv",
    what: "a picture",
    fails: ["", "this is not a text but another kind of file"],
  },
  {
    file: "decimal-commas-in-quotes.csv",
    what: "decimal commas in quotes between commas",
    units: undefined,
    readings: [
      [0, 0.21],
      [12.5, 0.22],
    ],
  },
  {
    file: "minus-and-dashes.csv",
    what: "the minus sign of typography, and dashes for it and for nothing",
    units: undefined,
    readings: [
      [-50, 0.2],
      [-25, 0.21],
      [25, 0.2],
    ],
    refused: [[4, "it has a position but no reading"]],
  },
  {
    file: "backlash-in-degrees.csv",
    what: "a unit that is none of length",
    fails: ["line 1", 'the unit in "backlash (°)" cannot be read'],
  },
  {
    file: "figures-above-the-headings.csv",
    what: "rows of figures above the headings",
    units: undefined,
    readings: [[50, 0.23]],
    refused: [
      [1, "it stands above the headings"],
      [2, "it stands above the headings"],
    ],
  },
  {
    file: "quotes-of-json.csv",
    what: "texts in quotation marks as in JSON, as this program writes what would not come back plainly",
    units: undefined,
    readings: [
      { position: 0, backlash: 0.21, note: "=1+2" },
      { position: 5, backlash: 0.2, note: "a\nb" },
      { position: 9, backlash: 0.2, note: '"quoted"' },
    ],
  },
  {
    file: "mixed-line-ends.csv",
    what: "line ends of three systems, and none at the end",
    units: undefined,
    readings: [
      [0, 0.2],
      [10, 0.21],
      [20, 0.22],
      [30, 0.23],
    ],
  },
  {
    file: "stations-and-repeats-in-inches.csv",
    what: "station numbers beside positions, repeats, dashes and decimals without a zero",
    units: "in",
    readings: [
      { position: 0, backlash: 0.008, note: "chuck end" },
      { position: 0, backlash: 0.009, note: "chuck end" },
      [2.5, 0.007],
      [2.5, 0.0075],
      { position: 5, backlash: 0.008, note: "oiled, again" },
    ],
  },
  {
    file: "centimetres-and-micrometres.csv",
    what: "centimetres and micrometres",
    units: "mm",
    readings: [
      [0, 0.21],
      [125, 0.195],
    ],
  },
  {
    file: "heading-over-two-lines.csv",
    what: "headings with a line end in them, and the line of a bad row counted from the top",
    units: "mm",
    readings: [[0, 0.21]],
    refused: [[5, '"Backlash (mm)" is "x"']],
  },
  {
    file: "separator-mark-and-byte-order-mark.csv",
    what: "a byte-order mark before a stated separator",
    units: "mm",
    readings: [[0, 0.21]],
  },
  {
    file: "divisions-in-cells.csv",
    what: "divisions of a dial written in the cells, and a length among them",
    units: "mm",
    method: "dial-pair",
    readings: [
      [0, 98, 3],
      [50, 97.5, 2],
    ],
    refused: [[4, '"Dial −" is not in the unit of its column']],
  },
  {
    file: "footnote-marks.csv",
    what: "figures with marks of doubt, which are refused and not guessed",
    units: undefined,
    readings: [[30, 0.22]],
    refused: [
      [2, '"*" is not a known unit'],
      [3, '"backlash" is "~0.2"'],
      [4, '"backlash" is "<0.01"'],
    ],
  },
  {
    file: "halves-in-rows.csv",
    what: "the halves of pairs in rows of their own",
    fails: ["line 1", "the halves are not in one row"],
  },
  {
    file: "halves-in-rows-by-method.csv",
    what: "the halves of pairs in rows of their own, by a method that the reader gives",
    options: { method: "indicator-pair" },
    units: undefined,
    method: "indicator-pair",
    readings: [
      { position: 0, advancing: 5, retracting: 4.79, note: "stiff" },
      [25, 5.1, 4.9],
      [25, 5.11, 4.92],
    ],
    refused: [
      [7, "it is the retracting half of a pair whose other half is missing"],
      [9, '"direction" is "sideways", which is no direction'],
    ],
  },
  {
    file: "commas-in-a-note-without-quotes.csv",
    what: "a note with a comma that stands in no quotes",
    units: undefined,
    readings: [{ position: 10, backlash: 0.22, note: "fine" }],
    refused: [[2, "more cells than the 3 columns"]],
  },
  {
    file: "comment-after-the-row.csv",
    what: "a comment behind a row, which is its note, and a row that is a comment",
    units: undefined,
    readings: [{ position: 0, backlash: 0.21, note: "# first pass" }, [10, 0.22]],
  },
  {
    file: "blank-inside-a-number.csv",
    what: "a blank inside a number",
    units: undefined,
    readings: [[10, 0.22]],
    refused: [[2, '"backlash" is "0. 21", which is not a number']],
  },
  {
    file: "pairs-and-their-difference.csv",
    what: "pairs beside their difference, which is read only where the pair is missing",
    units: undefined,
    method: "indicator-pair",
    readings: [[0, 1, 0.8], { position: 25, backlash: 0.21 }],
    refused: [[4, '"retracting" is empty beside its other half']],
  },
  {
    file: "capitals-and-points.csv",
    what: "short headings in capitals with points",
    units: undefined,
    readings: [
      [0, 0.21],
      [25, 0.22],
    ],
  },
  {
    file: "a-title-that-names-the-columns.csv",
    what: "a title that has the words of headings in it",
    units: "mm",
    readings: [
      [0, 0.3],
      [10, 0.31],
    ],
  },
  {
    file: "decimal-commas-and-tabs.csv",
    what: "decimal commas between tabs, and a point that sets off thousands",
    units: undefined,
    readings: [
      [0, 0.21],
      [1250, 0.22],
    ],
  },
  {
    file: "zero-width-and-hard-blanks.csv",
    what: "blanks that do not break around everything",
    units: "mm",
    readings: [[0, 0.21]],
  },
  {
    file: "mean-beside-repeats.csv",
    what: "averages beside the readings that they were worked out from, which are not readings",
    units: undefined,
    readings: [
      [0, 0.2],
      [0, 0.22],
    ],
  },
];
