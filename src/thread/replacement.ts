import { failed, type Outcome, succeeded } from "../inspection/problem.ts";
import { basicDimensions, type Dimensions, type ThreadForm } from "./form.ts";
import { type Clearance, clearanceAtLimits, type RunningFit, runningFit } from "./make/fit.ts";
import { type GroundFlank, groundFlank, type Held, plateAngle, sineBarHeight } from "./make/grinding.ts";
import { type Pass, passTable } from "./make/passes.ts";
import { grooveSection } from "./make/section.ts";
import { type Tap, type TapPlan, tapFor } from "./make/tap.ts";
import { type Cut, type Tool, toolFor } from "./make/tool.ts";
import { type OverWires, overWiresFor, type WireReading } from "./measure/overWiresFor.ts";
import { checkedSize, leadAngle, leadOf, type ThreadSize } from "./size.ts";

/** What is asked for. Lengths in millimetres, angles in degrees. */
export interface ThreadRequest {
  readonly form: ThreadForm;
  readonly size: ThreadSize;
  /** A tolerance class of the form's standard; the running fit gives the limits where none is asked for. */
  readonly tolerance?: string;
  readonly clearance: Clearance;
  readonly wire?: number;
  /** A reading over wires to be worked back. */
  readonly overWires?: number;
  readonly toolStands: Cut["stands"];
  readonly workingClearance: number;
  /** Distance between the rolls of the sine bar. */
  readonly sineBar: number;
  /** How the blank is held, instead of rolled by each edge's own clearance. */
  readonly held?: Held;
  readonly tap: TapPlan;
}

/** How one flank of the tool is ground. Angles in degrees, lengths in millimetres. */
export interface GrindingSetUp {
  readonly edge: "leading" | "trailing";
  readonly held: Held;
  readonly plate: number;
  /** Sine bar under the plate, and under the blank. */
  readonly plateHeight: number;
  readonly blankHeight: number;
  readonly ground: GroundFlank;
}

/** Everything needed to cut and check a replacement thread. Lengths in millimetres, angles in degrees. */
export interface Replacement {
  readonly form: ThreadForm;
  readonly size: ThreadSize;
  readonly lead: number;
  /** As its standard writes it; null where no standard lists the size. */
  readonly designation: string | null;
  /** The class whose limits `dimensions` holds; null where they are basic sizes. */
  readonly tolerance: string | null;
  readonly dimensions: Dimensions;
  /** The axial clearance that the extremes of the class give. */
  readonly clearanceOfClass: Clearance | null;
  readonly fit: RunningFit;
  readonly leadAngle: { readonly major: number; readonly pitch: number; readonly minor: number };
  /** Null for a square thread. */
  readonly wires: OverWires | null;
  readonly reading: WireReading | null;
  readonly tool: Tool;
  /** The tool for the running fit: the same depth, its tip as wide as the thinner thread leaves. */
  readonly fitTool: Tool;
  readonly nutTool: Tool;
  readonly grinding: readonly GrindingSetUp[];
  readonly tap: Tap;
  readonly passes: readonly Pass[];
  /** What has to be said besides, in sentences. */
  readonly notes: readonly string[];
}

/** A thread steeper than this at its core is no screw to move a slide with, in degrees. */
const STEEPEST = 60;
/** Core of a tap below the bore where screw and nut leave no clearance there, in pitches on the diameter. */
const TAP_CORE_CLEARANCE = 0.1;

/** Works out a replacement thread. Fails for what cannot be made or measured, with the cure. */
export function replacementOf(request: ThreadRequest): Outcome<Replacement> {
  const { form, tolerance } = request;
  const checked = checkedSize(request.size);
  if (!checked.ok) return checked;
  const size = checked.value;
  const basic = form.diameters(size);
  if (basic.screwMinor <= 0 || leadAngle(size, basic.screwMinor) > STEEPEST)
    return failed(
      "pitch",
      "the thread would be deeper, or steeper, than the diameter allows",
      "Check pitch, starts, diameter and their units.",
    );
  if (tolerance !== undefined && !form.classes.includes(tolerance))
    return failed("class", `no class "${tolerance}" is known for ${form.words} threads`, classCure(form));
  if (!(request.clearance.from > 0 && request.clearance.to >= request.clearance.from))
    return failed(
      "clearance",
      "must be greater than zero, the lesser first",
      "Give it as 0.025 or 0.02..0.05.",
    );
  if (request.clearance.to > size.pitch / 8)
    return failed("clearance", "it is more than an eighth of the pitch", "Check its unit.");
  const limits = tolerance === undefined ? null : form.limits(size, tolerance);
  const dimensions = limits ?? basicDimensions(form, size);
  const fit = runningFit(form, size, request.clearance);
  const measured = overWiresFor(form, size, dimensions, fit, request);
  if (!measured.ok) return measured;
  const tap = tapFor(
    form,
    size,
    { major: basic.nutMajor, pitch: fit.nutPitch, minor: basic.nutMinor },
    Math.min(basic.screwMinor, basic.nutMinor - TAP_CORE_CLEARANCE * size.pitch),
    request.tap,
  );
  if (!tap.ok) return tap;
  const greatest = {
    major: dimensions.screw.major.max ?? basic.screwMajor,
    pitch: dimensions.screw.pitch.max ?? basic.pitch,
    minor: dimensions.screw.minor.max ?? basic.screwMinor,
  };
  const { toolStands: stands, workingClearance } = request;
  const tool = toolFor(form, size, {
    pitchDiameter: greatest.pitch,
    root: greatest.minor,
    crest: greatest.major,
    stands,
    workingClearance,
  });
  return succeeded({
    form,
    size,
    lead: leadOf(size),
    designation: listedAs(form, size),
    tolerance: limits === null ? null : (tolerance ?? null),
    dimensions,
    clearanceOfClass: limits === null ? null : clearanceAtLimits(form, limits),
    fit,
    leadAngle: {
      major: leadAngle(size, greatest.major),
      pitch: leadAngle(size, greatest.pitch),
      minor: leadAngle(size, greatest.minor),
    },
    wires: measured.value.wires,
    reading: measured.value.reading,
    tool,
    fitTool: fitTool(request, basic, fit),
    nutTool: toolFor(form, size, {
      pitchDiameter: fit.nutPitch,
      root: basic.nutMajor,
      crest: basic.nutMinor,
      stands,
      workingClearance,
    }),
    grinding: setUps(request, tool),
    tap: tap.value,
    passes: passTable(form, grooveSection(form, size.pitch, greatest.pitch, greatest.major, greatest.minor)),
    notes: [
      ...(tolerance !== undefined && limits === null
        ? [
            `Class ${tolerance} is not applied: for several starts its tolerances are wider, by rules this program does not hold.`,
          ]
        : []),
      ...form.remarks,
      ...measured.value.notes,
    ],
  });
}

function fitTool(
  { form, size, toolStands: stands, workingClearance }: ThreadRequest,
  basic: ReturnType<ThreadForm["diameters"]>,
  fit: RunningFit,
): Tool {
  const cut = { root: basic.screwMinor, crest: basic.screwMajor, stands, workingClearance };
  if (fit.screwPitch !== null) return toolFor(form, size, { ...cut, pitchDiameter: fit.screwPitch.max });
  const plain = toolFor(form, size, { ...cut, pitchDiameter: basic.pitch });
  return {
    ...plain,
    tipWidth:
      plain.tipWidth === null ? null : plain.tipWidth * ((size.pitch - fit.thickness.max) / (size.pitch / 2)),
  };
}

function setUps({ form, held, sineBar }: ThreadRequest, tool: Tool): readonly GrindingSetUp[] {
  return (["leading", "trailing"] as const).map((edge) => {
    const clearance = edge === "leading" ? tool.leadingClearance : tool.trailingClearance;
    const position = held ?? { pitched: 0, rolled: clearance };
    const plate = plateAngle(form.halfAngle, position);
    const tilt = position.rolled !== 0 ? position.rolled : position.pitched;
    return {
      edge,
      held: position,
      plate,
      plateHeight: sineBarHeight(sineBar, plate),
      blankHeight: sineBarHeight(sineBar, Math.abs(tilt)),
      ground: groundFlank(plate, position),
    };
  });
}

function listedAs({ sizes }: ThreadForm, { diameter, pitch }: ThreadSize): string | null {
  const same = (a: number, b: number): boolean => Math.abs(a - b) < 1e-4;
  return sizes.find((size) => same(size.diameter, diameter) && same(size.pitch, pitch))?.designation ?? null;
}

function classCure({ classes, remarks }: ThreadForm): string {
  return classes.length === 0
    ? `Leave --class out. ${remarks[0] ?? ""}`.trim()
    : `It takes ${classes.join(", ")}.`;
}
