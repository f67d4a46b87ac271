import { svg } from "lit";
import type { Method } from "../../inspection/schema.ts";
import {
  arrow,
  type Drawing,
  indicator,
  label,
  slideOnScrew,
  ticks,
  turningArrow,
  wheelFromSide,
} from "./primitives.ts";

/** The face of a handwheel's dial, turned by so many degrees, with its mark at the top. */
function dialFace(x: number, y: number, radius: number, turned: number) {
  return svg`<circle cx=${x} cy=${y} r=${radius} fill="var(--sheet)" stroke="var(--ink)" stroke-width="1.75" />
    <path d=${ticks(x, y, radius - 2, radius - 7, 20)} stroke="var(--ink-pale)" transform="rotate(${turned} ${x} ${y})" />
    <circle cx=${x} cy=${y} r="6" fill="var(--steel-body)" stroke="var(--steel)" />
    <path d="M${x} ${y - radius - 3}l-5 -8h10Z" fill="var(--brass)" />`;
}

const pushPull: Drawing = {
  description:
    "The handwheel is held still. The slide is pushed and pulled by hand until it is stopped each way; an indicator against the slide shows the sweep.",
  picture: svg`${slideOnScrew(110)} ${wheelFromSide()}
    ${indicator(208, 95, 40)}
    ${arrow([122, 64], [194, 64], "var(--ink)", true)}
    ${label(158, 54, "push, pull")}
    ${label(262, 60, "read the sweep")}
    <path d="M8 72h36M8 72v8M44 72v8" stroke="var(--brass)" stroke-width="2.5" />
    ${label(8, 62, "held still", "start")}`,
};

const indicatorPair: Drawing = {
  description:
    "The handwheel is brought to the same mark of its dial twice, once while advancing and once while retracting. An indicator against the slide is read each time.",
  picture: svg`${slideOnScrew(124)} ${wheelFromSide()}
    ${indicator(222, 95, 40)}
    ${label(270, 60, "read it twice")}
    ${dialFace(56, 52, 26, 0)}
    ${turningArrow([56, 52], 36, -100, -22)}
    ${turningArrow([56, 52], 36, 100, 22, "var(--brass)")}
    ${label(104, 24, "same mark,", "start")} ${label(104, 40, "from both sides", "start")}`,
};

const dialPair: Drawing = {
  description:
    "The handwheel is turned until the indicator against the slide just returns to its mark, once from each side. The dial of the handwheel is read each time.",
  picture: svg`${slideOnScrew(124)} ${wheelFromSide()}
    ${indicator(222, 95, 0)}
    <path d="M270 70l-5 -8h10Z" fill="var(--brass)" />
    ${label(270, 56, "back to its mark")}
    ${arrow([140, 72], [204, 72], "var(--ink)", true)}
    ${dialFace(56, 52, 26, 8)}
    ${turningArrow([56, 52], 36, -70, 70)}
    ${label(104, 32, "read the dial twice", "start")}`,
};

/** How each way of measuring is done; positions at targets are read by instruments, and have no drawing. */
export const METHOD_DRAWINGS: Readonly<Partial<Record<Method, Drawing>>> = {
  "push-pull": pushPull,
  "indicator-pair": indicatorPair,
  "dial-pair": dialPair,
};
