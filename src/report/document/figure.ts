import { html, type Markup } from "../markup.ts";

/** A drawing with the words that go with it. */
export function figure(svg: string, caption: string): Markup {
  return html`<figure>${{ markup: svg }}<figcaption>${caption}</figcaption></figure>`;
}
