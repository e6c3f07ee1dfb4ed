import { MM_PER_INCH } from "../../geometry/units.ts";
import { settable, setting } from "../rollPlaces.ts";
import { isPipe } from "../skin.ts";
import type { ZoneByHand } from "../zoneByHand.ts";
import { zonesOf } from "../zones.ts";
import type { RollSheetAsked } from "./asked.ts";
import { down } from "./modelTable.ts";
import { sharesOf, templateRadius } from "./touch.ts";

/** Round numbers, that nobody takes for those of a table. [mm] */
const ROUND = { mm: 10, in: MM_PER_INCH / 2 } as const;

/** Half way between two radii, as a round number where one lies between. [mm] */
function between(openMm: number, tightMm: number, unitMm: number): number {
  const middle = (openMm + tightMm) / 2;
  const round = unitMm * Math.round(middle / unitMm);
  return round < openMm && round > tightMm ? round : middle;
}

/**
 * Zones that come out apart, with this part's own tables: the first one open, the last one tighter than its window, one
 * between them right.
 *
 * @returns empty where one setting serves all round, or a table has no such ranges
 */
export function apartExample(asked: RollSheetAsked, tables: readonly ZoneByHand[]): string {
  const { item, roll, say } = asked;
  const zones = zonesOf(item);
  const last = zones.length;
  const unit = ROUND[say.units];
  const rangesOf = (zone: number) => tables.find((one) => one.zones.includes(zone))?.ranges ?? [];
  const raise = rangesOf(1).findLast(({ moreMm }) => moreMm > 0);
  // The last but one is the window: a range of more open ones may have no room left for a raise either.
  const [right, tight] = [rangesOf(2), rangesOf(last)].map((all) => all.at(-2));
  const end = zones[last - 1];
  if (last < 2 || !end || raise?.tightMm == null || right?.openMm == null || right.tightMm === null)
    return "";
  if (tight?.tightMm == null || down(raise.moreMm) <= 0) return "";
  const neverMm = templateRadius(item, end.largeRadiusMm, sharesOf(item).cap);
  const told = (mm: number) => `R ${say.tape(settable(mm, say.units))}`;
  const came = [
    { zone: 1, mm: between(raise.openMm ?? 1.1 * raise.tightMm, raise.tightMm, unit) },
    ...(last > 2 ? [{ zone: 2, mm: between(right.openMm, right.tightMm, unit) }] : []),
    { zone: last, mm: between(tight.tightMm, neverMm, unit) },
  ];
  const list = came.map(({ zone, mm }) => `zone ${zone} ${told(mm)}`).join(", ");
  const stay = `zone ${last} tighter than its window, but not past its “never tighter” (${told(neverMm)})`;
  return `Zones that come out apart, an example, not yours: ${list}${isPipe(item) ? "" : " at the large end"}. Zone 1 is open: ${setting(down(raise.moreMm), say)} more ${isPipe(item) ? "than its last raise" : roll?.bearings === undefined ? "at both ends than its last setting" : "onto both its last scale readings"}. ${last > 2 ? `Zone 2 is right, and ${stay}: both` : `Z${stay.slice(1)}: it`} ${last > 2 ? "run at their" : "runs at its"} last setting. Were zone ${last} past that, the whole blank would be set aside, though zone 1 is open.`;
}
