import type { RollSettings } from "../rollSettings.ts";
import { type SeamOrder, seamOrder, zoneOrder } from "../seamOrder.ts";
import type { RollSheetAsked } from "./asked.ts";
import { stepNamed } from "./step.ts";

type Settings = Pick<RollSettings, "zones"> | null;

/** Does every change of zone move one bearing up and the other down? Null where the shop gives no bearings. */
function opposite({ zones }: NonNullable<Settings>): boolean | null {
  const starts = zones.map(({ passes }) => passes.find(({ id }) => id === "trial")?.start);
  let all = true;
  for (const [i, start] of starts.entries()) {
    if (start?.smallBearingMm == null || start.largeBearingMm === null) return null;
    const before = starts[i - 1];
    if (before?.smallBearingMm == null || before.largeBearingMm === null) continue;
    all &&=
      (start.smallBearingMm - before.smallBearingMm) * (start.largeBearingMm - before.largeBearingMm) < 0;
  }
  return all;
}

/** How both bearings come from one zone's setting to the next: the plate runs all the while, and stands at none. */
function moving(settings: NonNullable<Settings>, tried: boolean): string {
  // By trials the boxes have other numbers than the plan: each bearing goes to its own.
  const ways = tried ? false : opposite(settings);
  if (ways === null) return "";
  return ways
    ? ", both bearings by turns a little at a time, one up, the other down"
    : ", both bearings by turns a little at a time, each to its number";
}

/**
 * Where and how a roll set by zones is changed in the first pass: the plate takes its bend at the pinch. What goes down
 * is down by the mark, so that no zone begins at its neighbour's higher setting, which may be past its own cap.
 */
export function zonesOn(asked: RollSheetAsked): string {
  const { settings, tried } = asked;
  if (!settings || settings.zones.length < 2) return "";
  const from = comeFrom(zoneOrder(seamOrder(asked), settings.zones.length, "first"));
  return `${from}as each mark passes the pinch, change to its boxes, plate running${moving(settings, tried !== undefined)}: down just before the mark, up just after. `;
}

/** In the second pass the zones come in the other order. */
export function zonesBack(settings: Settings, order: SeamOrder): string {
  const zones = settings?.zones.length ?? 0;
  if (zones < 2) return "";
  const from = zoneOrder(order, zones, "second");
  return ` Zones come ${from === "" ? "in the other order" : `from ${from}`} now, changed as in ${stepNamed("first-through")}.`;
}

const comeFrom = (order: string): string =>
  order === "" ? "Zones, in the order of their marks: " : `Zones come from ${order}: `;
