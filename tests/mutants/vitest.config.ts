import { defineConfig } from "vitest/config";

/** The tests that changes of the code have to face; they need neither the page nor the command built. */
export default defineConfig({
  test: { include: process.env.TESTS_FOR_MUTANTS?.split(",") ?? [], testTimeout: 60_000 },
});
