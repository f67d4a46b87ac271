import { readdir, realpath, stat } from "node:fs/promises";
import { extname, join } from "node:path";
import { type FileProblem, type Outcome, type Problem, succeeded } from "../inspection/problem.ts";
import { STANDARD_INPUT, unreadable } from "./source.ts";

/** The files that the operands name; a folder stands for the inspections and logs in it. */
export interface Named {
  readonly files: readonly string[];
  /** Folders that could not be read or that hold no inspection and no log. */
  readonly unread: readonly FileProblem[];
  readonly anyFolder: boolean;
}

/** The extensions of the files that are read from a folder. */
const ENDINGS = [".json", ".csv"];

const EMPTY: Problem = {
  where: "",
  what: `there is no inspection and no log in this folder (no file that ends in ${ENDINGS.join(" or ")})`,
  cure: "Name the folder that they are in, or the files themselves.",
};

/**
 * The files named, and those in the folders named and below them, in the order of their names. A file named by itself
 * is included whatever its extension; names that begin with a point are skipped.
 */
export async function filesNamed(operands: readonly string[]): Promise<Named> {
  const files: string[] = [];
  const unread: FileProblem[] = [];
  let anyFolder = false;
  for (const operand of operands) {
    if (!(await isFolder(operand))) {
      files.push(operand);
      continue;
    }
    anyFolder = true;
    const found = await filesIn(operand, []);
    files.push(...found.files);
    unread.push(...found.unread);
    if (found.files.length === 0 && found.unread.length === 0) {
      unread.push({ file: operand, problem: EMPTY });
    }
  }
  return { files, unread, anyFolder };
}

async function filesIn(folder: string, above: readonly string[]): Promise<Omit<Named, "anyFolder">> {
  const listed = await list(folder);
  if (!listed.ok) return { files: [], unread: [{ file: folder, problem: listed.problem }] };
  const { place, names } = listed.value;
  // A link to a folder above would be followed for ever.
  if (above.includes(place)) return { files: [], unread: [] };
  const files: string[] = [];
  const unread: FileProblem[] = [];
  for (const name of names) {
    const path = join(folder, name);
    if (await isFolder(path)) {
      const below = await filesIn(path, [...above, place]);
      files.push(...below.files);
      unread.push(...below.unread);
    } else if (ENDINGS.includes(extname(name).toLowerCase())) {
      files.push(path);
    }
  }
  return { files, unread };
}

interface Listed {
  /** The path of the folder, links resolved. */
  readonly place: string;
  /** In one order on every system. */
  readonly names: readonly string[];
}

async function list(folder: string): Promise<Outcome<Listed>> {
  try {
    const [place, names] = await Promise.all([realpath(folder), readdir(folder)]);
    return succeeded({ place, names: names.filter((name) => !name.startsWith(".")).sort() });
  } catch (error) {
    return unreadable(error);
  }
}

/** False also where nothing has that name: reading it reports that. */
async function isFolder(path: string): Promise<boolean> {
  if (path === STANDARD_INPUT) return false;
  return stat(path).then(
    (stats) => stats.isDirectory(),
    () => false,
  );
}
