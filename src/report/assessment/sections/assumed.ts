import { lines } from "../../document/lines.ts";
import type { SectionMaker } from "../reported.ts";

/** What was taken for what nobody stated. */
export const assumed: SectionMaker = ({ assessment }) =>
  assessment.assumed.length === 0 ? null : { title: "Assumed", content: lines(assessment.assumed) };
