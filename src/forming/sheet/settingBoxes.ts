import type { PassPoint } from "../passPoints.ts";
import { alikeZones } from "../zoneWords.ts";
import { isPipe } from "../skin.ts";
import { ROLL_ENDS } from "./rollEnds.ts";
import type { RollSheetAsked } from "./asked.ts";
import { settable } from "../rollPlaces.ts";
import type { NoteBox } from "./step.ts";

/** Where one moment's raise is written down beside the one that was planned: at both edges, in every zone; at the bearings where one setting serves all round. */
export function settingBoxes({ item, settings, tried, say }: RollSheetAsked, id: PassPoint["id"]): NoteBox[] {
  /** A raise, with what the plan has for it where the roll's geometry is known. [mm] */
  const box = (label: string, planned: number | null | undefined): NoteBox => ({
    label: `${label}, set`,
    unit: "mm",
    ...(planned == null ? {} : { planned: settable(planned, say.units) }),
  });
  const zones = alikeZones(settings?.zones ?? []);
  const starts = zones.map(({ zone }) => zone.passes.find((pass) => pass.id === id)?.start);
  // Trials are of parts that one setting serves all round.
  const own = id === "trial" ? tried?.set : id === "finished" ? tried?.second : null;
  const [start] = own ? [own] : starts;
  if (isPipe(item)) return [box("raise", start?.largeMm)];
  if (zones.length > 1)
    return zones.flatMap(({ name }, i) => [
      box(`${name}, large`, starts[i]?.largeMm),
      box(`${name}, small`, starts[i]?.smallMm),
    ]);
  if (start?.smallBearingMm == null || start.largeBearingMm === null)
    return [box("raise, large edge", start?.largeMm), box("raise, small edge", start?.smallMm)];
  const raises = { small: start.smallBearingMm, large: start.largeBearingMm };
  return [
    ...ROLL_ENDS.map(({ name, edge }): NoteBox => {
      const side = edge[id === "finished" ? "second" : "first"];
      return { ...box(name, raises[side]), onto: "reading at 0" };
    }),
    // Corrections are told for the large edge.
    box("raise, large edge", start.largeMm),
  ];
}
