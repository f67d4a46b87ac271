import { describe, expect, it } from "vitest";
import type { Assessment } from "../../../src/analysis/assessment.ts";
import type { Slide } from "../../../src/inspection/schema.ts";
import { assessmentReport } from "../../../src/report/assessment/assessmentReport.ts";
import { exampleAssessment } from "../exampleAssessment.ts";
import { exampleInspection } from "../exampleInspection.ts";

const TR: Slide["screw"] = { lead: 4, form: "trapezoidal-30", nominalDiameter: 20 };

const reportOf = (
  screw: Slide["screw"],
  verdict: Assessment["verdict"],
  slide: Partial<Slide> = {},
): string =>
  assessmentReport(exampleInspection({ screw, ...slide }), exampleAssessment({ verdict })).replaceAll(
    "\u00a0",
    " ",
  );

describe("the section on the thread as measured", () => {
  const measured = (screw: Slide["screw"], thread: unknown): string => {
    const inspection = exampleInspection({ screw });
    const surveys = inspection.surveys.map((survey) => ({ ...survey, thread }));
    return assessmentReport({ ...inspection, surveys } as typeof inspection, exampleAssessment());
  };

  it("tells wear at each place, and how it stands to the verdict", () => {
    const report = measured(TR, [
      { position: 0, thickness: 1.99 },
      { position: 110, thickness: 1.79 },
    ]);
    expect(report).toContain("<h2>The thread as measured</h2>");
    expect(report).toContain('<td class="figures">0.200</td><td class="figures">90</td>');
    expect(report).toContain("It agrees with a worn screw");
  });

  it("says what is missing or wrong where nothing can be worked out", () => {
    expect(measured({ lead: 4 }, [{ position: 0, thickness: 1.99 }])).toContain("nominal diameter in the");
    expect(measured(TR, [{ position: 0, thickness: 19 }])).toContain("Not worked out: thread[0]");
    expect(measured(TR, undefined)).not.toContain("The thread as measured");
  });
});

describe("the section on the replacement thread", () => {
  it("gives what to cut where the screw is to be remade, drawn and with its running fit", () => {
    const report = reportOf(TR, "remake-screw");
    expect(report).toContain("<h2>The replacement thread</h2>");
    // ISO 2904: Tr 20 × 4 has d2 18, d3 15.5, D4 20.5, D1 16; 0.025 mm of clearance is 0.0933 mm on the pitch diameter.
    for (const part of [
      "Tr 20 × 4",
      "18.000 mm",
      "15.500 mm",
      "20.500 mm",
      "16.000 mm",
      "17.907 to 17.813 mm",
    ])
      expect(report).toContain(part);
    expect(report.match(/<svg/g)).toHaveLength(3);
  });

  it("takes starts and the slide's unit into account", () => {
    const report = reportOf(
      { lead: 0.4, starts: 2, hand: "left", form: "acme-29", nominalDiameter: 1 },
      "remake-screw",
      { units: "in", travel: { from: 0, to: 12 }, backlashLimit: 0.006 },
    );
    expect(report).toContain("1-5 Acme, 2 starts, left hand");
    expect(report).toContain("0.9000 in");
  });

  it("gives nuts and their tap where only nuts are new, to be fitted at the tight spot", () => {
    const report = reportOf(TR, "replace-nuts");
    expect(report).toContain("<h2>The new nuts</h2>");
    expect(report).toContain("measure its thread at the tight spot");
    expect(report).toContain("Tap: bore");
  });

  it.each([
    ["adjust-nut", TR],
    ["measure-more", TR],
    ["remake-screw", { lead: 4 }],
    ["remake-screw", { ...TR, form: "round" }],
    ["remake-screw", { ...TR, nominalDiameter: 3 }],
  ] as const)("is left out with %s and a screw %o", (verdict, screw) => {
    expect(reportOf(screw, verdict)).not.toMatch(/The replacement thread|The new nuts/);
  });
});
