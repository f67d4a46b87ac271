import type { TemplateResult } from "lit";

/** Help on one topic: words, and a small drawing where one helps. */
export interface HelpPart {
  readonly drawing?: unknown;
  readonly words: TemplateResult;
}
