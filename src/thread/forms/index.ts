import { failed, type Outcome, succeeded } from "../../inspection/problem.ts";
import type { ThreadForm } from "../form.ts";
import { acme29 } from "./acme29.ts";
import { metric60 } from "./metric60.ts";
import { square } from "./square.ts";
import { stubAcme29 } from "./stubAcme29.ts";
import { trapezoidal30 } from "./trapezoidal30.ts";
import { unified60 } from "./unified60.ts";
import { whitworth55 } from "./whitworth55.ts";

/** Every thread form, those of lead screws first. */
export const FORMS: readonly ThreadForm[] = [
  trapezoidal30,
  acme29,
  stubAcme29,
  square,
  metric60,
  unified60,
  whitworth55,
];

/** The form of a name such as `acme-29`. */
export function formNamed(name: string): Outcome<ThreadForm> {
  const form = FORMS.find((each) => each.name === name);
  return form === undefined
    ? failed(
        "form",
        `"${name}" is no thread form known here`,
        `Known: ${FORMS.map((each) => each.name).join(", ")}.`,
      )
    : succeeded(form);
}
