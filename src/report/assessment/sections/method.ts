import { html } from "../../markup.ts";
import type { SectionMaker } from "../reported.ts";

/** How readings became a verdict, in a paragraph. */
export const method: SectionMaker = () => ({
  title: "Method",
  as: "whole",
  content: html`<p>Lost motion is how far the slide or the handwheel moves on reversal before the other follows. A stiff nut is stopped by the least worn thread that it engages, on either flank; so what is the same all along the travel comes from the nut and the thrust bearing and is called uniform, and what varies comes from the screw and is called uneven, as far as gib, drag and nut bracket are in order. From the readings, corrected for the way of measuring and allowing for their scatter and their rounding, many profiles that agree with them are drawn at random, with a fixed seed, from a model of how screws wear. Each figure is the median of these draws, with the interval that holds 95 in 100 of them. To every draw the same rule is applied, which goes from lost motion, end float, running clearance and limit to the least work that brings the slide within the limit; the share of draws that lead to a step is its chance, and a step is recommended from a chance of 95 in 100 on. The wear of the screw is stated as the least wear that is exceeded with a chance of 97.5 in 100.</p>`,
});
