import { type Lengths, lengthsIn } from "../../inspection/lengths.ts";
import { PROGRAM_VERSION } from "../../inspection/programVersion.ts";
import { threadLengths } from "../../picture/thread/threadLengths.ts";
import { threadPicture } from "../../picture/thread/threadPicture.ts";
import { threadSvg } from "../../picture/thread/threadSvg.ts";
import type { Limits } from "../../thread/form.ts";
import type { Tool } from "../../thread/make/tool.ts";
import type { ThreadSize } from "../../thread/size.ts";
import { documentShell } from "../document/documentShell.ts";
import { facts, figure, lines, table, withUnits } from "../document/pieces.ts";
import { html, type Markup } from "../markup.ts";
import { SLIP_STYLE } from "./slipStyle.ts";
import type { ThreadSaid } from "./threadSaid.ts";
import { between, degrees, pitchWords, startsWords, threadCautions, threadTitle } from "./threadWords.ts";

/**
 * The slip for the lathe: one page with everything that whoever cuts the thread needs, drawing and passes included. What
 * is not known is a line to write on.
 */
export function threadSlip(said: ThreadSaid): string {
  const { thread, units, slide, assumed, holdsLoad } = said;
  const lengths = threadLengths(units);
  const title = threadTitle(thread.form, thread.size, thread.designation, units);
  return documentShell({
    title: `Slip for the lathe: ${title}`,
    foot: slide === null ? title : `${slide}: ${title}`,
    style: SLIP_STYLE,
    content: [
      html`<div class="slip">
<header class="head"><div><p class="kicker">Slip for the lathe: replacement screw and nut</p><h1>${withUnits(title)}</h1></div>
<p>${slide ?? ""}</p></header>
<section class="drawing">${figure(threadSvg(threadPicture(thread, units), 960, false))}</section>
<section class="pair">
<div><h2>The thread</h2>${facts(threadFacts(said, lengths))}</div>
<div><h2>Cut to this: the running fit</h2>${facts(fitFacts(said, lengths))}</div>
</section>
<section><h2>Diameters, ${units}</h2>${diameters(said, lengths)}</section>
<section class="pair">
<div><h2>Tool for the screw</h2>${facts(toolFacts(thread.fitTool, thread.size, lengths))}</div>
<div><h2>Tool for the nut</h2>${facts(toolFacts(thread.nutTool, thread.size, lengths))}</div>
</section>
<section><h2>Passes on the screw, ${units}: straight infeed${thread.form.halfAngle === 0 ? "" : `, and infeed along the flank with the compound at ${thread.form.halfAngle}°`}</h2>${passes(said)}</section>
${written()}
<aside class="cautions small"><h2>Take care</h2>${lines(threadCautions(holdsLoad))}</aside>
<section class="small"><h2>Assumed, and to know</h2>${lines([...assumed, ...thread.notes])}</section>
<p class="made">Worked out by Tightspot, version ${PROGRAM_VERSION}.</p>
</div>`,
    ],
  });
}

function threadFacts({ thread, units, length, material }: ThreadSaid, lengths: Lengths) {
  const { form, size, lead, leadAngle } = thread;
  return [
    ["Form", form.words],
    ["Pitch", pitchWords(size.pitch, units)],
    ["Lead", `${pitchWords(lead, units)}, ${startsWords(size.starts)}`],
    ["Hand", `${size.hand} hand`],
    ["Lead angle", `${degrees(leadAngle.pitch)} at the pitch line`],
    ["Length of thread", length === null ? "____________" : lengths.position(length)],
    ["Material as found", material ?? "____________"],
  ] as const;
}

function fitFacts({ thread }: ThreadSaid, lengths: Lengths) {
  const { fit, wires, tolerance } = thread;
  const { clearance, screwPitch, thickness, nutPitch } = fit;
  return [
    ["Axial clearance, in all", between(lengths, clearance.from, clearance.to)],
    ...(screwPitch === null
      ? []
      : [["Screw, pitch diameter", between(lengths, screwPitch.max, screwPitch.min)] as const]),
    ["Nut, pitch diameter", lengths.lostMotion(nutPitch)],
    [
      "Thread thickness",
      `${between(lengths, thickness.max, thickness.min)} at ${lengths.lostMotion(nutPitch)}`,
    ],
    ...(wires === null
      ? []
      : ([
          ["Over wires", between(lengths, wires.fit.max, wires.fit.min)],
          [
            "Wire",
            `${lengths.lostMotion(wires.chosen)} (${lengths.figure(wires.least)} to ${lengths.figure(wires.largest)} fit)`,
          ],
        ] as const)),
    ...(tolerance === null || wires?.overWires.max == null || wires.overWires.min === null
      ? []
      : [
          [
            `Class ${tolerance}, over wires`,
            between(lengths, wires.overWires.max, wires.overWires.min),
          ] as const,
        ]),
  ] as const;
}

function diameters({ thread }: ThreadSaid, lengths: Lengths): Markup {
  const { screw, nut } = thread.dimensions;
  const cell = (size: number | null): string => (size === null ? "–" : lengths.figure(size));
  const row = (name: string, ofScrew: Limits, ofNut: Limits) => ({
    cells: [name, cell(ofScrew.max), cell(ofScrew.min), cell(ofNut.min), cell(ofNut.max)],
  });
  const kind = thread.tolerance === null ? "basic" : `class ${thread.tolerance}`;
  return table(
    [
      { name: "", holds: "words" },
      { name: `Screw, ${kind === "basic" ? kind : "greatest"}`, holds: "figures" },
      { name: "least", holds: "figures" },
      { name: `Nut, ${kind === "basic" ? kind : "least"}`, holds: "figures" },
      { name: "greatest", holds: "figures" },
    ],
    [
      row("Outside of the screw, root of the nut", screw.major, nut.major),
      row(`Pitch (${kind})`, screw.pitch, nut.pitch),
      row("Core of the screw, bore of the nut", screw.minor, nut.minor),
    ],
  );
}

function toolFacts(tool: Tool, { hand }: ThreadSize, lengths: Lengths) {
  const { tipWidth, tipRadius, depth, leadingClearance, trailingClearance } = tool;
  const [towards, away] =
    hand === "right" ? [leadingClearance, trailingClearance] : [trailingClearance, leadingClearance];
  return [
    tipWidth === null
      ? (["Tip", `radius ${lengths.lostMotion(tipRadius ?? 0)}`] as const)
      : (["Tip", `flat ${lengths.lostMotion(tipWidth)} or narrower`] as const),
    ["Depth", lengths.lostMotion(depth)] as const,
    ["Headstock side", `${degrees(towards)} side clearance`] as const,
    ["Other side", `${degrees(away)} side clearance`] as const,
  ];
}

/** Infeed is read off a dial: to its usual graduation. */
function passes({ thread, units }: ThreadSaid): Markup {
  const lengths = lengthsIn(units);
  const isSquare = thread.form.halfAngle === 0;
  return html`<ol class="passes">${thread.passes.map(
    ({ depth, alongFlank }, index) =>
      html`<li><b>${index + 1}</b><span>${lengths.figure(depth)}</span>${isSquare ? [] : html`<span>${lengths.figure(alongFlank)}</span>`}</li>`,
  )}</ol>`;
}

function written(): Markup {
  return html`<section><p>${["Measured on the old parts", "Cut by", "Date", "Over wires as made"].map(
    (name) => html`${name} <span class="rule"></span> `,
  )}</p></section>`;
}
