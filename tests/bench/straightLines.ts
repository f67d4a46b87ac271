import { extremes, gridOf, type ProfileData, type ProfileDraws } from "../../src/analysis/profile/draws.ts";

/** Straight lines through the stations' means as the only profile: enough for checks that do not look at it. */
export function straightLines(data: ProfileData): ProfileDraws {
  const { stations, workingRange } = data;
  const positions = gridOf(data);
  const backlash = positions.map((at) => {
    const after = stations.findIndex(({ position }) => position >= at);
    if (after <= 0) return stations[after === 0 ? 0 : stations.length - 1].mean;
    const [a, b] = [stations[after - 1], stations[after]];
    return a.mean + ((at - a.position) / (b.position - a.position)) * (b.mean - a.mean);
  });
  const draw = {
    backlash,
    ...extremes(positions, backlash, workingRange),
    repeatability: 0.004,
    stationEffect: 0,
  };
  return { positions, draws: [draw, draw], unevenChance: 1 };
}
