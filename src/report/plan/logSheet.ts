import { lengthsIn } from "../../inspection/lengths.ts";
import type { PlannableSlide } from "../../inspection/plannableSlide.ts";
import { toMillimetres, type Units } from "../../inspection/units.ts";
import type { Plan } from "../../intake/plan/measuringPlan.ts";
import { STAGE_WORDS } from "../inspectionWords.ts";
import { html, type Markup, repeated } from "../markup.ts";
import { type LostMotionMethod, METHODS } from "./method.ts";
import { APPROACH, END_FLOAT_HOW, planCautions, SET_UP } from "./setUp.ts";
import { SHEET_STYLE } from "./sheetStyle.ts";
import { sheetTable } from "./sheetTable.ts";

const END_FLOAT_BOXES = 3;

/**
 * The log sheet of a measuring plan: one self-contained document without scripts, to be printed in portrait on A4 or
 * US Letter and written on at the machine. What the slide does not say of itself is a line to write on.
 */
export function logSheet(slide: PlannableSlide, plan: Plan, method: LostMotionMethod): string {
  const title = `Log sheet: lost motion along ${slide.name ?? "the slide"}`;
  const { markup } = html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>${title}</title>
<style>${{ markup: SHEET_STYLE }}</style>
</head>
<body>
<main>
<section>
  <h1>Log sheet: lost motion along a slide</h1>
  ${about(slide)}
  <p class="facts">${factsOf(slide, plan, method)}</p>
  ${[...plan.assumed.map((line) => `Assumed: ${line}`), ...plan.notes].map((line) => html`<p>${line}</p>`)}
  ${cautions(slide)}
  <h2>1. Set up</h2>
  <ul class="ticks">${SET_UP.map((step) => html`<li><span class="tick"></span>${step}</li>`)}</ul>
  <h2>2. End float</h2>
  <p>${END_FLOAT_HOW}</p>
  <div class="boxes">Sweep, ${plan.units}: ${repeated(END_FLOAT_BOXES, html`<span class="box"></span>`)}</div>
  <h2>3. Instruments</h2>
  ${instruments(plan, method)}
  <div class="why">
    <h2>Why these stations, in this order</h2>
    <ul>${plan.reasons.map((reason) => html`<li>${reason}</li>`)}</ul>
  </div>
</section>
<section class="readings">
  <div class="lines">${line("Slide", slide.name)}${line("Date")}</div>
  <h2>4. Readings, ${METHODS[method].name}</h2>
  <p>${METHODS[method].how} ${APPROACH}</p>
  ${sheetTable(plan, method)}
</section>
</main>
</body>
</html>
`;
  return markup;
}

function about({ name, machine }: PlannableSlide): Markup {
  return html`<div class="lines">
    ${line("Slide", name)}${line("Machine", machine)}${line("Date")}${line("Read by")}
    ${choice("Stage", Object.values(STAGE_WORDS))}
  </div>`;
}

function factsOf({ travel, screw, units }: PlannableSlide, plan: Plan, method: LostMotionMethod): string {
  const lengths = lengthsIn(units);
  const length = (value: number): string => lengths.position(toMillimetres(value, units));
  return [
    `Travel ${length(travel.from)} to ${length(travel.to)}`,
    `lead ${length(screw.lead)}`,
    `nut's engaged length ${length(plan.engagedLength)}`,
    `${plan.stations.length} stations, ${plan.readings.length} readings`,
    METHODS[method].name,
  ].join(" · ");
}

function cautions(slide: PlannableSlide): Markup {
  return html`<div class="cautions">
    <h2>Take care</h2>
    <ul>${planCautions(slide).map((caution) => html`<li>${caution}</li>`)}</ul>
  </div>`;
}

/** What has to be known of the instruments to make the most of the readings. */
function instruments({ units }: Plan, method: LostMotionMethod): Markup {
  return html`<div class="lines short">
    ${line(`Resolution, ${units}`)}${line(`Limit of error either way, ${units}`)}${line(`Hysteresis, ${units}`)}
    ${line("Angle to the travel, °")}${line("Indicator's number")}
    ${method === "push-pull" ? [] : line(`Drive play, ${units}`)}
  </div>
  ${method === "dial-pair" ? dial(units) : []}`;
}

function dial(units: Units): Markup {
  return html`<div class="lines">
    ${line(`Dial: travel per division as printed, ${units}`)}${line("Dial: divisions in all")}
    ${choice("Dial graduated on diameter", ["yes", "no"])}
  </div>`;
}

/** A name and, behind it, what is known or a line to write on. */
function line(name: string, known = ""): Markup {
  return html`<span class="line"><span>${name}</span><span class="rule">${known}</span></span>`;
}

/** A name and, behind it, boxes to tick. */
function choice(name: string, answers: readonly string[]): Markup {
  return html`<span class="line"><span>${name}</span>
    ${answers.map((answer) => html`<span class="answer"><span class="tick"></span> ${answer}</span>`)}
  </span>`;
}
