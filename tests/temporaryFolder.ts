import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** Gives the tests, and the browsers that end with their workers, a folder for temporary files, removed at the end. */
export default function temporaryFolder(): () => void {
  const folder = mkdtempSync(join(tmpdir(), "tightspot-tests-"));
  process.env.TMPDIR = folder;
  return () => rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
}
