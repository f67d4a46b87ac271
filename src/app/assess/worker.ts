import { assessSurvey } from "../../analysis/assess.ts";
import { failed } from "../../inspection/problem.ts";
import type { Answer, Question } from "./messages.ts";

self.onmessage = ({ data }: MessageEvent<Question>) => self.postMessage(answerTo(data));

function answerTo({ inspection, survey }: Question): Answer {
  try {
    return assessSurvey(inspection, survey);
  } catch (error) {
    const said = error instanceof Error ? error.message : String(error);
    return failed(
      "",
      `the assessment failed: ${said}`,
      "This is a fault of the program; what was entered is kept.",
    );
  }
}
