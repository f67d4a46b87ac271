import { threadLengths } from "../../../picture/thread/threadLengths.ts";
import { threadPicture } from "../../../picture/thread/threadPicture.ts";
import { threadSvg } from "../../../picture/thread/threadSvg.ts";
import { type Replacement, replacementOf } from "../../../thread/replacement.ts";
import { usualWork } from "../../../thread/usualWork.ts";
import { facts, figure, lines } from "../../document/pieces.ts";
import { threadOfSlide } from "../../thread/threadOfSlide.ts";
import { fitFacts, partFacts, tapFacts } from "../../thread/threadSections.ts";
import { threadTitle } from "../../thread/threadWords.ts";
import type { Reported, SectionMaker } from "../reported.ts";

/** The thread that new parts are cut to, where the verdict asks for them and the slide's file names the thread. */
export const replacementThread: SectionMaker = (reported) => {
  const { verdict } = reported.assessment;
  if (verdict !== "remake-screw" && verdict !== "replace-nuts") return null;
  const thread = threadOf(reported);
  return thread === null ? null : sectionFor(thread, reported, verdict);
};

/** Null where the file does not name a thread that can be made. */
function threadOf({ slide, assessment }: Reported): Replacement | null {
  const named = threadOfSlide(slide);
  if (named === null) return null;
  const clearance = assessment.settings.runningClearance;
  const thread = replacementOf({
    ...named,
    clearance: { from: clearance, to: 2 * clearance },
    ...usualWork(slide.units),
  });
  return thread.ok ? thread.value : null;
}

const SLIP =
  'The command "tightspot thread" with this slide\'s file gives tools, passes and a slip for the lathe.';

function sectionFor(thread: Replacement, { slide }: Reported, verdict: "remake-screw" | "replace-nuts") {
  const { units } = slide;
  const lengths = threadLengths(units);
  const title = threadTitle(thread.form, thread.size, thread.designation, units);
  const named = (part: string, rows: ReturnType<typeof partFacts>) =>
    rows.map(([name, words]) => [`${part}: ${name.toLowerCase()}`, words] as const);
  const nut = named("Nut", partFacts(thread, "nut", lengths));
  if (verdict === "replace-nuts")
    return {
      title: "The new nuts",
      as: "whole" as const,
      content: [
        facts([["Thread", title], ...nut, ...named("Tap", tapFacts(thread, lengths))]),
        lines([
          `Fit them to the screw as it is: measure its thread at the tight spot${thread.wires === null ? "" : `, over wires of ${lengths.lostMotion(thread.wires.chosen)}`}, and cut the nuts to run there with the clearance wanted.`,
          SLIP,
        ]),
      ],
    };
  return {
    title: "The replacement thread",
    as: "whole" as const,
    content: [
      figure(threadSvg(threadPicture(thread, units), undefined, false)),
      facts([
        ["Thread", title],
        ...fitFacts(thread, lengths),
        ...named("Screw", partFacts(thread, "screw", lengths)),
        ...nut,
      ]),
      lines([
        ...thread.notes,
        "Measure the old parts before you cut: what the file says of them may be wrong.",
        SLIP,
      ]),
    ],
  };
}
