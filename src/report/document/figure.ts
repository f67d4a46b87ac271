import { html, type Markup } from "../markup.ts";
import { unitsKept } from "./unitsKept.ts";

/** A drawing, with what has to be said of it that it does not say itself. */
export function figure(svg: string, caption?: string): Markup {
  const words = caption === undefined ? [] : html`<figcaption>${unitsKept(caption)}</figcaption>`;
  return html`<figure>${{ markup: svg }}${words}</figure>`;
}
