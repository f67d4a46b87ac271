import type { ReactiveController, ReactiveControllerHost } from "lit";
import type { PlannableSlide } from "../../inspection/plannableSlide.ts";
import type { Plan } from "../../intake/plan/measuringPlan.ts";
import { logSheet } from "../../report/plan/logSheet.ts";
import type { LostMotionMethod } from "../../report/plan/method.ts";

/** The address under which the browser opens the log sheet of a plan. It lasts as long as the part that shows it. */
export class SheetAddress implements ReactiveController {
  #text = "";
  #address = "";

  constructor(host: ReactiveControllerHost) {
    host.addController(this);
  }

  of(slide: PlannableSlide, plan: Plan, method: LostMotionMethod): string {
    const text = logSheet(slide, plan, method);
    if (text !== this.#text) {
      URL.revokeObjectURL(this.#address);
      this.#text = text;
      this.#address = URL.createObjectURL(new Blob([text], { type: "text/html" }));
    }
    return this.#address;
  }

  hostDisconnected(): void {
    URL.revokeObjectURL(this.#address);
    this.#text = "";
  }
}
