import { columns, items, wrapped } from "../plainText.ts";
import { capitalised } from "../words.ts";
import type { ThreadSaid } from "./threadSaid.ts";
import { threadSections } from "./threadSections.ts";
import { threadCautions, threadTitle } from "./threadWords.ts";

const WIDTH = 80;

/** A replacement thread as text for a terminal: the running fit first, then what it takes to cut and check it. */
export function threadText(said: ThreadSaid): string {
  const { thread, units, holdsLoad, assumed, assumedOfTools } = said;
  const title = threadTitle(thread.form, thread.size, thread.designation, units);
  const sections: readonly (readonly string[])[] = [
    wrapped(`Replacement thread: ${title}`, WIDTH),
    ...threadSections(said).map(({ title: heading, facts }) => [heading, ...columns(facts, WIDTH)]),
    listed("What to know", thread.notes),
    listed("Cautions", threadCautions(holdsLoad)),
    listed("Assumed", [...assumed, ...assumedOfTools]),
  ];
  const text = sections.filter((lines) => lines.length > 0).map((lines) => lines.join("\n"));
  return `${text.join("\n\n")}\n`;
}

function listed(title: string, lines: readonly string[]): readonly string[] {
  return lines.length === 0 ? [] : [capitalised(title), ...items(lines, WIDTH)];
}
