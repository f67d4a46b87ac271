import { chmod } from "node:fs/promises";
import type { Plugin } from "vite";
import { defineConfig } from "vitest/config";
import packageFile from "./package.json" with { type: "json" };

const version = JSON.stringify(packageFile.version);

const COMMAND = "dist/cli/tightspot.js";

/** npm links the built command as a program, which takes the right to be run. */
const executable: Plugin = { name: "executable", writeBundle: () => chmod(COMMAND, 0o755) };

// One file for both products: `--mode page` builds the page, `--mode command` the command for Node.
export default defineConfig(({ mode }) => ({
  root: mode === "page" ? "src/app" : ".",
  base: "./",
  publicDir: mode === "page" ? "public" : false,
  plugins: mode === "command" ? [executable] : [],
  define: { __TIGHTSPOT_VERSION__: version },
  build:
    mode === "command"
      ? {
          ssr: true,
          outDir: "dist/cli",
          emptyOutDir: true,
          target: "node20",
          rolldownOptions: {
            input: { tightspot: "src/cli/tightspot.ts", assessing: "src/cli/assessing/worker.ts" },
            // Side by side, so that each finds the page and the worker from where it lies.
            output: { entryFileNames: "[name].js", chunkFileNames: "[name].js" },
          },
        }
      : { outDir: "../../dist/page", emptyOutDir: true, target: "es2022" },
  ssr: { noExternal: true },
  worker: { format: "es" },
  test: {
    include: ["tests/**/*.test.ts"],
    globalSetup: ["tests/buildProducts.ts"],
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
}));
