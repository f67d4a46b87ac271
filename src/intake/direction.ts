import { meaningOf } from "./vocabulary.ts";

export type Direction = "advancing" | "retracting";

const SIGNS: Readonly<Record<string, Direction>> = {
  "+": "advancing",
  "+1": "advancing",
  "↑": "advancing",
  "→": "advancing",
  a: "advancing",
  f: "advancing",
  "-": "retracting",
  "-1": "retracting",
  "↓": "retracting",
  "←": "retracting",
  r: "retracting",
  b: "retracting",
};

/** The direction that a word or a sign stands for: `advancing`, `fwd`, `+`, `from left`. */
export function directionRead(cell: string): Direction | undefined {
  const word = cell.trim().toLowerCase().replaceAll("−", "-");
  const role = meaningOf(word.replace(/[^\p{L}]+/gu, " ").trim())?.role;
  return SIGNS[word] ?? (role === "advancing" || role === "retracting" ? role : undefined);
}
