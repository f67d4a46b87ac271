import { html } from "lit";
import { METHOD_DRAWINGS } from "../../drawings/methods.ts";
import { shown } from "../../drawings/primitives.ts";
import type { HelpPart } from "./part.ts";

const WAYS = [
  [
    "push-pull",
    "Push and pull",
    "Hold the screw still. Push the slide by hand until it stops, pull it until it stops: the sweep of the indicator is the lost motion.",
  ],
  [
    "indicator-pair",
    "Indicator, read from both sides",
    "Bring the handwheel to the same mark of its dial once while advancing and once while retracting, coming from farther away than the lost motion each time. The two readings of the indicator differ by it.",
  ],
  [
    "dial-pair",
    "Handwheel dial, read from both sides",
    "Turn the handwheel until the indicator just returns to its mark, once from each side, and read the dial. The divisions between, across the dial’s zero, times the travel printed for one, are the lost motion; half of it on a dial graduated on diameter.",
  ],
] as const;

export const measuring: HelpPart = {
  words: html`<ol class="steps">
      <li>Isolate the machine before hands go near the screw.</li>
      <li>Slide locks off; gib set; a taper gib without endwise float; nut bracket tight; dial ring locked.</li>
      <li>Indicator in line with the travel, on a stand that does not creep.</li>
      <li>End float first.</li>
      <li>
        Five stations or more: near both ends, and no farther apart than half the nut’s length where you can. Not all of
        them a whole number of turns apart.
      </li>
      <li>Some stations twice, and the first one again at the end: that shows how well readings repeat, and any drift.</li>
      <li>Read one way; at the tight and at the loosest spot another way, too, before parts are made.</li>
    </ol>
    ${WAYS.map(([method, name, words]) => {
      const drawing = METHOD_DRAWINGS[method];
      return html`<div class="way">
        ${drawing === undefined ? null : shown(drawing)}
        <div>
          <h3>${name}</h3>
          <p>${words}</p>
        </div>
      </div>`;
    })}
    <p>
      Gib drag lowers what push and pull shows and raises what the other two show. Where two ways agree at the tight and at
      the loosest spot, it is the screw.
    </p>`,
};
