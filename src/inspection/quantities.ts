/** The kind of value of a key; only lengths depend on the unit. */
export type QuantityKind = "length" | "lengths" | "number" | "flag" | "text";

/** A key of a slide or survey. */
export interface Quantity {
  /** The dotted name below `slide` or `survey`: `screw.lead`. */
  readonly key: string;
  /** Its name in a sentence: "The *lead* is 4 mm"; for a flag "*Nut adjustable*: yes". */
  readonly name: string;
  readonly kind: QuantityKind;
}

const quantity = (key: string, name: string, kind: QuantityKind): Quantity => ({ key, name, kind });

/** Every key of a slide that this program knows. */
export const SLIDE_QUANTITIES: readonly Quantity[] = [
  quantity("id", "slide's id", "text"),
  quantity("name", "slide's name", "text"),
  quantity("machine", "machine", "text"),
  quantity("units", "unit", "text"),
  quantity("travel.from", "start of the travel", "length"),
  quantity("travel.to", "end of the travel", "length"),
  quantity("workingRange.from", "start of the working range", "length"),
  quantity("workingRange.to", "end of the working range", "length"),
  quantity("screw.lead", "lead", "length"),
  quantity("screw.starts", "number of starts", "number"),
  quantity("screw.hand", "hand of the screw", "text"),
  quantity("screw.form", "thread form", "text"),
  quantity("screw.nominalDiameter", "nominal diameter", "length"),
  quantity("nut.kind", "kind of nut", "text"),
  quantity("nut.engagedLength", "engaged length of the nut", "length"),
  quantity("nut.adjustable", "nut adjustable", "flag"),
  quantity("nut.takeUpLeft", "take-up left in the nut", "length"),
  quantity("nut.takeUpUsed", "take-up used so far", "length"),
  quantity("nut.clearanceNew", "clearance of the nut when new", "length"),
  quantity("nut.wearLimit", "limit on the nut's wear", "length"),
  quantity("backlashLimit", "limit", "length"),
  quantity("runningClearance", "running clearance", "length"),
  quantity("endFloatAttainable", "attainable end float", "length"),
  quantity("holdsLoad", "slide holding up a load", "flag"),
  quantity("springOvercome", "nut's spring overcome", "flag"),
];

/** Every key of a survey that this program knows, except its readings. */
export const SURVEY_QUANTITIES: readonly Quantity[] = [
  quantity("id", "survey's id", "text"),
  quantity("taken", "date of the survey", "text"),
  quantity("stage", "stage", "text"),
  quantity("method", "method", "text"),
  quantity("note", "note", "text"),
  quantity("hoursOfUse", "hours of use", "number"),
  quantity("indicator.name", "which indicator", "text"),
  quantity("indicator.resolution", "indicator's resolution", "length"),
  quantity("indicator.error", "indicator's limit of error", "length"),
  quantity("indicator.hysteresis", "indicator's hysteresis", "length"),
  quantity("indicator.angleToTravel", "indicator's angle to the travel", "number"),
  quantity("dial.travelPerDivision", "travel for one division of the dial", "length"),
  quantity("dial.divisions", "number of the dial's divisions", "number"),
  quantity("dial.graduatedOnDiameter", "dial graduated on diameter", "flag"),
  quantity("endFloat", "end float", "lengths"),
  quantity("drivePlay", "drive play", "length"),
];
