import type { EventKind } from "../inspection/schema.ts";

/** What may have happened to a slide, in words. */
export const EVENT_KINDS: readonly (readonly [EventKind, string])[] = [
  ["adjusted", "Adjusted"],
  ["parts-replaced", "Parts replaced"],
  ["other", "Other"],
];

export function kindWords(kind: EventKind): string {
  return EVENT_KINDS.find(([value]) => value === kind)?.[1] ?? kind;
}
