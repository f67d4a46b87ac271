import { html } from "lit";
import type { HelpPart } from "./part.ts";

/** What shops commonly work with, and why: a guide where nobody states a figure, no rule. */
const GUIDE = [
  [
    "Climb milling, or any cut that pulls the work along",
    "0.04 to 0.05 mm (0.0015 to 0.002 in), or a device that holds the slide against one flank",
    "The cutter takes the slide through the lost motion at a stroke: teeth break, work is thrown.",
  ],
  [
    "Positions set by the dial from both sides",
    "0.05 mm (0.002 in)",
    "Whatever is lost goes into the position unless every approach is from one side.",
  ],
  [
    "Milling against the feed; surface grinding feeds",
    "0.10 to 0.15 mm (0.004 to 0.006 in)",
    "The cut keeps the slide against one flank; more lets it chatter where the force falls off.",
  ],
  [
    "Turning, with every cut approached from one side",
    "0.15 to 0.25 mm (0.006 to 0.010 in)",
    "Tool pressure always pushes one way; the operator takes the lost motion out before each cut.",
  ],
  [
    "Feeds of planers and drilling tables",
    "0.25 to 0.40 mm (0.010 to 0.015 in)",
    "The slide is clamped, or moved while nothing cuts.",
  ],
] as const;

export const limit: HelpPart = {
  words: html`<p>
      <strong>The maker’s figure comes first</strong>: in the manual or on the test sheet. Local rules and your works’ own
      standard come next. Only where there is none, what shops commonly work with is a guide, with its reason:
    </p>
    <table>
      <thead>
        <tr>
          <th scope="col">Work</th>
          <th scope="col">Limit, as a guide</th>
          <th scope="col">Because</th>
        </tr>
      </thead>
      <tbody>
        ${GUIDE.map(
          ([work, figure, why]) => html`<tr>
            <th scope="row">${work}</th>
            <td>${figure}</td>
            <td>${why}</td>
          </tr>`,
        )}
      </tbody>
    </table>
    <p>
      No limit can be met that is smaller than the running clearance and the end float of parts in perfect order, 0.035 mm
      together where nothing else is stated. And a limit needs readings finer than itself: an indicator of 0.01 mm settles a
      limit of 0.10 mm, hardly one of 0.03 mm.
    </p>
    <p>
      A screw that holds up a load is a safety part: there the maker’s limit and local rules count, and a competent person’s
      inspection, not a figure from here.
    </p>
    <p>Another limit can be tried under “What if?”, without changing anything.</p>`,
};
