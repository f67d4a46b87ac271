import { describe, expect, it } from "vitest";
import { chosen } from "./chosen.ts";

describe("what is changed, and the tests that must notice", () => {
  it("is all of the analysis where nothing is named", () => {
    expect(chosen([])).toEqual({
      mutate: ["src/analysis/**/*.ts"],
      tests: ["tests/analysis/**/*.test.ts"],
    });
  });

  it("is a file and the tests whose names begin with its, or a folder and the tests in it", () => {
    expect(chosen(["./src/analysis/decide/decision.ts", "src/analysis/checks/"])).toEqual({
      mutate: ["src/analysis/decide/decision.ts", "src/analysis/checks/**/*.ts"],
      tests: ["tests/analysis/decide/decision*.test.ts", "tests/analysis/checks/**/*.test.ts"],
    });
  });

  it("is a file and the tests of its folder where none has its name", () => {
    expect(chosen(["src/analysis/checks/lowStations.ts"]).tests).toEqual(["tests/analysis/checks/*.test.ts"]);
  });

  it.each(["src/analysis/absent.ts", "src/app", "src/analysis/../app/main.ts", "src/analysisOther"])(
    "is not %s",
    (path) => {
      expect(() => chosen([path])).toThrow("name a file or a folder there");
    },
  );
});
