import { parseArgs } from "node:util";
import { HELD_OUT } from "../simulator/kinds/held-out/index.ts";
import { KINDS } from "../simulator/kinds/index.ts";
import { checks } from "./checks.ts";
import { compare } from "./compare.ts";
import { csv } from "./csv.ts";
import { fleet } from "./fleet.ts";
import { further } from "./further.ts";
import { kinds } from "./kinds.ts";
import { speed } from "./speed.ts";
import { verdicts } from "./verdicts.ts";

/**
 * How the analysis fares on simulated slides whose truth is known, and how fast it is.
 *
 *   npm run bench -- [--cases 500] [--full] [--seed 1] [--only verdicts|kinds|checks|further|compare|speed|csv|fleet]
 *
 * `--held-out` has the kinds of wear judged that the model was not developed against, instead of the others.
 */
const { values } = parseArgs({
  options: {
    cases: { type: "string" },
    full: { type: "boolean", default: false },
    seed: { type: "string", default: "1" },
    only: { type: "string" },
    "held-out": { type: "boolean", default: false },
  },
});
const cases = values.full ? 5000 : Number(values.cases ?? 500);
/** As many of each kind of wear. */
const casesOfKind = values.full ? 500 : Number(values.cases ?? 60);
const base = Number(values.seed) * 1_000_003;

const parts = {
  verdicts: () => verdicts(cases, base),
  kinds: () => kinds(casesOfKind, base + 71, values["held-out"] ? HELD_OUT : KINDS),
  checks: () => checks(Math.ceil(cases / 2), base + 17),
  further: () => further(Math.ceil(cases / 5), base + 31),
  compare: () => compare(Math.ceil(cases / 2), base + 43),
  speed,
  csv,
  fleet: () => fleet(cases, base + 59),
};
for (const [name, part] of Object.entries(parts)) {
  if (values.only !== undefined && values.only !== name) continue;
  console.log(`\n${name}`);
  part();
}
