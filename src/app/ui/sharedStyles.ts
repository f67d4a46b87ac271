import { unsafeCSS } from "lit";
import controlsCss from "./controls.css?inline";
import foldCss from "./fold.css?inline";
import foldNoteCss from "./foldNote.css?inline";
import sectionFoldCss from "./sectionFold.css?inline";

// One style sheet object each, shared by all components that use it.

/** Buttons, fields and text. */
export const controls = unsafeCSS(controlsCss);

/** A plain `details` element. */
export const fold = unsafeCSS(foldCss);

/** A `details` element around a whole section of the page. */
export const sectionFold = unsafeCSS(sectionFoldCss);

/** A short note beside the heading of such a section. */
export const foldNote = unsafeCSS(foldNoteCss);
