import fc from "fast-check";

/** The long check sets it: how many times as many cases as usual a property test tries. */
const TIMES = Number(process.env.PROPERTY_RUNS_TIMES ?? 1);

/** @param usual how many cases are tried in `npm test` */
export const propertyRuns = (usual: number): number => usual * TIMES;

fc.configureGlobal({ numRuns: propertyRuns(100) });
