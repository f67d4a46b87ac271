import type { Assessment, Estimate } from "../../analysis/assessment.ts";
import type { Lengths } from "../../inspection/lengths.ts";
import { html, type Markup } from "../markup.ts";
import { conformanceWords, intervalWords } from "../words.ts";

/** The figures that the verdict turns on, large. */
export function keyFigures(assessment: Assessment, lengths: Lengths): Markup {
  const { greatest, uniform, uneven, settings, conformance } = assessment;
  const estimate = (name: string, of: Estimate): Markup =>
    figure(name, lengths.lostMotion(of.value), intervalWords(of, lengths));
  return html`<dl class="key">${estimate("Greatest lost motion", greatest)}${figure(
    "Limit",
    lengths.position(settings.limit),
    conformanceWords(conformance),
  )}${estimate("Uniform part", uniform)}${estimate("Uneven part", uneven)}</dl>`;
}

function figure(name: string, value: string, words: string): Markup {
  return html`<div><dt>${name}</dt><dd class="value">${value}</dd><dd>${words}</dd></div>`;
}
