import { html, nothing } from "lit";
import { HELP } from "./content/index.ts";
import type { Topic } from "./topics.ts";

/** What there is to tell on a topic, under a heading of its own. */
export function helpPart(topic: Topic) {
  const { drawing, words } = HELP[topic];
  return html`<div class="part">
    ${drawing ?? nothing}
    <div class="words">${words}</div>
  </div>`;
}
