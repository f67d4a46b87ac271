declare const __TIGHTSPOT_EDITION__: "served" | "file";

/** Whether the page comes from a server or is the single file opened from a disk. */
export const EDITION = __TIGHTSPOT_EDITION__;

/**
 * The name of the database and of the channel between tabs. All files opened in a browser share one origin, so the name
 * tells this program from others there; the single file keeps its own name when it is served.
 */
export const STORAGE_NAME = EDITION === "file" ? "tightspot-file" : "tightspot";
