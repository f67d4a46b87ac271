import { join } from "node:path";
import { defineConfig } from "vitest/config";
import packageFile from "../package.json" with { type: "json" };

/** The tests that take seconds: they need no browser, nothing built and no simulation. */
export default defineConfig({
  root: join(import.meta.dirname, ".."),
  define: {
    __TIGHTSPOT_VERSION__: JSON.stringify(packageFile.version),
    __TIGHTSPOT_EDITION__: JSON.stringify("served"),
  },
  test: {
    include: [
      "tests/{app,inspection,intake,picture,records,report}/**/*.test.ts",
      "tests/analysis/{checks,correct,decide,outliers,statistics}/**/*.test.ts",
      "tests/architecture.test.ts",
    ],
    // These fit many surveys, or make many cases.
    exclude: [
      "tests/**/*.properties.test.ts",
      "tests/analysis/checks/{wobble,duplicateRowsIdentical}.test.ts",
      "tests/analysis/decide/{nextReadings,smallestLimits,whatIf}.test.ts",
      "tests/intake/plan/*.test.ts",
    ],
    setupFiles: ["tests/propertyRuns.ts"],
    isolate: false,
    testTimeout: 120_000,
  },
});
