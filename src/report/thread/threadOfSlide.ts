import type { Slide } from "../../inspection/schema.ts";
import { toMillimetres } from "../../inspection/units.ts";
import type { ThreadForm } from "../../thread/form.ts";
import { formNamed } from "../../thread/forms/index.ts";
import type { ThreadSize } from "../../thread/size.ts";

/** The thread of a slide's screw in millimetres; null where the file does not give form, diameter and lead of one. */
export function threadOfSlide({
  screw,
  units,
}: Pick<Slide, "screw" | "units">): { readonly form: ThreadForm; readonly size: ThreadSize } | null {
  const { form: name, nominalDiameter, lead, starts = 1, hand = "right" } = screw;
  if (name === undefined || nominalDiameter === undefined) return null;
  const form = formNamed(name);
  if (!form.ok) return null;
  return {
    form: form.value,
    size: {
      diameter: toMillimetres(nominalDiameter, units),
      pitch: toMillimetres(lead, units) / starts,
      starts,
      hand,
    },
  };
}
