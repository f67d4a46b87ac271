import { html } from "../../markup.ts";
import type { ComparisonSectionMaker } from "./reported.ts";

const CHANGE =
  "The readings of each survey, corrected for the way of measuring, became many profiles that agree with them, drawn at random, with a fixed seed, from a model of how screws wear. Profiles of the one survey were set against profiles of the other, each with an error of its indicator drawn within its stated limit; surveys that name one indicator share its error. Stations need not be the same. Each change is the median of the differences, with the interval that holds 95 in 100 of them; it counts as shown where that interval does not include zero. The change is called the same everywhere where one amount lies within the band of the difference all along the travel. The uniform part is the least lost motion over the travel; the uneven part is how much more there is where it is greatest over the working range. That the limit is kept is proven or disproven after ISO 14253-1, at 95 %, one-sided, with a guard band of 1.65 u, and only where 95 in 100 of the profiles agree and no check on the readings speaks against it.";

const TREND =
  "For running in, five courses of the uniform part are weighed against each other by how well each explains the surveys since the last repair: constant, steady, settling, ever slower, and settling and then steady. None is chosen; the intervals allow for all of them in proportion. The limit counts as reached where the trend and the uneven part of the last survey come to it together. The trend is carried on for no more than six times as long as it was watched.";

/** How two surveys became a change and an answer, in a paragraph. */
export const method: ComparisonSectionMaker = ({ history }) => ({
  title: "Method",
  content: html`<p>${CHANGE}${"trend" in history ? ` ${TREND}` : ""}</p>`,
});
