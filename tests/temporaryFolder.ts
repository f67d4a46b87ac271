import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const PREFIX = "tightspot-tests-";

/**
 * Gives the tests, and the browsers that end with their workers, a folder for temporary files, removed at the end. Every
 * project of the test run calls this, and the first one decides: Chromium keeps a socket there, whose path may have 107
 * characters.
 */
export default function temporaryFolder(): () => void {
  if (tmpdir().includes(PREFIX)) return () => {};
  const folder = mkdtempSync(join(tmpdir(), PREFIX));
  process.env.TMPDIR = folder;
  return () => rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
}
