import type { ZoneByHand } from "../../src/forming/zoneByHand.ts";

/** The line of the table that an inside radius falls into, and what it says, as it is printed: down to a tenth. */
export function raiseBy({ ranges }: ZoneByHand, insideMm: number): number {
  const row = ranges.find(
    ({ openMm, tightMm }) => insideMm <= (openMm ?? Infinity) && insideMm >= (tightMm ?? 0),
  )!;
  return Math.floor(row.moreMm * 10) / 10;
}
