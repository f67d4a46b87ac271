import { type Lengths, lengthsIn } from "../../inspection/lengths.ts";
import { threadLengths } from "../../picture/thread/threadLengths.ts";
import type { Limits } from "../../thread/form.ts";
import type { Tool } from "../../thread/make/tool.ts";
import type { OverWires, WireReading } from "../../thread/measure/overWiresFor.ts";
import type { ThreadWear } from "../../thread/measure/wear.ts";
import type { GrindingSetUp, Replacement } from "../../thread/replacement.ts";
import type { ThreadSaid } from "./threadSaid.ts";
import { between, degrees, leadingEdge, pitchWords } from "./threadWords.ts";

type Fact = readonly [name: string, words: string];

export interface FactSection {
  readonly title: string;
  readonly facts: readonly Fact[];
}

/** What there is to say of a replacement thread, section by section, as names and words. */
export function threadSections({ thread, units, wear }: ThreadSaid): readonly FactSection[] {
  const lengths = threadLengths(units);
  const sections: readonly (FactSection | null)[] = [
    {
      title:
        thread.tolerance === null
          ? "Running fit: cut to this"
          : `Running fit for the clearance wanted; class ${thread.tolerance}, which was asked for, comes below`,
      facts: fitFacts(thread, lengths),
    },
    { title: "Screw", facts: partFacts(thread, "screw", lengths) },
    { title: "Nut", facts: partFacts(thread, "nut", lengths) },
    thread.clearanceOfClass && {
      title: `Class ${thread.tolerance}`,
      facts: [
        [
          "Axial clearance",
          `${between(lengths, thread.clearanceOfClass.from, thread.clearanceOfClass.to)}, from the extremes of both parts`,
        ],
      ],
    },
    {
      title: "Lead",
      facts: [
        ["Lead", pitchWords(thread.lead, units)],
        ["Pitch", pitchWords(thread.size.pitch, units)],
        [
          "Lead angle",
          `${degrees(thread.leadAngle.major)} at the outside, ${degrees(thread.leadAngle.pitch)} at the pitch line, ${degrees(thread.leadAngle.minor)} at the core`,
        ],
      ],
    },
    thread.wires && { title: "Over wires", facts: wireFacts(thread.wires, lengths) },
    thread.reading && { title: "The reading", facts: readingFacts(thread.reading, lengths) },
    { title: "Tool for the screw", facts: toolFacts(thread.fitTool, thread, lengths) },
    { title: "Grinding the tool", facts: thread.grinding.map((each) => grindingFact(each, lengths)) },
    { title: "Tool for the nut", facts: toolFacts(thread.nutTool, thread, lengths) },
    { title: "Or a tap for the nut", facts: tapFacts(thread, lengths) },
    { title: "Passes, from the first touch", facts: passFacts(thread, lengthsIn(units)) },
    wear && { title: "The worn screw", facts: wearFacts(wear, lengths) },
  ];
  return sections.filter((each) => each !== null);
}

/** What the running fit asks of screw and nut. */
export function fitFacts({ fit, wires }: Replacement, lengths: Lengths): readonly Fact[] {
  const { clearance, screwPitch, nutPitch, thickness } = fit;
  return [
    ["Axial clearance", `${between(lengths, clearance.from, clearance.to)} on both flanks together`],
    ...(screwPitch === null
      ? []
      : [["Screw, pitch diameter", between(lengths, screwPitch.max, screwPitch.min)] as const]),
    ["Nut, pitch diameter", lengths.lostMotion(nutPitch)],
    [
      "Screw, thread thickness",
      `${between(lengths, thickness.max, thickness.min)} at ${lengths.lostMotion(nutPitch)}`,
    ],
    ...(wires === null
      ? []
      : [
          [
            "Screw, over wires",
            `${between(lengths, wires.fit.max, wires.fit.min)} over wires of ${lengths.lostMotion(wires.chosen)}`,
          ] as const,
        ]),
  ];
}

/** The diameters of the screw or of the nut. */
export function partFacts(
  { dimensions, tolerance }: Replacement,
  part: "screw" | "nut",
  lengths: Lengths,
): readonly Fact[] {
  const { major, pitch, minor } = dimensions[part];
  const words = ({ max, min }: Limits): string => {
    if (max !== null && min !== null) return between(lengths, max, min);
    const size = max ?? min;
    return size === null ? "" : `${lengths.lostMotion(size)}${tolerance === null ? "" : " (basic)"}`;
  };
  return [
    [part === "screw" ? "Outside diameter" : "Root diameter", words(major)],
    ["Pitch diameter", `${words(pitch)}${tolerance === null ? " (basic)" : ""}`],
    [part === "screw" ? "Core diameter" : "Bore", words(minor)],
  ];
}

function wireFacts(wires: OverWires, lengths: Lengths): readonly Fact[] {
  const { overWires, rule, formulaError } = wires;
  const off = `${(Math.abs(formulaError) * 1000).toFixed(1)} µm`;
  return [
    ["Wire taken", lengths.lostMotion(wires.chosen)],
    [
      "Wires that fit",
      `${between(lengths, wires.least, wires.largest)}, best ${lengths.lostMotion(wires.best)}`,
    ],
    ["Reading to cut to", between(lengths, wires.target.max, wires.target.min)],
    ...(overWires.max === null
      ? []
      : [
          [
            overWires.min === null ? "At the basic size" : "At the limits",
            overWires.min === null
              ? lengths.lostMotion(overWires.max)
              : between(lengths, overWires.max, overWires.min),
          ] as const,
        ]),
    [
      "Worked out",
      rule === "formula"
        ? `by the formula with the lead angle's correction, ${off} from the contact of wire and helicoid`
        : `from the contact of wire and helicoid; the formula is off by ${off} at this lead`,
    ],
  ];
}

function readingFacts(reading: WireReading, lengths: Lengths): readonly Fact[] {
  const { toMax, toMin, infeedToMax, infeedToMin } = reading;
  const state =
    toMin < 0
      ? `nothing: it is ${lengths.lostMotion(-toMin)} below the least reading`
      : toMax <= 0
        ? `nothing: it is within the target, ${lengths.lostMotion(toMin)} above the least`
        : `${lengths.figure(toMax)} to ${lengths.lostMotion(toMin)} of the reading, ${lengths.figure(infeedToMax)} to ${lengths.lostMotion(infeedToMin)} on the radius`;
  return [
    ["Over wires", lengths.lostMotion(reading.overWires)],
    ["Pitch diameter", lengths.lostMotion(reading.pitchDiameter)],
    ["Thread thickness", `${lengths.lostMotion(reading.thickness)} at the basic pitch diameter`],
    ["Still to come off", state],
  ];
}

function toolFacts(tool: Tool, { size }: Replacement, lengths: Lengths): readonly Fact[] {
  const { tipWidth, tipRadius, depth, leadingClearance, trailingClearance } = tool;
  return [
    tipWidth === null
      ? ["Tip", `radius ${lengths.lostMotion(tipRadius ?? 0)}`]
      : ["Tip", `flat ${lengths.lostMotion(tipWidth)} wide, or narrower and fed sideways`],
    ["Depth", `${lengths.lostMotion(depth)} on the radius`],
    [
      "Side clearance",
      `${degrees(leadingClearance)} on the leading edge, ${degrees(Math.abs(trailingClearance))}${trailingClearance < 0 ? ", leaning the other way," : ""} on the trailing edge`,
    ],
    ["Leading edge", leadingEdge(size)],
  ];
}

function grindingFact(
  { edge, held, plate, plateHeight, blankHeight, ground }: GrindingSetUp,
  lengths: Lengths,
): Fact {
  const { pitched, rolled } = held;
  const positions = [
    ...(pitched === 0 ? [] : [`pitched nose ${pitched > 0 ? "up" : "down"} ${degrees(Math.abs(pitched))}`]),
    ...(rolled === 0
      ? []
      : [`rolled ${degrees(Math.abs(rolled))} ${rolled > 0 ? "away from the wheel" : "towards the wheel"}`]),
  ];
  return [
    edge === "leading" ? "Leading edge" : "Trailing edge",
    `blank ${positions.length === 0 ? "level" : positions.join(" and ")} (sine bar ${lengths.lostMotion(blankHeight)}), plate at ${degrees(plate)} (sine bar ${lengths.lostMotion(plateHeight)}); this gives ${degrees(ground.side)} side clearance, ${degrees(ground.squareToEdge)} square to the edge`,
  ];
}

/** The tap that is made for a nut. */
export function tapFacts({ tap }: Replacement, lengths: Lengths): readonly Fact[] {
  const { bore, core, steps, leadIn, full, length } = tap;
  const thickest = Math.max(...steps.map(({ chip }) => chip));
  return [
    ["Bore", lengths.lostMotion(bore)],
    ["Core of the tap", `${lengths.lostMotion(core)}, clear of the bore`],
    [
      "Steps",
      `${steps.length}, outside ${steps.map(({ diameter }) => lengths.figure(diameter)).join(", ")} ${lengths.units}; each cuts an equal share of the thread's section`,
    ],
    ["Lead-in taper", `${lengths.lostMotion(leadIn)} long before each step`],
    ["Full form", `${lengths.lostMotion(full)} at the end; ${lengths.lostMotion(length)} of thread in all`],
    ["Thickest chip", `${lengths.lostMotion(thickest)} a tooth`],
  ];
}

function passFacts({ passes, form }: Replacement, lengths: Lengths): readonly Fact[] {
  const series = (of: (pass: Replacement["passes"][number]) => number): string =>
    `${passes.map((pass) => lengths.figure(of(pass))).join(", ")} ${lengths.units}`;
  return [
    ["Straight infeed", series(({ depth }) => depth)],
    ...(form.halfAngle === 0
      ? []
      : [[`Along the flank, ${form.halfAngle}°`, series(({ alongFlank }) => alongFlank)] as const]),
  ];
}

const STATES: Readonly<Record<ThreadWear["state"], string>> = {
  "out-of-use":
    "Less than a third of the thread is left: do not use the slide under load until it is inspected.",
  remake: "Less than three quarters of the thread are left: remake the screw whatever the backlash says.",
  usable: "More than three quarters of the thread are left.",
};

function wearFacts({ places, state, reference }: ThreadWear, lengths: Lengths): readonly Fact[] {
  return [
    ...places.map(
      ({ position, thickness, worn, shareLeft }): Fact => [
        `At ${lengths.position(position)}`,
        `${lengths.lostMotion(thickness)} thick, ${lengths.lostMotion(worn)} worn on both flanks together, ${Math.round(shareLeft * 100)} in 100 left`,
      ],
    ),
    [
      "Told against",
      `the thickest place measured, at ${lengths.position(reference.position)}: wear that is everywhere stays hidden unless that place never ran`,
    ],
    ["In all", STATES[state]],
  ];
}
