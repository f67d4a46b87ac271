declare const __TIGHTSPOT_EDITION__: "served" | "file";

/** How this page came to the reader: from a server, or as one file that was opened from a disk. */
export const EDITION = __TIGHTSPOT_EDITION__;

/**
 * The name that what this edition keeps, and says to its other tabs, goes under. All files opened in a browser share
 * one store, so it must be told apart there from those of other programs; and a file put on a server is still a file.
 */
export const STORAGE_NAME = EDITION === "file" ? "tightspot-file" : "tightspot";
