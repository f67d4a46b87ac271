import { inOneLine } from "../../../inspection/problem.ts";
import { toMillimetres } from "../../../inspection/units.ts";
import { threadLengths } from "../../../picture/thread/threadLengths.ts";
import { placesMeasured } from "../../../thread/measure/placesMeasured.ts";
import { threadWear } from "../../../thread/measure/wear.ts";
import { lines, table } from "../../document/pieces.ts";
import { besideVerdict } from "../../thread/besideVerdict.ts";
import { threadOfSlide } from "../../thread/threadOfSlide.ts";
import type { SectionMaker } from "../reported.ts";

/** The screw's thread as it was measured along the travel, and how that stands to the verdict. */
export const threadMeasured: SectionMaker = ({ slide, survey, assessment }) => {
  const { thread: measured = [] } = survey;
  if (measured.length === 0) return null;
  const title = "The thread as measured";
  const thread = threadOfSlide(slide);
  if (thread === null)
    return {
      title,
      content: lines([
        "Say the screw's form and nominal diameter in the slide's file, and what was measured on its thread is worked out.",
      ]),
    };
  const { units } = slide;
  const metric = (length: number | undefined) =>
    length === undefined ? undefined : toMillimetres(length, units);
  const places = placesMeasured(
    thread.form,
    thread.size,
    measured.map(({ position, thickness, overWires, wire }) => ({
      position: toMillimetres(position, units),
      thickness: metric(thickness),
      overWires: metric(overWires),
      wire: metric(wire),
    })),
  );
  if (!places.ok) return { title, content: lines([`Not worked out: ${inOneLine(places.problem)}`]) };
  const wear = threadWear(thread.size.pitch, places.value);
  const lengths = threadLengths(units);
  return {
    title,
    as: "whole",
    content: [
      table(
        [
          { name: `Position, ${units}`, holds: "figures" },
          { name: `Thickness, ${units}`, holds: "figures" },
          { name: `Worn, both flanks, ${units}`, holds: "figures" },
          { name: "Left, in 100", holds: "figures" },
        ],
        wear.places.map(({ position, thickness, worn, shareLeft }) => ({
          cells: [
            lengths.position(position).replace(` ${units}`, ""),
            lengths.figure(thickness),
            lengths.figure(worn),
            String(Math.round(shareLeft * 100)),
          ],
        })),
      ),
      lines([
        besideVerdict(assessment, wear, lengths).words,
        `Worn is told against the thickest place, at ${lengths.position(wear.reference.position)}: wear that is everywhere stays hidden unless that place never ran.`,
      ]),
    ],
  };
};
