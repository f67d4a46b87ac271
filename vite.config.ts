import { createHash } from "node:crypto";
import { chmod } from "node:fs/promises";
import { availableParallelism } from "node:os";
import type { Plugin } from "vite";
import { VitePWA } from "vite-plugin-pwa";
import { defineConfig } from "vitest/config";
import packageFile from "./package.json" with { type: "json" };

const version = JSON.stringify(packageFile.version);

const COMMAND = "dist/cli/tightspot.js";

/** npm links the built command as a program, which takes the right to be run. */
const executable: Plugin = { name: "executable", writeBundle: () => chmod(COMMAND, 0o755) };

/** Makes the served page installable, and keeps all of it in the browser for use without network. */
const offline = VitePWA({
  // Registered by src/app/pages/offline, which offers an update and leaves it to the reader.
  injectRegister: false,
  manifest: {
    id: "./",
    name: "Tightspot",
    short_name: "Tightspot",
    description: packageFile.description,
    lang: "en",
    background_color: "#f7f8fa",
    theme_color: "#f7f8fa",
    file_handlers: [
      {
        action: "./",
        accept: {
          "application/json": [".json"],
          "text/csv": [".csv"],
          "text/tab-separated-values": [".tsv"],
        },
      },
    ],
    icons: [
      { src: "icon.svg", sizes: "any", type: "image/svg+xml" },
      ...["any", "maskable"].flatMap((purpose) =>
        [192, 512].map((size) => ({
          src: `icon${purpose === "any" ? "" : "-maskable"}-${size}.png`,
          sizes: `${size}x${size}`,
          type: "image/png",
          purpose: purpose as "any" | "maskable",
        })),
      ),
    ],
  },
  workbox: {
    globPatterns: ["**/*.{js,css,html,svg,png,json,txt}"],
    cleanupOutdatedCaches: true,
    inlineWorkboxRuntime: true,
    // Without this the first visit would not work without network until it is loaded again.
    clientsClaim: true,
    sourcemap: false,
  },
});

/** Leaves out what templates of the page are indented by, which means nothing to HTML and CSS. */
const flushTemplates: Plugin = {
  name: "flush-templates",
  apply: "build",
  enforce: "pre",
  transform: {
    filter: { id: /\/src\/app\/.*\.ts$/ },
    handler: (code) => code.replace(/\n +/g, "\n"),
  },
};

const WORKER = "?worker";

/**
 * Makes the workers of the served page a part of its build, so that what a worker shares with the page travels once;
 * left to itself, the bundler makes each worker a build of its own.
 */
const workersBeside: Plugin = {
  name: "workers-beside",
  enforce: "pre",
  apply: "build",
  async resolveId(source, importer) {
    if (!source.endsWith(WORKER)) return null;
    const found = await this.resolve(source.slice(0, -WORKER.length), importer);
    return found && `\0${found.id}${WORKER}`;
  },
  load(id) {
    if (!id.startsWith("\0") || !id.endsWith(WORKER)) return null;
    const part = this.emitFile({ type: "chunk", id: id.slice(1, -WORKER.length) });
    return `export default class extends Worker {
      constructor() { super(import.meta.ROLLUP_FILE_URL_${part}, { type: "module" }); }
    }`;
  },
};

/** Puts the workers of the page into its script: a page opened from a file may not load them from beside it. */
const workersInside: Plugin = {
  name: "workers-inside",
  enforce: "pre",
  async resolveId(source, importer) {
    if (!source.endsWith(WORKER)) return null;
    const found = await this.resolve(source, importer, { skipSelf: true });
    return found && { ...found, id: `${found.id}&inline` };
  },
};

const FILE_NAME = "tightspot.html";

/** What is built holds libraries, whose licences ask for their notices to go with them. */
const LICENCES = "licences.txt";

/** Makes the page one file with its script and style in it, which may run nothing else and ask no one for anything. */
const oneFile: Plugin = {
  name: "one-file",
  enforce: "post",
  generateBundle: {
    // After the bundler has put its last touches to the script.
    order: "post",
    handler(_options, bundle) {
      const [script, ...furtherScripts] = Object.values(bundle).filter((made) => made.type === "chunk");
      const assets = Object.values(bundle).filter((made) => made.type === "asset");
      const page = assets.find(({ fileName }) => fileName.endsWith(".html"));
      const licences = assets.find(({ fileName }) => fileName === LICENCES);
      const [style, ...others] = assets.filter((asset) => asset !== page && asset !== licences);
      if (
        script === undefined ||
        page === undefined ||
        licences === undefined ||
        style?.fileName.endsWith(".css") !== true
      ) {
        throw new Error("The page is not made of a script, a style, a document and the licences.");
      }
      if (furtherScripts.length + others.length > 0)
        throw new Error("The page is more than one script and style.");
      // The words that would end the script's element early are spelt otherwise, to the same effect.
      const code = script.code.replace(/<(\/?script)/gi, "\\x3C$1");
      const hash = createHash("sha256").update(code).digest("base64");
      const policy =
        `default-src 'none'; script-src 'sha256-${hash}'; worker-src blob:; ` +
        "style-src 'unsafe-inline'; img-src data:; connect-src data:; form-action 'none'; base-uri 'none'";
      const source = String(page.source)
        .replace(
          "</html>",
          () => `<script type="text/plain" id="licences">${licences.source}</script>\n</html>`,
        )
        .replace(/<script type="module"[^>]*><\/script>/, () => `<script type="module">${code}</script>`)
        .replace(/<link rel="stylesheet"[^>]*>/, () => `<style>${String(style.source)}</style>`)
        .replace(/default-src 'self'[^"]*/, () => policy);
      for (const name of Object.keys(bundle)) delete bundle[name];
      this.emitFile({ type: "asset", fileName: FILE_NAME, source });
    },
  },
};

const toPage = { outDir: "../../dist/page", target: "es2022", license: { fileName: LICENCES } } as const;

/** Reading a property of a library's class changes nothing: without this, all kinds of chart would be taken along. */
const treeshake = { propertyReadSideEffects: false } as const;

/**
 * Chunks of modules that several entry points share. Left to itself, the bundler makes dozens of them, which are
 * larger together. The first screen loads none but `problem`; no worker loads the schema and its library.
 */
const shared = {
  minShareCount: 2,
  includeDependenciesRecursively: false,
  groups: [
    { name: "problem", test: /src.inspection.problem/, priority: 3 },
    { name: "analysis", test: /src.analysis.|simple-statistics/, priority: 2 },
    {
      name: "quantities",
      test: /src.inspection.(?!schema|open|pictures|plannableSlide|jsonFile|jsonDamage)/,
      priority: 1,
    },
    { name: "schema", test: /zod|src.inspection./ },
    // Without PapaParse, which is loaded when a log is read.
    { name: "logs", test: /src.intake.(?!cutting)/ },
    {
      name: "documents",
      test: /src.(report.(document|comparison|assessment|plan)|picture.(comparison|runningIn|screw))/,
      priority: 1,
    },
    {
      name: "thread",
      test: /src.(thread|picture.thread|report.thread|report.assessment.sections.(replacementThread|threadMeasured))/,
      priority: 2,
      minShareCount: 1,
    },
    { name: "words", test: /src.(report|picture)./ },
  ],
};

/**
 * One file for all products: `--mode page` builds the page as it is served, `--mode file` the page as one file to
 * carry along, beside it, and `--mode command` the command for Node.
 */
export default defineConfig(({ mode }) => ({
  root: mode === "page" || mode === "file" ? "src/app" : ".",
  base: "./",
  publicDir: mode === "page" ? "public" : false,
  plugins:
    {
      page: [flushTemplates, workersBeside, offline],
      file: [flushTemplates, workersInside, oneFile],
      command: [executable],
    }[mode] ?? [],
  define: {
    __TIGHTSPOT_VERSION__: version,
    __TIGHTSPOT_EDITION__: JSON.stringify(mode === "file" ? "file" : "served"),
  },
  build:
    mode === "command"
      ? {
          ssr: true,
          outDir: "dist/cli",
          emptyOutDir: true,
          license: { fileName: LICENCES },
          target: "node20",
          rolldownOptions: {
            input: { tightspot: "src/cli/tightspot.ts", assessing: "src/cli/assessing/worker.ts" },
            // Side by side, so that each finds the page and the worker from where it lies.
            output: { entryFileNames: "[name].js", chunkFileNames: "[name].js" },
          },
        }
      : mode === "file"
        ? {
            ...toPage,
            emptyOutDir: false,
            assetsInlineLimit: Number.POSITIVE_INFINITY,
            rolldownOptions: { treeshake, output: { codeSplitting: false } },
          }
        : {
            ...toPage,
            emptyOutDir: true,
            assetsInlineLimit: 0,
            rolldownOptions: { treeshake, output: { codeSplitting: shared } },
          },
  ssr: { noExternal: true },
  // A classic worker runs from within a file, too; a module worker does not. Those of the served page are parts of it.
  worker: { format: "iife" },
  test: {
    projects: [
      {
        extends: true,
        // The tests of a worker share what they have loaded: to load it anew for each file takes as long as the tests.
        test: {
          name: "program",
          include: ["tests/!(browser)/**/!(*.apart).test.ts", "tests/*.test.ts"],
          isolate: false,
          setupFiles: ["tests/propertyRuns.ts"],
        },
      },
      // Where a test puts something else in the place of a part of the program, no other may come upon it.
      { extends: true, test: { name: "apart", include: ["tests/**/*.apart.test.ts"] } },
      // The tests of a worker share one Chromium, too.
      { extends: true, test: { name: "browser", include: ["tests/browser/**/*.test.ts"], isolate: false } },
    ],
    globalSetup: ["src/build.ts", "tests/temporaryFolder.ts"],
    testTimeout: 120_000,
    // A busy machine may hold up what a test waits for.
    expect: { poll: { timeout: 30_000 } },
    // On two cores too: a test of the page waits for the browser, and the browser for it.
    maxWorkers: Math.max(2, availableParallelism() - 1),
    hookTimeout: 120_000,
  },
}));
