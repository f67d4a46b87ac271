import { assessWithDraws } from "../../analysis/assess.ts";
import { failed, succeeded } from "../../inspection/problem.ts";
import type { Question, Reply } from "./messages.ts";

self.onmessage = ({ data }: MessageEvent<Question>) => self.postMessage(replyTo(data));

function replyTo({ inspection, survey }: Question): Reply {
  try {
    const assessed = assessWithDraws(inspection, survey);
    return assessed.ok
      ? { answer: succeeded(assessed.value.assessment), kept: assessed.value.keptDraws() }
      : { answer: assessed, kept: null };
  } catch (error) {
    const said = error instanceof Error ? error.message : String(error);
    const answer = failed(
      "",
      `the assessment failed: ${said}`,
      "This is a fault of the program; what was entered is kept.",
    );
    return { answer, kept: null };
  }
}
