import { unsafeCSS } from "lit";
import controlsCss from "./controls.css?inline";
import foldCss from "./fold.css?inline";
import foldNoteCss from "./foldNote.css?inline";
import sectionFoldCss from "./sectionFold.css?inline";

// One style sheet object each, which all components that use it share.

/** Buttons, fields and type. */
export const controls = unsafeCSS(controlsCss);

/** A plain `details` element. */
export const fold = unsafeCSS(foldCss);

/** A `details` element around a whole section of the page. */
export const sectionFold = unsafeCSS(sectionFoldCss);

/** A short note beside the heading of such a section. */
export const foldNote = unsafeCSS(foldNoteCss);
