import type { RollAsked } from "./asked.ts";
import { flatContact, sectionOf } from "./rollSetting.ts";
import { seamOrder } from "./seamOrder.ts";
import { alongZoneMm, zonesOf } from "./zones.ts";

/**
 * How much of each zone has its whole bend after the first pass, along an edge of this length all round: in the zone that
 * is rolled first the lead stays straight as far as the bending roll stands from the pinch, and the raise may go on for as
 * far again along the large edge. Of several blanks each has such a lead, in whatever zone it begins.
 *
 * @returns zone by zone; below 0 where nothing of it has [mm]
 * @see derived here
 */
export function bentAlongMm({ item, roll }: Pick<RollAsked, "item" | "roll">, rimMm: number): number[] {
  const zones = zonesOf(item);
  const section = sectionOf(roll);
  const armMm = section ? Math.max(0, flatContact(section, item.thicknessMm).acrossMm) : 0;
  const lostMm = armMm * (1 + rimMm / item.rimsMm.large);
  const { leads } = seamOrder({ item, roll });
  return zones.map((zone, i) => {
    const isFirst =
      item.pieces > 1 ||
      (leads === null ? i === 0 || i === zones.length - 1 : i === (leads === 1 ? 0 : zones.length - 1));
    return alongZoneMm(zone, rimMm) - (isFirst ? lostMm : 0);
  });
}
