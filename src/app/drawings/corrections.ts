import { svg } from "lit";
import {
  arrow,
  type Drawing,
  indicator,
  label,
  slideOnScrew,
  turningArrow,
  wheelFromSide,
} from "./primitives.ts";

/** The end float: the screw's own play in its thrust bearing. */
export const endFloat: Drawing = {
  description:
    "An indicator on the end of the screw. The slide is driven a little each way by the handwheel; the screw moves to and fro in its thrust bearing before it takes the slide along, and the indicator shows that sweep.",
  picture: svg`${slideOnScrew(136)} ${wheelFromSide()}
    <path d="M252 98h88v60h-88Z" fill="var(--sheet)" />
    <path d="M252 122v12" stroke="var(--steel)" />
    ${indicator(253, 128, 30)}
    ${turningArrow([26, 128], 44, -20, 20)}
    ${arrow([88, 152], [124, 152], "var(--limit)", true)}
    ${label(132, 157, "end float", "start")}
    <path d="M67 106V74" stroke="var(--ink-pale)" />
    ${label(67, 66, "thrust bearing")}
    ${label(190, 66, "driven each way")}`,
  emptyAbove: 46,
};

/** An indicator out of line with the travel shows too much. */
export const angle: Drawing = {
  description:
    "An indicator stands at an angle a to the travel of the slide. It shows more than the slide moves: the slide's movement is the reading times the cosine of a.",
  picture: svg`<path d="M8 60h110v64H8Z" fill="var(--wash)" stroke="var(--ink)" stroke-width="1.75" />
    ${arrow([28, 92], [92, 92], "var(--ink)", true)}
    ${label(60, 82, "travel")}
    <path d="M120 92H300" stroke="var(--ink-pale)" stroke-dasharray="10 5 3 5" />
    ${indicator(120, 92, 40, -24)}
    ${turningArrow([120, 92], 108, 90, 69)}
    ${label(238, 78, "a", "start")}
    ${label(170, 148, "movement = reading × cos a")}`,
};

/** A dial graduated on diameter. */
export const onDiameter: Drawing = {
  description:
    "A tool moves by one towards round work. The work's radius becomes one less, and its diameter two less: a dial graduated on diameter shows two.",
  picture: svg`<circle cx="92" cy="86" r="62" stroke="var(--steel)" stroke-dasharray="5 4" stroke-width="1.5" />
    <circle cx="92" cy="86" r="44" fill="var(--steel-body)" stroke="var(--steel)" stroke-width="1.5" />
    <path d="M92 76v20M82 86h20" stroke="var(--steel)" />
    <path d="M137 86l14 -9h52v18h-52Z" fill="var(--wash)" stroke="var(--ink)" stroke-width="1.75" />
    ${arrow([196, 62], [162, 62])}
    ${label(204, 66, "slide moves 1", "start")}
    ${label(222, 102, "dial shows 2", "start")}`,
};

/** The scale of a handwheel's dial, unrolled, about its zero. */
const SCALE = { zero: 170, step: 26 } as const;
const divisionAt = (division: number): number => SCALE.zero + division * SCALE.step;

/** A difference taken across the dial's zero. */
export const division: Drawing = {
  description:
    "The scale of a handwheel's dial with its zero in the middle. From 98, past zero, to 3 is five divisions, each of which stands for the travel printed on the dial.",
  picture: svg`<path d="M14 62H326V122H14Z" fill="var(--sheet)" stroke="var(--ink)" stroke-width="1.75" />
    <path
      d=${Array.from({ length: 11 }, (_, index) => `M${divisionAt(index - 5)} 62v${index === 5 ? 28 : 18}`).join("")}
      stroke="var(--ink)"
      stroke-width="1.5"
    />
    ${label(divisionAt(0), 108, "0")} ${label(divisionAt(-2), 98, "98")} ${label(divisionAt(3), 98, "3")}
    ${arrow([divisionAt(-2), 46], [divisionAt(3), 46], "var(--brass)", true)}
    ${label(divisionAt(0.5), 36, "5 divisions")}
    ${label(170, 146, "× travel printed per division")}`,
};

/** Play of the key between handwheel and screw. */
export const drivePlay: Drawing = {
  description:
    "The end of the screw in the hub of the handwheel, seen from the front. Its key is narrower than the keyway, so the wheel turns a little before it takes the screw along.",
  picture: svg`<circle cx="96" cy="88" r="64" fill="var(--sheet)" stroke="var(--ink)" stroke-width="1.75" />
    <circle cx="96" cy="88" r="34" fill="var(--steel-body)" stroke="var(--steel)" stroke-width="1.75" />
    <path d="M83 58V38h26v20" fill="var(--sheet)" stroke="var(--ink)" stroke-width="1.75" />
    <path d="M86 66V42h14v24Z" fill="var(--brass-body)" stroke="var(--brass)" stroke-width="1.5" />
    ${turningArrow([96, 88], 74, -18, 18)}
    <path d="M105 49L182 40" stroke="var(--ink-pale)" />
    ${label(188, 44, "play of the key", "start")}
    ${label(188, 100, "travel = turn × lead", "start")}`,
};
