import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { PlannableSlide } from "../../../src/inspection/plannableSlide.ts";
import { measuringPlan, type Plan, type PlanOptions } from "../../../src/intake/plan/measuringPlan.ts";
import { propertyRuns } from "../../propertyRuns.ts";

const BARE: PlannableSlide = { units: "mm", travel: { from: 0, to: 160 }, screw: { lead: 4 } };

function planned(slide: PlannableSlide, options?: PlanOptions): Plan {
  const plan = measuringPlan(slide, options);
  if (!plan.ok) throw new Error(JSON.stringify(plan.problem));
  return plan.value;
}

const positionsOf = ({ stations }: Plan): readonly number[] => stations.map(({ position }) => position);
const gapsOf = (positions: readonly number[]): readonly number[] =>
  positions.slice(1).map((position, index) => position - positions[index]);

/** How far from even the angles are at which the stations meet the screw: 0 where even, 1 where all are one. */
function resultantLength(positions: readonly number[], lead: number): number {
  const angles = positions.map((position) => (2 * Math.PI * position) / lead);
  const sum = (of: (angle: number) => number) => angles.reduce((total, angle) => total + of(angle), 0);
  return Math.hypot(sum(Math.cos), sum(Math.sin)) / angles.length;
}

/** Slides of the sizes that there are, with some data left out; engaged lengths are as the method takes them then. */
const slides = fc
  .record({
    lead: fc.constantFrom(1.5, 2, 2.5, 2.54, 3, 4, 5, 5.08, 6, 8, 10, 20),
    start: fc.integer({ min: -2000, max: 2000 }),
    nutLengths: fc.integer({ min: 5, max: 250 }),
    engaged: fc.constantFrom(undefined, 18, 25.4, 40, 63),
    diameter: fc.constantFrom(undefined, 16, 20, 25.4, 40),
  })
  .map(({ lead, start, nutLengths, engaged, diameter }) => {
    const engagedLength = engaged ?? (diameter === undefined ? 6 * lead : 1.5 * diameter);
    const from = start / 10;
    const to = Number((from + (nutLengths / 10) * engagedLength).toFixed(1));
    const slide: PlannableSlide = {
      units: "mm",
      travel: { from, to },
      screw: { lead, ...(diameter !== undefined && { nominalDiameter: diameter }) },
      ...(engaged !== undefined && { nut: { engagedLength: engaged } }),
    };
    return { slide, engagedLength, turns: (to - from) / lead };
  });

describe("the stations of a measuring plan", () => {
  it("begin and end with the travel as stated, and are in order, each a place of its own", () => {
    fc.assert(
      fc.property(slides, ({ slide }) => {
        const positions = positionsOf(planned(slide));
        expect(positions[0]).toBe(slide.travel.from);
        expect(positions.at(-1)).toBe(slide.travel.to);
        expect(Math.min(...gapsOf(positions))).toBeGreaterThan(0.01);
      }),
    );
  });

  it("are closer together than half the nut's engaged length, and ten or more", () => {
    fc.assert(
      fc.property(slides, ({ slide, engagedLength }) => {
        const plan = planned(slide);
        const gaps = gapsOf(positionsOf(plan));
        expect(Math.max(...gaps)).toBeLessThan(engagedLength / 2);
        expect(plan.widestGap).toBeCloseTo(Math.max(...gaps), 8);
        expect(plan.engagedLength).toBeCloseTo(engagedLength, 6);
        expect(plan.stations.length).toBeGreaterThanOrEqual(10);
        expect(plan.notes.filter((note) => note.includes("apart"))).toEqual([]);
      }),
    );
  });

  it("are spread over the turn of the screw", () => {
    // n angles a constant share f of a turn apart have a resultant of |sin(π n f) / (n sin(π f))|, at most √2 / n for
    // shares from a quarter to three quarters. Rounding moves a station by a twentieth of a turn at most.
    fc.assert(
      fc.property(slides, ({ slide, turns }) => {
        const positions = positionsOf(planned(slide));
        fc.pre(turns / positions.length >= 0.25);
        const bound = Math.SQRT2 / positions.length + 2 * Math.PI * 0.05;
        expect(resultantLength(positions, slide.screw.lead)).toBeLessThan(bound);
        // Twice per turn: an oval journal, or a coupling out of line.
        expect(resultantLength(positions, slide.screw.lead / 2)).toBeLessThan(0.6);
      }),
    );
  });

  it("meet the screw at other angles than their neighbours", () => {
    fc.assert(
      fc.property(slides, ({ slide, turns }) => {
        const positions = positionsOf(planned(slide));
        fc.pre(turns / positions.length >= 0.25);
        for (const gap of gapsOf(positions)) {
          const share = gap / slide.screw.lead;
          expect(Math.abs(share - Math.round(share))).toBeGreaterThan(0.14);
        }
      }),
    );
  });

  it("do not fall in step with the lead where even spacing would", () => {
    // Ten intervals of 12 mm would be three turns each.
    const slide = { ...BARE, travel: { from: 0, to: 120 } };
    const even = Array.from({ length: 11 }, (_, index) => 12 * index);
    expect(resultantLength(even, 4)).toBeCloseTo(1, 9);
    expect(resultantLength(positionsOf(planned(slide)), 4)).toBeLessThan(0.15);
    expect(resultantLength(positionsOf(planned(slide, { stations: 11 })), 4)).toBeLessThan(0.15);
  });

  it("are as many in inches as in millimetres, and at the same places but for rounding", () => {
    fc.assert(
      fc.property(
        slides,
        fc.option(fc.integer({ min: 2, max: 40 }), { nil: undefined }),
        (drawn, stations) => {
          const { slide } = drawn;
          const inches = (length: number) => length / 25.4;
          const inInches: PlannableSlide = {
            units: "in",
            travel: { from: inches(slide.travel.from), to: inches(slide.travel.to) },
            screw: {
              lead: inches(slide.screw.lead),
              ...(slide.screw.nominalDiameter && { nominalDiameter: inches(slide.screw.nominalDiameter) }),
            },
            ...(slide.nut?.engagedLength && { nut: { engagedLength: inches(slide.nut.engagedLength) } }),
          };
          const options = stations === undefined ? {} : { stations };
          const metric = positionsOf(planned(slide, options));
          const imperial = positionsOf(planned(inInches, options));
          expect(imperial.length).toBe(metric.length);
          imperial.forEach((position, index) => {
            expect(Math.abs(position * 25.4 - metric[index])).toBeLessThan(slide.screw.lead / 10);
          });
        },
      ),
    );
  });

  it("lie at figures that can be set", () => {
    const inInches = { units: "in", travel: { from: 0, to: 9.125 }, screw: { lead: 0.2 } } as const;
    const decimals = (plan: Plan) =>
      positionsOf(plan).map((each) => (String(each).split(".")[1] ?? "").length);
    expect(Math.max(...decimals(planned(BARE)))).toBe(1);
    expect(Math.max(...decimals(planned({ ...BARE, screw: { lead: 10 } })))).toBe(0);
    expect(decimals(planned(inInches)).slice(0, -1)).not.toContain(3);
    expect(positionsOf(planned(inInches)).at(-1)).toBe(9.125);
  });

  it("tell how far the screw turns to each, and where in its turn it then stands", () => {
    const { stations } = planned(BARE, { stations: 5 });
    expect(stations.map(({ position }) => position)).toEqual([0, 41, 82, 119, 160]);
    expect(stations.map(({ turns }) => turns)).toEqual([0, 10.25, 10.25, 9.25, 10.25]);
    expect(stations.map(({ angle }) => angle)).toEqual([0, 90, 180, 270, 0]);
  });
});

describe("the order of a measuring plan", () => {
  it("goes out along the travel and back in every round, and ends where it began", () => {
    fc.assert(
      fc.property(slides, ({ slide }) => {
        const plan = planned(slide);
        plan.rounds.forEach((stations, round) => {
          const readings = plan.readings.filter((reading) => reading.round === round);
          expect(readings.map(({ station }) => station)).toEqual([
            ...stations,
            ...stations.toReversed(),
            ...(round === 0 ? [] : [0]),
          ]);
          expect(readings.filter(({ pass }) => pass === "out").length).toBe(stations.length);
        });
        for (const { station, position } of plan.readings)
          expect(plan.stations[station].position).toBe(position);
        expect(plan.readings.map(({ round }) => round)).toEqual(
          plan.readings.map(({ round }) => round).toSorted(),
        );
      }),
    );
  });

  it("lets a creep that is steady shift the mean of every station alike", () => {
    const { readings, stations, rounds } = planned(BARE);
    expect(rounds.length).toBe(1);
    const creep = readings.map(({ station }, order) => ({ station, value: 0.003 * order }));
    const means = stations.map((_, at) => {
      const here = creep.filter(({ station }) => station === at);
      return here.reduce((sum, { value }) => sum + value, 0) / here.length;
    });
    for (const mean of means) expect(mean).toBeCloseTo(means[0], 12);
  });
});

describe("the rounds of a measuring plan", () => {
  it("have every station once, in order along the travel, and only one where all are asked for", () => {
    fc.assert(
      fc.property(slides, ({ slide }) => {
        const plan = planned(slide);
        const all = plan.stations.map((_, index) => index);
        expect(plan.rounds.flat().toSorted((a, b) => a - b)).toEqual(all);
        for (const round of plan.rounds) expect(round).toEqual(round.toSorted((a, b) => a - b));
        expect(planned(slide, { stations: all.length }).rounds).toEqual([all]);
      }),
    );
  });

  it("begin with no more than one person reads at a go, ends included, close enough for a verdict", () => {
    fc.assert(
      fc.property(slides, ({ slide, engagedLength }) => {
        const plan = planned(slide);
        fc.pre(plan.stations.length > 20);
        const [first, second] = plan.rounds.map((round) => round.map((at) => plan.stations[at].position));
        expect([first[0], first.at(-1)]).toEqual([slide.travel.from, slide.travel.to]);
        const gap = Math.max(...gapsOf(first));
        expect(gap).toBeLessThan(2 * engagedLength);
        // Longer only where fifteen would leave too much unread for any verdict.
        const leastFor = Math.ceil((slide.travel.to - slide.travel.from) / (2 * engagedLength)) + 1;
        expect(first.length).toBeLessThanOrEqual(Math.max(20, leastFor * 2));
        expect(second.length).toBe(plan.stations.length - first.length);
        expect(plan.reasons.join(" ")).toContain(`${first.length} stations first`);
      }),
    );
  });

  it("spread over the turn of the screw from the first on", () => {
    fc.assert(
      fc.property(slides, ({ slide, turns }) => {
        const plan = planned(slide);
        fc.pre(turns / plan.stations.length >= 0.25);
        const first = plan.rounds[0].map((at) => plan.stations[at].position);
        // All at one angle would be 1; a check asks for more from about nine tenths on.
        expect(resultantLength(first, slide.screw.lead)).toBeLessThan(0.75);
      }),
    );
  });

  it("are two for 300 mm and a nut of 24 mm, the first closer than the nut is long", () => {
    const plan = planned({
      ...BARE,
      travel: { from: 0, to: 300 },
      screw: { lead: 5 },
      nut: { engagedLength: 24 },
    });
    expect(plan.rounds.length).toBe(2);
    expect(plan.rounds[0].length).toBeLessThanOrEqual(15);
    expect(Math.max(...gapsOf(plan.rounds[0].map((at) => plan.stations[at].position)))).toBeLessThan(24);
    expect(plan.widestGap).toBeLessThan(12);
  });
});

describe("a plan of so many stations as are asked for", () => {
  it("has so many, and says so exactly where they lie too far apart", () => {
    fc.assert(
      fc.property(slides, fc.integer({ min: 2, max: 60 }), ({ slide, engagedLength }, stations) => {
        const plan = planned(slide, { stations });
        expect(plan.stations.length).toBe(stations);
        // A hair less than half, which binary fractions leave of a gap that is exactly half, is half.
        const tooFar = Math.max(...gapsOf(positionsOf(plan))) > engagedLength / 2 - 1e-9;
        expect(plan.notes.some((note) => note.includes("half the nut's engaged length"))).toBe(tooFar);
        expect(plan.reasons.some((reason) => reason.includes("no tight spot can lie between them"))).toBe(
          !tooFar,
        );
        expect(plan.notes.some((note) => note.includes("fewer than 5 stations"))).toBe(stations < 5);
      }),
    );
  });

  it("tells how many would do, and where no verdict could be given", () => {
    const { notes } = planned(BARE, { stations: 3 });
    expect(notes).toContain("No verdict is given with fewer than 5 stations.");
    expect(notes.join(" ")).toContain("further apart than twice the engaged length, 48 mm");
    const enough = planned(BARE).stations.length;
    expect(notes.join(" ")).toContain(`${enough} stations would do.`);
    expect(planned(BARE, { stations: enough }).notes).toEqual([]);
  });

  it.each([1, 0, -3, 4.5, 501, 1e9, Number.NaN])("refuses %s stations", (stations) => {
    const plan = measuringPlan(BARE, { stations });
    expect(plan).toMatchObject({
      ok: false,
      problem: { where: "stations", cure: expect.stringContaining("2 to 500 stations") },
    });
  });
});

describe("what a plan says of its grounds", () => {
  it("lists an engaged length that the slide does not state as assumed", () => {
    expect(planned(BARE).assumed).toEqual(["The nut engages 24 mm of the screw (six leads)."]);
    expect(planned({ ...BARE, screw: { lead: 4, nominalDiameter: 20 } }).assumed).toEqual([
      "The nut engages 30 mm of the screw (one and a half nominal diameters).",
    ]);
    expect(planned({ ...BARE, nut: { engagedLength: 30 } }).assumed).toEqual([]);
  });

  it("says that a travel of less than a turn does not show a wobble", () => {
    const { notes, stations } = planned({ ...BARE, travel: { from: 1, to: 3 } });
    expect(notes.join(" ")).toContain("less than a turn");
    expect(stations.length).toBe(10);
  });

  it("refuses a travel that is none", () => {
    const plan = measuringPlan({ ...BARE, travel: { from: 1, to: 1.05 } });
    expect(plan).toMatchObject({ ok: false, problem: { where: "travel" } });
  });

  it("keeps the ends of a travel that was stated in the other unit to what can be set", () => {
    const converted = { ...BARE, units: "in", travel: { from: 0, to: 160 / 25.4 } } as const;
    expect(positionsOf(planned(converted)).at(-1)).toBe(6.2992);
  });

  it("refuses a slide that would take more stations than anybody reads, with the cure", () => {
    const endless = { ...BARE, travel: { from: 0, to: 90_000 } };
    expect(measuringPlan(endless)).toMatchObject({
      ok: false,
      problem: { what: expect.stringContaining("12 mm"), cure: expect.stringContaining("how many") },
    });
    expect(planned(endless, { stations: 100 }).notes.length).toBe(1);
  });

  it("makes a plan of any slide that a file may hold, or a problem, and never throws", () => {
    const size = fc.double({ min: 1e-6, max: 1e5, noNaN: true });
    const place = fc.double({ min: -1e5, max: 1e5, noNaN: true });
    fc.assert(
      fc.property(
        place,
        place,
        size,
        fc.option(size),
        fc.constantFrom("mm", "in"),
        (a, b, lead, nut, units) => {
          fc.pre(a !== b);
          const slide = {
            units,
            travel: { from: Math.min(a, b), to: Math.max(a, b) },
            screw: { lead },
            ...(nut !== null && { nut: { engagedLength: nut } }),
          } as const;
          const plan = measuringPlan(slide);
          if (!plan.ok) return;
          const gaps = gapsOf(positionsOf(plan.value));
          expect(Math.min(...gaps)).toBeGreaterThan(0);
        },
      ),
      { numRuns: propertyRuns(20) },
    );
  });
});
