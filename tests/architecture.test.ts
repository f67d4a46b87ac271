import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, sep } from "node:path";
import { describe, expect, it } from "vitest";
import { circles, importsOf, LEVELS, ROOMS, wrongRooms, wrongWays } from "./architectureRules.ts";

const SRC = join(import.meta.dirname, "../src");

const sources = new Map(
  readdirSync(SRC, { recursive: true, encoding: "utf8" })
    // src/build.ts builds the folders beside it, and is part of none.
    .filter((path) => path.endsWith(".ts") && path !== "build.ts")
    .map((path) => [path.replaceAll(sep, "/"), readFileSync(join(SRC, path), "utf8")] as const),
);

describe("the house", () => {
  it("imports downward only between folders", () => {
    expect(sources.size).toBeGreaterThan(30);
    expect(wrongWays(sources)).toEqual([]);
  });

  it("imports one way between the rooms of the page", () => {
    expect(wrongRooms(sources)).toEqual([]);
  });

  it("has no circles of files", () => {
    expect(circles(sources)).toEqual([]);
  });

  it("imports only files that are there", () => {
    const missing = [...sources].flatMap(([path, source]) =>
      importsOf(path, source).filter((target) => target.endsWith(".ts") && !sources.has(target)),
    );
    expect(missing).toEqual([]);
  });
});

describe("DEVELOPERS.md", () => {
  it("names only files and folders that exist", () => {
    const root = join(SRC, "..");
    const text = readFileSync(join(root, "DEVELOPERS.md"), "utf8");
    const paths = [...text.matchAll(/`((?:[A-Za-z-]+\/)+[A-Za-z.-]*)`/g)].map(([, path = ""]) => path);
    expect(paths.length).toBeGreaterThan(30);
    const missing = paths.filter(
      (path) => !existsSync(join(root, path)) && !existsSync(join(SRC, path)) && path !== ".mutants/",
    );
    expect(missing).toEqual([]);
  });
});

describe("the rules of the house", () => {
  const folders = LEVELS.flat();
  const level = (folder: string): number => LEVELS.findIndex((each) => each.includes(folder));
  const ways = folders.flatMap((from) =>
    folders.filter((to) => to !== from).map((to) => [from, to] as const),
  );

  it.each(ways)("judge an import from %s to %s by their levels", (from, to) => {
    const made = new Map([
      [`${from}/a.ts`, `import { b } from "../${to}/b.ts";`],
      [`${to}/b.ts`, ""],
    ]);
    const allowed = level(to) < level(from);
    expect(wrongWays(made)).toEqual(allowed ? [] : [`${from}/a.ts imports ${to}/b.ts`]);
  });

  it("judge an import between rooms of the page by their order", () => {
    for (const [below, room] of ROOMS.entries()) {
      for (const [at, other] of ROOMS.entries()) {
        const made = new Map([[`app/${room}/a.ts`, `import "../${other}/b.css?inline";`]]);
        const allowed = at <= below;
        expect(wrongRooms(made)).toEqual(allowed ? [] : [`app/${room}/a.ts imports app/${other}/b.css`]);
      }
    }
    expect(wrongRooms(new Map([["app/shed/a.ts", ""]]))).toEqual(["app/shed/a.ts is in no room of the list"]);
  });

  it("see every way of importing", () => {
    const source = [
      'import "./a.ts";',
      'import type { B } from "./b.ts";',
      'import {\n  c,\n  d,\n} from "./c.ts";',
      'export * from "../picture/d.ts";',
      'export { e } from "./e.ts";',
      'const f = await import("./f.ts");',
      'new Worker(new URL("./g.ts", import.meta.url));',
      'import H from "./h.ts?worker";',
      'import { lit } from "lit";',
      '// import { not } from "./comment.ts";',
      '/* export * from "./comment.ts"; */',
    ].join("\n");
    expect(importsOf("app/main.ts", source)).toEqual([
      "app/a.ts",
      "app/b.ts",
      "app/c.ts",
      "picture/d.ts",
      "app/e.ts",
      "app/f.ts",
      "app/g.ts",
      "app/h.ts",
    ]);
  });

  it("find a circle, however long, and tell it once", () => {
    const made = new Map([
      ["report/a.ts", 'import "./b.ts";'],
      ["report/b.ts", 'import "./parts/c.ts";'],
      ["report/parts/c.ts", 'import type { A } from "../a.ts";'],
      ["report/d.ts", 'import "./a.ts";\nimport "./b.ts";'],
    ]);
    expect(circles(made)).toEqual(["report/a.ts → report/b.ts → report/parts/c.ts → report/a.ts"]);
  });

  it("refuse a folder that has no level, and an import that leaves src", () => {
    expect(wrongWays(new Map([["helpers/a.ts", ""]]))).toEqual([
      "helpers/a.ts is in no folder that has a level",
    ]);
    expect(wrongWays(new Map([["cli/a.ts", 'import "../../tests/b.ts";']]))).toEqual([
      "cli/a.ts imports ../tests/b.ts",
    ]);
  });
});
