import { html } from "lit";
import { endFloat } from "../../drawings/corrections.ts";
import { shown } from "../../drawings/primitives.ts";
import { sectionDrawing } from "../../drawings/sectionDrawing.ts";
import { threadSection } from "../../drawings/threadSection.ts";
import {
  takeUp as takeUpSketch,
  tightSpot as tightSpotSketch,
  uniformUneven as uniformUnevenSketch,
} from "../sketch.ts";
import type { HelpPart } from "./part.ts";

/** A thread of 4 mm pitch with its clearance drawn five times as large, so that it can be seen. */
const section = (uniform: number, uneven: number) =>
  threadSection({ uniform, uneven }, 4, { flankShare: 0.134 }, 5);

export const backlash: HelpPart = {
  drawing: sectionDrawing(
    section(0.1, 0.1),
    "lost motion",
    "A nut on a screw, cut open. The nut lies against one flank of the thread, with a gap on the other side. On reversal the gap has to be crossed before the slide follows.",
  ),
  words: html`<p>
      How far the slide, or the handwheel, moves on reversal before the other follows. Shops call it backlash; here it is
      called lost motion, since more than the nut has a share in it.
    </p>
    <p>
      It is what the nut has of room on the screw, the end float of the screw in its thrust bearing, and in readings taken
      at the handwheel the play of key, pin or gears, too. A loose gib or a nut bracket that gives can look like it.
    </p>`,
};

export const tightSpot: HelpPart = {
  drawing: shown(tightSpotSketch),
  words: html`<p>
      The place along the travel where lost motion is least. The nut sits there on thread that has worn least: mostly near
      the ends, where the slide seldom goes.
    </p>
    <p>
      It limits every adjustment. A nut that is taken up binds there first, however much room it still has elsewhere; set
      to fit where the screw has worn, it can seize at the tight spot. Run the whole travel by hand before power.
    </p>`,
};

export const uniformUneven: HelpPart = {
  drawing: shown(uniformUnevenSketch),
  words: html`<p>
      Uniform is the part of lost motion that is the same all along the travel: as much as there is at the tight spot. It
      comes from the nut, which travels with the slide, and from the thrust bearing. Adjusting, new nuts and the thrust
      bearing are what removes it.
    </p>
    <p>
      Uneven is how much more there is at the loosest spot. It comes from the screw, as far as gib, drag and nut bracket
      are in order. No nut removes it: only another screw, or recutting this one, does.
    </p>
    <p>If the whole screw has worn alike, that hides in the uniform part. A reading on thread that never runs shows it.</p>`,
};

export const endFloatPart: HelpPart = {
  drawing: shown(endFloat),
  words: html`<p>
      The play of the screw along its axis, in its thrust bearing. It is part of every reading, the same everywhere, and no
      adjusting of the nut removes it.
    </p>
    <p>
      Measure it on its own, and first: an indicator on the end of the screw, the slide driven a little each way by the
      handwheel. Pushing and pulling at the handwheel does not do: it shows the lesser of end float and the nut’s room. Not
      measured, nut and bearing cannot be told apart, and the program says so.
    </p>`,
};

export const runningClearance: HelpPart = {
  drawing: sectionDrawing(
    section(0.08, 0),
    "running clearance",
    "A nut on a screw that has not worn, cut open, with a small gap left between their flanks.",
  ),
  words: html`<p>
      The room that a nut is left at the tight spot when it is adjusted or made, so that it runs with a film of oil and does
      not seize as it warms. Where nothing is stated, 0.025 mm (0.001 in) is taken.
    </p>
    <p>Less wears and heats; more is lost motion that need not be. The maker’s figure comes first.</p>`,
};

export const takeUp: HelpPart = {
  drawing: shown(takeUpSketch),
  words: html`<p>
      How much adjusting can close the nut: the lost motion at the tight spot, less end float and running clearance. It goes
      off everywhere alike; what stands above the tight spot stays.
    </p>
    <p>
      A nut may have less left than that: its screw or wedge comes to an end, or its thread has worn too thin. Where that is
      stated, the verdict reckons with it.
    </p>`,
};
