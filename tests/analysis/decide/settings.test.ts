import { describe, expect, it } from "vitest";
import { settingsOf } from "../../../src/analysis/decide/settings.ts";
import { lengthsIn } from "../../../src/inspection/lengths.ts";
import type { MetricSlide } from "../../../src/inspection/metric.ts";

const BARE: MetricSlide = {
  id: "slide",
  name: "Cross slide",
  units: "mm",
  travel: { from: 10, to: 310 },
  screw: { lead: 4 },
  backlashLimit: 0.15,
};

const FULL: MetricSlide = {
  ...BARE,
  workingRange: { from: 50, to: 200 },
  screw: { lead: 6, starts: 2, nominalDiameter: 20 },
  nut: {
    kind: "closing",
    engagedLength: 32,
    adjustable: false,
    takeUpLeft: 0.3,
    takeUpUsed: 0.1,
    clearanceNew: 0.02,
    wearLimit: 0.7,
  },
  runningClearance: 0.03,
  endFloatAttainable: 0.015,
  holdsLoad: true,
  springOvercome: true,
};

const inMillimetres = (slide: MetricSlide) => settingsOf(slide, lengthsIn("mm"));

describe("settings", () => {
  it("are what the slide says, with nothing assumed, where it says everything", () => {
    expect(inMillimetres(FULL)).toEqual({
      settings: {
        travel: { from: 10, to: 310 },
        workingRange: { from: 50, to: 200 },
        lead: 6,
        pitch: 3,
        limit: 0.15,
        runningClearance: 0.03,
        endFloatAttainable: 0.015,
        engagedLength: 32,
        adjustable: false,
        takeUpLeft: 0.3,
        takeUpUsed: 0.1,
        clearanceNew: 0.02,
        wearLimit: 0.7,
        holdsLoad: true,
        springHides: false,
      },
      assumed: [],
    });
  });

  it("fill in every default, each told as assumed", () => {
    expect(inMillimetres(BARE)).toEqual({
      settings: {
        travel: { from: 10, to: 310 },
        workingRange: { from: 10, to: 310 },
        lead: 4,
        pitch: 4,
        limit: 0.15,
        runningClearance: 0.025,
        endFloatAttainable: 0.01,
        engagedLength: 24,
        adjustable: true,
        takeUpLeft: Number.POSITIVE_INFINITY,
        takeUpUsed: 0,
        clearanceNew: 0,
        wearLimit: 0.5,
        holdsLoad: false,
        springHides: false,
      },
      assumed: [
        "The screw has a single start.",
        "The working range is the whole travel.",
        "A nut is left 0.025 mm of running clearance at the tight spot.",
        "A thrust bearing in order can be set to 0.01 mm of end float.",
        "The nut engages 24 mm of the screw (six leads).",
        "The nut is adjustable.",
        "None of the nut's take-up has been used so far.",
        "The nut had no clearance when it was new.",
        "A nut may wear by 0.5 mm, a quarter of the thread's thickness at the pitch line.",
        "The slide does not hold up a load.",
        "How much the nut can still take up is not known.",
      ],
    });
  });

  it.each([
    ["the starts", { screw: { lead: 4, starts: 1 } }, "The screw has a single start."],
    ["the working range", { workingRange: BARE.travel }, "The working range is the whole travel."],
    [
      "the running clearance",
      { runningClearance: 0.025 },
      "A nut is left 0.025 mm of running clearance at the tight spot.",
    ],
    [
      "the attainable end float",
      { endFloatAttainable: 0.01 },
      "A thrust bearing in order can be set to 0.01 mm of end float.",
    ],
    ["the engaged length", { nut: { engagedLength: 24 } }, "The nut engages 24 mm of the screw (six leads)."],
    ["that the nut is adjustable", { nut: { adjustable: true } }, "The nut is adjustable."],
    [
      "the take-up that is left",
      { nut: { takeUpLeft: 1 } },
      "How much the nut can still take up is not known.",
    ],
    ["the take-up used", { nut: { takeUpUsed: 0 } }, "None of the nut's take-up has been used so far."],
    ["the clearance when new", { nut: { clearanceNew: 0 } }, "The nut had no clearance when it was new."],
    [
      "the wear limit",
      { nut: { wearLimit: 0.5 } },
      "A nut may wear by 0.5 mm, a quarter of the thread's thickness at the pitch line.",
    ],
    ["that it holds no load", { holdsLoad: false }, "The slide does not hold up a load."],
  ])("do not assume what is stated: %s", (_, stated, line) => {
    const usual = inMillimetres(BARE).assumed;
    expect(inMillimetres({ ...BARE, ...stated }).assumed).toEqual(usual.filter((each) => each !== line));
  });

  it("take a nut as one and a half nominal diameters long where the diameter is known", () => {
    const { settings, assumed } = inMillimetres({ ...BARE, screw: { lead: 4, nominalDiameter: 22 } });
    expect(settings.engagedLength).toBe(33);
    expect(assumed).toContain("The nut engages 33 mm of the screw (one and a half nominal diameters).");
  });

  it("take the thread's thickness from the pitch, which is the lead over the starts", () => {
    const { settings, assumed } = inMillimetres({ ...BARE, screw: { lead: 6, starts: 3 } });
    expect(settings.pitch).toBe(2);
    expect(settings.wearLimit).toBe(0.25);
    expect(assumed).toContain(
      "A nut may wear by 0.25 mm, a quarter of the thread's thickness at the pitch line.",
    );
  });

  it("do not ask how much a nut can take up that cannot be adjusted", () => {
    const { settings, assumed } = inMillimetres({ ...BARE, nut: { adjustable: false } });
    expect(settings.takeUpLeft).toBe(Number.POSITIVE_INFINITY);
    expect(assumed).not.toContain("How much the nut can still take up is not known.");
  });

  it.each([
    ["spring-loaded", undefined, true],
    ["spring-loaded", false, true],
    ["spring-loaded", true, false],
    ["one-piece", undefined, false],
  ] as const)(
    "know whether the spring of a nut hides its wear: %s, overcome %s",
    (kind, springOvercome, hides) => {
      const slide = { ...BARE, nut: { kind }, ...(springOvercome === undefined ? {} : { springOvercome }) };
      expect(inMillimetres(slide).settings.springHides).toBe(hides);
    },
  );

  it("tell lengths in the reader's unit", () => {
    const { assumed } = settingsOf(BARE, lengthsIn("in"));
    expect(assumed).toContain("A nut is left 0.001 in of running clearance at the tight spot.");
    expect(assumed).toContain("The nut engages 0.9449 in of the screw (six leads).");
  });
});
