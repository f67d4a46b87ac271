import { describe, expect, test } from "vitest";
import { type CsvReadings, readCsv } from "../../src/intake/readCsv.ts";
import type { CsvOptions } from "../../src/intake/understanding.ts";

/** A log as a shop might keep it, and exactly what must come of it. */
interface UglyLog {
  readonly name: string;
  readonly source: string | Uint8Array;
  readonly options?: CsvOptions;
  readonly units: CsvReadings["units"];
  readonly method?: CsvReadings["method"];
  /** `[position, backlash]` or `[position, advancing, retracting]`. */
  readonly readings: readonly (readonly number[])[];
  /** The lines that are refused, with a piece of the reason. */
  readonly refused?: readonly (readonly [number, string])[];
}

const bytes = (text: string, encoding: BufferEncoding): Uint8Array =>
  new Uint8Array(Buffer.from(text, encoding));
const bigEndian = (text: string): Uint8Array => new Uint8Array(Buffer.from(text, "utf16le").swap16());

const LOGS: readonly UglyLog[] = [
  {
    name: "a title, a blank line, comments and a rule above and between the rows",
    source:
      "Cross slide, before scraping\n\n# read with the gib snug\nposition,backlash\n--------,--------\n0,0.21\n\n# tea\n50,0.22\n",
    units: undefined,
    readings: [
      [0, 0.21],
      [50, 0.22],
    ],
  },
  {
    name: "semicolons and decimal commas",
    source: "Position (mm);Backlash (mm)\n0;0,21\n12,5;0,22\n",
    units: "mm",
    readings: [
      [0, 0.21],
      [12.5, 0.22],
    ],
  },
  {
    name: "tabs, as pasted from a spreadsheet, with Windows line ends",
    source: "Pos [in]\tLost motion [thou]\tRemark\r\n0\t8\tchuck end\r\n1 1/2\t9,5\t\r\n",
    units: "in",
    readings: [
      [0, 0.008],
      [1.5, 0.0095],
    ],
  },
  {
    name: "a table drawn with pipes",
    source: "| position mm | backlash µm |\n|---|---|\n| 0 | 210 |\n| 40 | 225 |\n",
    units: "mm",
    readings: [
      [0, 0.21],
      [40, 0.225],
    ],
  },
  {
    name: "a stated separator that the headings alone would not show",
    source: "sep=|\nposition, mm|backlash, mm\n0|0,21\n30|0,2\n",
    units: "mm",
    readings: [
      [0, 0.21],
      [30, 0.2],
    ],
  },
  {
    name: "a byte-order mark before the headings",
    source: bytes("\uFEFFposition,backlash\n0,0.2\n", "utf8"),
    units: undefined,
    readings: [[0, 0.2]],
  },
  {
    name: "UTF-16 with its mark, little end first",
    source: bytes("\uFEFFposition;backlash (µm)\n0;200\n", "utf16le"),
    units: "mm",
    readings: [[0, 0.2]],
  },
  {
    name: "UTF-16 with its mark, big end first",
    source: bigEndian("\uFEFFposition\tbacklash\n0\t0.2\n"),
    units: undefined,
    readings: [[0, 0.2]],
  },
  {
    name: "UTF-16 without a mark",
    source: bytes("position,backlash\n0,0.2\n", "utf16le"),
    units: undefined,
    readings: [[0, 0.2]],
  },
  {
    name: "Latin-1 with a micro sign",
    source: bytes("position (mm);backlash (\u00b5m)\n0;200\n", "latin1"),
    units: "mm",
    readings: [[0, 0.2]],
  },
  {
    name: "line ends of an old machine",
    source: "position,backlash\r0,0.2\r10,0.3\r",
    units: undefined,
    readings: [
      [0, 0.2],
      [10, 0.3],
    ],
  },
  {
    name: "repeats in columns, some left empty or dashed",
    source: "position,backlash 1,backlash 2,backlash 3,mean\n0,0.20,0.21,,0.205\n25,0.22,-,0.23,0.225\n",
    units: undefined,
    readings: [
      [0, 0.2],
      [0, 0.21],
      [25, 0.22],
      [25, 0.23],
    ],
  },
  {
    name: "repeats headed by run and number only, columns in another order",
    source: "note,r1,r2,station,x (in)\nfirst,0.008,0.009,1,2\n,0.007,0.0075,2,4\n",
    units: "in",
    readings: [
      [2, 0.008],
      [2, 0.009],
      [4, 0.007],
      [4, 0.0075],
    ],
  },
  {
    name: "repeats headed by bare numbers",
    source: "Position;1;2\n0;0,20;0,21\n",
    units: undefined,
    readings: [
      [0, 0.2],
      [0, 0.21],
    ],
  },
  {
    name: "an unreadable cell among repeats",
    source: "position,reading 1,reading 2\n0,0.20,o.21\n10,0.22,0.23\n",
    units: undefined,
    readings: [
      [0, 0.2],
      [10, 0.22],
      [10, 0.23],
    ],
    refused: [[2, '"reading 2" is "o.21", which is not a number']],
  },
  {
    name: "pairs by the words of the shop, without a method",
    source: "Table position (mm);Dial fwd (mm);Dial reverse (mm)\n0;5,00;4,79\n50;5,00;4,81\n",
    units: "mm",
    method: "indicator-pair",
    readings: [
      [0, 5, 4.79],
      [50, 5, 4.81],
    ],
  },
  {
    name: "pairs repeated",
    source: "pos,advancing 1,retracting 1,advancing 2,retracting 2\n0,1.0,0.8,1.0,0.79\n9,1.0,0.7,,\n",
    units: undefined,
    method: "indicator-pair",
    readings: [
      [0, 1, 0.8],
      [0, 1, 0.79],
      [9, 1, 0.7],
    ],
  },
  {
    name: "half a pair",
    source: "pos,advancing,retracting\n0,1.0,0.8\n9,1.0,\n",
    units: undefined,
    method: "indicator-pair",
    readings: [[0, 1, 0.8]],
    refused: [[3, '"retracting" is empty beside its other half']],
  },
  {
    name: "readings of the handwheel's dial in divisions",
    source: "position (in),clockwise (div),counter-clockwise (div)\n0,98,3\n2,97.5,2\n",
    units: "in",
    method: "dial-pair",
    readings: [
      [0, 98, 3],
      [2, 97.5, 2],
    ],
  },
  {
    name: "readings of a dial said so by a line above, which are not converted",
    source: "survey.method: dial-pair\nslide.units: mm\nposition (in),forward,back\n1,98,3\n",
    units: "mm",
    method: "dial-pair",
    readings: [[25.4, 98, 3]],
  },
  {
    name: "units written in the cells, several of them",
    source: 'position,backlash\n0 mm,0.21 mm\n1",8 thou\n3-1/2",0.2mm\n',
    units: "mm",
    readings: [
      [0, 0.21],
      [25.4, 0.2032],
      [88.9, 0.2],
    ],
  },
  {
    name: "a number without a unit where the others have different ones",
    source: "position (mm),backlash\n0,0.21 mm\n10,8 thou\n20,0.2\n",
    units: "mm",
    readings: [
      [0, 0.21],
      [10, 0.2032],
    ],
    refused: [[4, '"backlash" has no unit']],
  },
  {
    name: "units in a row of their own",
    source: "Position,Backlash\n(mm),(µm)\n0,210\n",
    units: "mm",
    readings: [[0, 0.21]],
  },
  {
    name: "thousands set off, both ways round",
    source: 'position,backlash\n"1,234.5",0.2\n"1.234,5",0.2\n',
    units: undefined,
    readings: [
      [1234.5, 0.2],
      [1234.5, 0.2],
    ],
  },
  {
    name: "thousands that might be thousandths",
    source: 'position;backlash\n0;200\n"1,250";210\n',
    units: undefined,
    readings: [[0, 200]],
    refused: [[3, "may mean thousands or thousandths"]],
  },
  {
    name: "thousands that the decimal commas around them tell",
    source: "position;backlash\n1.250;0,21\n1 500;0,2\n",
    units: undefined,
    readings: [
      [1250, 0.21],
      [1500, 0.2],
    ],
  },
  {
    name: "decimal commas between commas in a few rows",
    source: "position,backlash\n0,0.21\n10,0,22\n20,0.23\n",
    units: undefined,
    readings: [
      [0, 0.21],
      [20, 0.23],
    ],
    refused: [[3, "more cells than the 2 columns"]],
  },
  {
    name: "missing cells, words and a summary below",
    source: "position,backlash\n0,0.21\n,0.22\n20,\n30,n/a\nsecond pass\n40,0.23\nMean,0.22\n",
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
    name: "a note with a line break and the separator in quotes",
    source: 'position,backlash,note\n0,0.2,"gib, loose\nagain"\n10,x,\n',
    units: undefined,
    readings: [[0, 0.2]],
    refused: [[4, '"backlash" is "x"']],
  },
  {
    name: "a quote that is never closed",
    source: 'position,backlash,note\n0,0.2,"loose\n10,0.3,\n20,0.4,"tight"\n',
    units: undefined,
    readings: [
      [0, 0.2],
      [10, 0.3],
      [20, 0.4],
    ],
  },
  {
    name: "a number that is no number, an overflow and an exponent",
    source: "position,backlash\nNaN,0.2\n1,1e999\n2,2.1E-1\n3,−0.01\n",
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
    name: "a column of numbers headed by #",
    source: "#;Position;Play\n1;0;0,2\n2;10;0,25\n",
    units: undefined,
    readings: [
      [0, 0.2],
      [10, 0.25],
    ],
  },
  {
    name: "units that only the person who opens it knows",
    source: "position,backlash\n1,0.008\n",
    options: { units: "in" },
    units: "in",
    readings: [[1, 0.008]],
  },
  {
    name: "one labelled column beside one that is not",
    source: "position (in),backlash\n1,0.008\n",
    units: "in",
    readings: [[1, 0.008]],
  },
];

function figures(csv: CsvReadings): readonly (readonly unknown[])[] {
  return csv.readings.map(({ position, backlash, advancing, retracting }) =>
    [position, backlash, advancing, retracting].filter((value) => value !== undefined),
  );
}

describe("a log as a shop might keep it", () => {
  test.each(LOGS)("$name", ({ source, options, units, method = "push-pull", readings, refused = [] }) => {
    const outcome = readCsv(source, options);
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.problem));
    expect(figures(outcome.value)).toEqual(readings);
    expect(outcome.value.units).toBe(units);
    expect(outcome.value.method).toBe(method);
    expect(outcome.value.refused.map(({ row }) => row)).toEqual(refused.map(([row]) => row));
    for (const [index, [, reason]] of refused.entries()) {
      expect(outcome.value.refused[index]?.reason).toContain(reason);
    }
  });
});
