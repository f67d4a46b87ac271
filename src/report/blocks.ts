import type { Severity } from "../analysis/assessment.ts";
import type { Setting } from "../picture/setting.ts";

/**
 * A piece of text that belongs to no medium. The page (`app/results/evidence/blocks.ts`), the printed report
 * (`document/blocks.ts`) and the terminal (`plainText.ts`) each show it in their own way.
 */
export type Block = Paragraph | List | Facts | Table | Bars | Picture;

/** A title with what stands under it. */
export interface Part {
  readonly title: string;
  readonly blocks: readonly Block[];
}

export interface Paragraph {
  readonly kind: "paragraph";
  readonly text: string;
}

/** Entries one below another. */
export interface List {
  readonly kind: "list";
  readonly entries: readonly Entry[];
}

export interface Entry {
  /** Set off before the text, without a full stop. */
  readonly lead?: string;
  readonly text: string;
  readonly severity?: Severity;
  /** The readings that it is about, 0-based in file order. */
  readonly readings?: readonly number[];
}

/** Quantities and other facts by name. */
export interface Facts {
  readonly kind: "facts";
  readonly rows: readonly Fact[];
}

export type Fact = readonly [name: string, words: string];

export interface Table {
  readonly kind: "table";
  readonly caption: string;
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
}

export interface Column {
  readonly name: string;
  /** Figures stand to the right, words to the left. */
  readonly holds: "figures" | "words";
}

export interface Row {
  /** What the row is about, then a cell for each further column. */
  readonly cells: readonly (string | Figure)[];
  /** The sum of the rows above. */
  readonly as?: "total";
}

/** A value with its interval beneath it. */
export interface Figure {
  readonly value: string;
  /** Empty where there is none to give. */
  readonly interval: string;
}

export interface Picture {
  readonly kind: "picture";
  readonly title: string;
  /** Draws the picture as it is set: as a sheet with its title, or without it across a page or in a narrow column. */
  readonly svg: (setting: Setting) => string;
  /** What the picture does not say itself. */
  readonly caption?: string;
}

/** Shares of a whole, each drawn as a bar. */
export interface Bars {
  readonly kind: "bars";
  readonly bars: readonly Bar[];
}

export interface Bar {
  readonly name: string;
  readonly words: string;
  /** From 0 to 1. */
  readonly share: number;
  readonly isLikeliest: boolean;
}

/** A list of plain sentences. */
export function sentenceList(sentences: readonly string[]): List {
  return { kind: "list", entries: sentences.map((text) => ({ text })) };
}
