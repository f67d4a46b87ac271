import { failed, inOneLine, type Outcome } from "../../inspection/problem.ts";
import type { Inspection } from "../../inspection/schema.ts";
import type { InspectionEditor } from "../editing/inspectionEditor.ts";
import { withoutJoined, withSurveysOf } from "../editing/joinSurveys.ts";
import { readFile } from "../files/readFile.ts";
import { notify } from "../ui/notice.ts";

/** Adds the surveys of a file of the same slide, to be taken back; a file of another slide is refused with the reason. */
export async function addSurveys(from: EventTarget, file: File, editor: InspectionEditor): Promise<void> {
  const other = await inspectionIn(file);
  const joined = other.ok ? withSurveysOf(editor.state, other.value) : other;
  if (!joined.ok) {
    notify(from, { tone: "wrong", text: `${file.name}: ${inOneLine(joined.problem)}` });
    return;
  }
  const { state, surveys } = joined.value;
  editor.setState(state);
  notify(from, {
    tone: "done",
    text: `${surveys.length === 1 ? "One survey was" : `${surveys.length} surveys were`} added from ${file.name}.`,
    action: { label: "Undo", act: () => editor.setState(withoutJoined(editor.state, joined.value)) },
  });
}

async function inspectionIn(file: File): Promise<Outcome<Inspection>> {
  const opened = await readFile(file);
  if (!opened.ok) return opened;
  if (opened.value.kind === "inspection" && opened.value.stored.inspection !== null) {
    return { ok: true, value: opened.value.stored.inspection };
  }
  return failed(
    "",
    "this is a log of readings, which does not say of which slide",
    "Drop it on the page instead: it can be taken in as a survey of its own.",
  );
}
