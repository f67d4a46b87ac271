import { html } from "lit";
import { unsafeHTML } from "lit/directives/unsafe-html.js";
import type { Comparison } from "../../analysis/comparison/comparison.ts";
import type { RunningIn } from "../../analysis/runningIn/runningIn.ts";
import type { Units } from "../../inspection/units.ts";
import { comparisonPicture } from "../../picture/comparison/comparisonPicture.ts";
import { comparisonSvg } from "../../picture/comparison/comparisonSvg.ts";
import { runningInPicture } from "../../picture/runningIn/runningInPicture.ts";
import { runningInSvg } from "../../picture/runningIn/runningInSvg.ts";
import { inPageColours } from "../ui/pageColours.ts";

/** Both profiles with their bands, and the difference with its own. */
export function profiles(comparison: Comparison, units: Units) {
  const picture = comparisonPicture(comparison, units);
  return figure(picture.title, (setting) => comparisonSvg(picture, setting));
}

/** The uniform part against time, with the trend. */
export function trend(runningIn: RunningIn, units: Units) {
  const picture = runningInPicture(runningIn, units);
  return figure(picture.title, (setting) => runningInSvg(picture, setting));
}

/** The picture twice: the style shows the one that there is width for, on paper too, and nobody reads the other. */
function figure(title: string, draw: (setting: "wide" | "narrow") => string) {
  return html`<figure>
    <figcaption>${title}</figcaption>
    ${(["wide", "narrow"] as const).map(
      (setting) => html`<div class="picture ${setting}">${unsafeHTML(inPageColours(draw(setting)))}</div>`,
    )}
  </figure>`;
}
