import { openSlide } from "../inspection/open.ts";
import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import { decodeText } from "../intake/decode.ts";
import { fileKindOf } from "../intake/fileKind.ts";
import type { Statement } from "../intake/statements.ts";
import { type CommandLine, textOf } from "./command.ts";
import type { FileRead } from "./fileRead.ts";
import { fromCsv } from "./fromCsv.ts";
import { fromInspection } from "./fromInspection.ts";
import { readOverrides } from "./overrides.ts";
import { readSource } from "./source.ts";

export type FileReader = (file: string) => Promise<Outcome<FileRead>>;

/**
 * What reads a file, an inspection or a log, together with what the command line says of it: an option stands before
 * the slide named with --slide, and that before the file.
 */
export async function fileReader(line: CommandLine): Promise<Outcome<FileReader>> {
  const command = readOverrides(line);
  if (!command.ok) return command;
  const slideFile = textOf(line, "slide");
  const slide = slideFile === undefined ? succeeded(undefined) : await readSlide(slideFile);
  if (!slide.ok) return slide;
  const elsewhere = { slide: slide.value, command: command.value };
  return succeeded(async (file) => {
    const bytes = await readSource(file);
    const found = bytes.ok ? fileKindOf(bytes.value) : bytes;
    if (!found.ok) return found;
    const { kind, text } = found.value;
    return kind === "inspection" ? fromInspection(text, elsewhere) : fromCsv(text, file, elsewhere);
  });
}

/** What a slide file says; any part but the unit may be missing. */
export async function readSlide(file: string): Promise<Outcome<Statement>> {
  const bytes = await readSource(file);
  const text = bytes.ok ? decodeText(bytes.value) : bytes;
  const slide = text.ok ? openSlide(text.value) : text;
  if (slide.ok)
    return succeeded({ by: `the slide in ${file}`, units: slide.value.units, slide: slide.value });
  const { where, what, cure } = slide.problem;
  return failed([file, where].filter((place) => place !== "").join(": "), what, cure);
}
