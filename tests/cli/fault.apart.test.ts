import { afterEach, describe, expect, it, vi } from "vitest";
import { assess } from "../../src/cli/commands/assess.ts";
import { workshop } from "./command.ts";
import { looseNut, twoSurveys } from "./inspections.ts";

/** The program as it would be with a fault in it that one survey brings out. */
vi.mock("../../src/analysis/assess.ts", async (importOriginal) => {
  const original = await importOriginal<typeof import("../../src/analysis/assess.ts")>();
  const assessSurvey: typeof original.assessSurvey = (inspection, survey) => {
    if (survey === "worn") throw new RangeError("a count went below nothing");
    return original.assessSurvey(inspection, survey);
  };
  return { ...original, assessSurvey };
});

const { file, path } = workshop();
const both = file("both.json", JSON.stringify(twoSurveys()));
const loose = file("loose.json", JSON.stringify(looseNut()));

afterEach(() => vi.restoreAllMocks());

/** Runs the command in this process; gives what it wrote to both of its outputs. */
async function run(...operands: readonly string[]) {
  const written = { out: "", err: "" };
  vi.spyOn(process.stdout, "write").mockImplementation((text, ...rest: unknown[]) => {
    written.out += text;
    const done = rest.at(-1);
    if (typeof done === "function") done();
    return true;
  });
  vi.spyOn(process.stderr, "write").mockImplementation((text) => {
    written.err += text;
    return true;
  });
  const code = await assess.run({ options: { json: true }, operands });
  return { code, ...written };
}

describe("a fault of the program at one survey", () => {
  it("is told with the file, ends the command with 1, and does not stop the others", async () => {
    const { code, out, err } = await run(both, path("none.json"), loose);
    expect(code).toBe(1);
    const assessed = out
      .trimEnd()
      .split("\n")
      .map((line) => JSON.parse(line));
    expect(assessed.map((result) => [result.file, result.survey])).toEqual([
      [both, "loose"],
      [loose, "loose"],
    ]);
    expect(err).toContain(
      `tightspot: ${both}: a fault of the program, not of your files:\nRangeError: a count`,
    );
    expect(err).toContain(`tightspot: ${path("none.json")}: there is no such file`);
  });
});
