import { expect, test } from "vitest";
import type { Inspection } from "../../../src/inspection/schema.ts";
import { assessmentReport } from "../../../src/report/assessment/assessmentReport.ts";
import { exampleAssessment } from "../exampleAssessment.ts";
import { exampleInspection } from "../exampleInspection.ts";

const TITLE = "<h2>History of the slide</h2>";

function withHistory(): Inspection {
  const inspection = exampleInspection();
  const [survey] = inspection.surveys;
  if (survey === undefined) throw new Error("The example has no survey.");
  return {
    ...inspection,
    surveys: [survey, { ...survey, id: "after", taken: "2026-03-20", stage: "after-adjusting" }],
    events: [
      {
        date: "2026-03-15",
        kind: "adjusted",
        note: "Nut taken up <a little>",
        pictures: [
          { id: "a", type: "image/png", width: 40, height: 30, caption: 'The "nut"', data: "AAEC" },
          { id: "b", type: "image/png", width: 40, height: 30 },
        ],
      },
    ],
    verdicts: [
      {
        survey: "after",
        given: "2026-03-20T09:00:00Z",
        version: "0.0.9",
        verdict: "leave-alone",
        title: "Leave it alone",
        chance: 0.99,
        summary: "",
      },
    ],
  };
}

test("the report on the only survey of a slide that nothing was done to tells no history", () => {
  expect(assessmentReport(exampleInspection(), exampleAssessment())).not.toContain(TITLE);
});

test("the report tells surveys and events by date, the verdict on the others as it was given, and this one as its own", () => {
  const report = assessmentReport(withHistory(), exampleAssessment());
  const text = report
    .slice(report.indexOf(TITLE))
    .replace(/<[^>]*>/g, " ")
    .replace(/\s+/g, " ");
  const order = [
    "14 March 2026 Survey, before repair, this report",
    "15 March 2026 Adjusted Nut taken up &lt;a little&gt;",
    "20 March 2026 Survey, after adjusting Leave it alone (given on 20 March 2026 by version 0.0.9)",
  ];
  expect(order.map((part) => text.indexOf(part) >= 0)).toEqual([true, true, true]);
  expect(order.map((part) => text.indexOf(part))).toEqual(
    order.map((part) => text.indexOf(part)).sort((one, other) => one - other),
  );
});

test("photographs are in the report itself; one whose bytes are elsewhere is named as missing", () => {
  const report = assessmentReport(withHistory(), exampleAssessment());
  expect([...report.matchAll(/<img src="([^"]*)"/g)].map(([, address]) => address)).toEqual([
    "data:image/png;base64,AAEC",
  ]);
  expect(report).toContain("<figcaption>The &quot;nut&quot;</figcaption>");
  expect(report).toContain("Photograph 2: the photograph is not in this file.");
});
