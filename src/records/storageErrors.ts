import type { Problem } from "../inspection/problem.ts";
import { BLOCKED_BY_TAB } from "./database.ts";

const OFFER_FILE = "Save the inspection as a file to be safe.";

/** What went wrong in the browser's database, in words, and what to do about it. */
export function storageError(error: unknown): Problem {
  const name = error instanceof Error ? error.name : "";
  const problem = (what: string, cure: string): Problem => ({
    where: "",
    what,
    cure: `${cure} ${OFFER_FILE}`,
  });
  if (name === "QuotaExceededError") {
    return problem(
      "this browser has no storage space left",
      "Delete inspections that you no longer need, or free space on this device.",
    );
  }
  if (name === "VersionError") {
    return problem(
      "a newer Tightspot saved the inspections in this browser; they were left alone",
      "Load the page again to get the newer one.",
    );
  }
  if (name === BLOCKED_BY_TAB) {
    return problem(
      "another tab blocks the storage of this browser",
      "Close the other tabs of Tightspot, then try again.",
    );
  }
  const detail = error instanceof Error && error.message !== "" ? ` (${error.message})` : "";
  return problem(
    `this browser does not let the page store anything${detail}`,
    "A private window may be the reason.",
  );
}
