import { fromMillimetres, roundTo, type Units } from "../../inspection/units.ts";
import { nutProfile, type ProfilePoint, screwProfile } from "../../thread/profile.ts";
import type { Replacement } from "../../thread/replacement.ts";
import { threadLengths } from "./threadLengths.ts";

/** A diameter that the drawing shows as a level, with what is written beside it. */
export interface DiameterMark {
  readonly name: string;
  /** Half of the diameter, in millimetres. */
  readonly radius: number;
  readonly label: string;
  readonly of: "screw" | "nut" | "pitch" | "wires";
}

/**
 * What the drawing of a thread shows: the axial section of screw and nut in mesh, and of the screw with a wire in place.
 * Lengths in millimetres, labels in the reader's unit. A plain object, so that whatever draws it draws the same.
 */
export interface ThreadPicture {
  readonly title: string;
  /** The picture in words, for those who cannot see it. */
  readonly description: string;
  readonly pitch: number;
  readonly pitchLabel: string;
  /** Half the included angle, in degrees. */
  readonly halfAngle: number;
  readonly angleLabel: string;
  /** Over one pitch, the middle of the screw's groove at zero. */
  readonly screw: readonly ProfilePoint[];
  readonly nut: readonly ProfilePoint[];
  readonly pitchRadius: number;
  readonly wire: { readonly radius: number; readonly centre: number; readonly label: string } | null;
  /** The flat that the tool's tip leaves; null where the root is rounded. */
  readonly tipLabel: string | null;
  /** From the largest down. */
  readonly diameters: readonly DiameterMark[];
}

/** The drawing of a replacement thread, of basic sizes or of the greatest screw and least nut of its class. */
export function threadPicture(thread: Replacement, units: Units): ThreadPicture {
  const { form, size, dimensions, wires, tool } = thread;
  const lengths = threadLengths(units);
  const basic = form.diameters(size);
  const screw = {
    major: dimensions.screw.major.max ?? basic.screwMajor,
    pitch: dimensions.screw.pitch.max ?? basic.pitch,
    minor: dimensions.screw.minor.max ?? basic.screwMinor,
  };
  const nut = {
    major: dimensions.nut.major.min ?? basic.nutMajor,
    pitch: dimensions.nut.pitch.min ?? basic.pitch,
    minor: dimensions.nut.minor.min ?? basic.nutMinor,
  };
  const mark = (name: string, diameter: number, of: DiameterMark["of"]): DiameterMark => ({
    name,
    radius: diameter / 2,
    label: `${name} ${lengths.figure(diameter)}`,
    of,
  });
  const over = wires?.overWires.max ?? null;
  const diameters = [
    mark("nut root", nut.major, "nut"),
    mark("outside", screw.major, "screw"),
    mark("pitch", screw.pitch, "pitch"),
    mark("bore", nut.minor, "nut"),
    mark("core", screw.minor, "screw"),
    ...(over === null ? [] : [mark("over wires", over, "wires")]),
  ].sort((a, b) => b.radius - a.radius);
  const pitchLabel = `pitch ${roundTo(fromMillimetres(size.pitch, units), units === "in" ? 5 : 4)}`;
  const name = thread.designation ?? form.words;
  return {
    title: `Screw and nut, ${name}, in ${units === "in" ? "inches" : "millimetres"}`,
    description: `Axial section to scale, ${pitchLabel} ${units}, flanks at ${form.halfAngle}°. Diameters: ${diameters
      .map(({ label }) => label)
      .join(", ")} ${units}.`,
    pitch: size.pitch,
    pitchLabel,
    halfAngle: form.halfAngle,
    angleLabel: `${form.halfAngle}°`,
    screw: screwProfile(form, size.pitch, screw),
    nut: nutProfile(form, size.pitch, nut),
    pitchRadius: screw.pitch / 2,
    wire:
      wires === null || over === null
        ? null
        : {
            radius: wires.chosen / 2,
            centre: (over - wires.chosen) / 2,
            label: `wire ${lengths.figure(wires.chosen)}`,
          },
    tipLabel: tool.tipWidth === null ? null : `tip ${lengths.figure(tool.tipWidth)}`,
    diameters,
  };
}
