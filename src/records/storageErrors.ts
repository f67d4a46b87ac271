import type { Problem } from "../inspection/problem.ts";
import { BLOCKED_BY_TAB } from "./database.ts";

const OFFER_FILE = "Save the inspection as a file to be safe.";

/** Why the browser's database did not do as it was asked, in words. */
export function storageError(error: unknown): Problem {
  const name = error instanceof Error ? error.name : "";
  if (name === "QuotaExceededError") {
    return {
      where: "",
      what: "this browser has no room left",
      cure: `Delete inspections that are no longer needed, or free space on this device. ${OFFER_FILE}`,
    };
  }
  if (name === "VersionError") {
    return {
      where: "",
      what: "the inspections in this browser were kept by a newer Tightspot, and were left alone",
      cure: `Load the page again to get the newer one. ${OFFER_FILE}`,
    };
  }
  if (name === BLOCKED_BY_TAB) {
    return {
      where: "",
      what: "another tab holds on to what this browser keeps",
      cure: `Close the other tabs of Tightspot, then try again. ${OFFER_FILE}`,
    };
  }
  const said = error instanceof Error && error.message !== "" ? ` (${error.message})` : "";
  return {
    where: "",
    what: `this browser does not let the page keep anything${said}`,
    cure: `A private window may be the reason. ${OFFER_FILE}`,
  };
}
