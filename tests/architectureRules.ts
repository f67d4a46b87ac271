import { posix } from "node:path";

/** The folders of src from the lowest level up. A folder may import from lower levels only, and from itself. */
export const LEVELS: readonly (readonly string[])[] = [
  ["inspection"],
  ["intake", "analysis", "thread"],
  ["picture"],
  ["report", "records"],
  ["app", "cli"],
];

/** The rooms of src/app from the lowest up. A room may import from the rooms before it, and from itself. */
export const ROOMS: readonly string[] = [
  "ui",
  "drawings",
  "help",
  "editing",
  "files",
  "results",
  "entry",
  "history",
  "compare",
  "pages",
];

/** The text of each source file by its path below src: `picture/axis.ts`. */
export type Sources = ReadonlyMap<string, string>;

const COMMENT = /\/\*[\s\S]*?\*\/|(?<![:"'`\\])\/\/.*$/gm;
const IMPORT =
  /\b(?:import|export)\s[^;"'`]*?\bfrom\s*["']([^"']+)["']|\bimport\s*\(?\s*["']([^"']+)["']|\bnew URL\(\s*["']([^"']+)["']\s*,\s*import\.meta\.url/g;

/** The relative imports of a file, as paths below src: static, dynamic, re-exports, and what a worker is made from. */
export function importsOf(path: string, source: string): readonly string[] {
  return [...source.replace(COMMENT, "").matchAll(IMPORT)]
    .map((match) => match[1] ?? match[2] ?? match[3] ?? "")
    .filter((target) => target.startsWith("."))
    .map((target) => posix.join(posix.dirname(path), target.replace(/\?.*$/, "")));
}

/** Imports that run up or sideways between folders, or out of src, and folders that have no level. */
export function wrongWays(sources: Sources): readonly string[] {
  return [...sources].flatMap(([path, source]) => {
    const level = levelOf(path);
    if (level === -1) return [`${path} is in no folder that has a level`];
    return importsOf(path, source)
      .filter((target) => folderOf(target) !== folderOf(path))
      .filter((target) => levelOf(target) === -1 || levelOf(target) >= level)
      .map((target) => `${path} imports ${target}`);
  });
}

/** Imports that run up between the rooms of src/app, and rooms that are not in the list. `main.ts` stands above all. */
export function wrongRooms(sources: Sources): readonly string[] {
  return [...sources].flatMap(([path, source]) => {
    const room = roomOf(path);
    if (room === null) return [];
    if (!ROOMS.includes(room)) return [`${path} is in no room of the list`];
    return importsOf(path, source)
      .filter((target) => ROOMS.indexOf(roomOf(target) ?? "") > ROOMS.indexOf(room))
      .map((target) => `${path} imports ${target}`);
  });
}

/** Circles of files that import one another, each told once. */
export function circles(sources: Sources): readonly string[] {
  const found: string[] = [];
  const finished = new Set<string>();
  const visit = (path: string, trail: readonly string[]): void => {
    const begun = trail.indexOf(path);
    if (begun !== -1) {
      found.push([...trail.slice(begun), path].join(" → "));
      return;
    }
    if (finished.has(path)) return;
    for (const target of importsOf(path, sources.get(path) ?? "")) visit(target, [...trail, path]);
    finished.add(path);
  };
  for (const path of sources.keys()) visit(path, []);
  return found;
}

function folderOf(path: string): string {
  return path.split("/")[0] ?? "";
}

function roomOf(path: string): string | null {
  return /^app\/([^/]+)\//.exec(path)?.[1] ?? null;
}

function levelOf(path: string): number {
  return LEVELS.findIndex((folders) => folders.includes(folderOf(path)));
}
