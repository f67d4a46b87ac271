import { openSlide } from "../inspection/open.ts";
import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import type { PartialInspection } from "../inspection/schema.ts";
import { fileKindOf } from "../intake/fileKind.ts";
import type { Wanted } from "../intake/missing.ts";
import type { Statement } from "../intake/statements.ts";
import { type CommandLine, textOf } from "./command.ts";
import type { FileRead } from "./fileRead.ts";
import { fromCsv } from "./fromCsv.ts";
import { fromInspection } from "./fromInspection.ts";
import { readLogOptions } from "./logOptions.ts";
import { readOverrides } from "./overrides.ts";
import { readSource } from "./source.ts";

export type FileReader<Made> = (file: string) => Promise<Outcome<FileRead<Made>>>;

/**
 * Makes what reads a file, an inspection or a log. An option overrides the slide named with --slide, which overrides
 * the file.
 *
 * @param line the command line
 * @param wanted how much of an inspection each file must hold
 * @returns the reader; a problem where an option or the slide cannot be read
 */
export async function fileReader<Made extends PartialInspection>(
  line: CommandLine,
  wanted: Wanted<Made>,
): Promise<Outcome<FileReader<Made>>> {
  const command = readOverrides(line);
  if (!command.ok) return command;
  const log = readLogOptions(line);
  if (!log.ok) return log;
  const slideFile = textOf(line, "slide");
  const slide = slideFile === undefined ? succeeded(undefined) : await readSlide(slideFile);
  if (!slide.ok) return slide;
  const elsewhere = { slide: slide.value, command: command.value, log: log.value };
  return succeeded(async (file) => {
    const bytes = await readSource(file);
    const found = bytes.ok ? fileKindOf(bytes.value) : bytes;
    if (!found.ok) return found;
    const { kind, text } = found.value;
    return kind === "inspection"
      ? fromInspection(text, elsewhere, wanted)
      : fromCsv(text, file, elsewhere, wanted);
  });
}

/** The slide in a file; any part but the unit may be missing. */
export async function readSlide(file: string): Promise<Outcome<Statement>> {
  const bytes = await readSource(file);
  const found = bytes.ok ? fileKindOf(bytes.value) : bytes;
  if (found.ok && found.value.kind === "log") return notASlide(file);
  const slide = found.ok ? openSlide(found.value.text) : found;
  if (slide.ok)
    return succeeded({ by: `the slide in ${file}`, units: slide.value.units, slide: slide.value });
  const { where, what, cure } = slide.problem;
  return failed([file, where].filter((place) => place !== "").join(": "), what, cure);
}

function notASlide(file: string): Outcome<never> {
  return failed(
    `--slide ${file}`,
    "this is a log or other text, not an inspection",
    "Name an inspection file (JSON). Lines of a log such as slide.screw.lead: 4 are read with the log itself.",
  );
}
