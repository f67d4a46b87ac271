import { defineConfig } from "vitest/config";
import packageFile from "./package.json" with { type: "json" };

const version = JSON.stringify(packageFile.version);

// One file for both products: `--mode page` builds the page, `--mode command` the command for Node.
export default defineConfig(({ mode }) => ({
  root: mode === "page" ? "src/app" : ".",
  base: "./",
  publicDir: mode === "page" ? "public" : false,
  define: { __TIGHTSPOT_VERSION__: version },
  build:
    mode === "command"
      ? {
          ssr: "src/cli/tightspot.ts",
          outDir: "dist/cli",
          emptyOutDir: true,
          target: "node20",
          rolldownOptions: { output: { entryFileNames: "tightspot.js" } },
        }
      : { outDir: "../../dist/page", emptyOutDir: true, target: "es2022" },
  ssr: { noExternal: true },
  worker: { format: "es" },
  test: {
    include: ["tests/**/*.test.ts"],
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
}));
