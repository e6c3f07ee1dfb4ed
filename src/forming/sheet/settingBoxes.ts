import type { PassPoint } from "../passPoints.ts";
import { alikeZones } from "../zoneWords.ts";
import { isPipe } from "../skin.ts";
import { ROLL_ENDS } from "./rollEnds.ts";
import type { RollSheetAsked } from "./asked.ts";
import { settable } from "../rollPlaces.ts";
import type { Say } from "../say.ts";
import type { NoteBox } from "./step.ts";
import type { RollSettings } from "../rollSettings.ts";
import type { TriedZone } from "../tried.ts";
import { listedZones } from "../zoneAdvice.ts";

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
  const own = id === "trial" ? tried?.set : id === "finished" ? tried?.second : null;
  const [start] = own ? [own] : starts;
  if (isPipe(item)) return [box("raise", start?.largeMm)];
  if (zones.length > 1) {
    const all = tried?.zones.length ? byTrials(settings?.zones ?? [], tried.zones, { id, say }) : null;
    return (all ?? zones.map(({ name }, i) => ({ name, start: starts[i] }))).flatMap(
      ({ name, start: at }) => [box(`${name}, large`, at?.largeMm), box(`${name}, small`, at?.smallMm)],
    );
  }
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

interface Named {
  readonly name: string;
  readonly start: { readonly largeMm: number; readonly smallMm: number } | null | undefined;
}

/** Zone by zone as trials have it, else as planned; zones that are set alike stand together. */
function byTrials(
  zones: RollSettings["zones"],
  tried: readonly TriedZone[],
  { id, say }: { id: PassPoint["id"]; say: Say },
): Named[] | null {
  if (id !== "trial" && id !== "finished") return null;
  const groups: { numbers: number[]; start: Named["start"] }[] = [];
  zones.forEach(({ passes }, i) => {
    const own = id === "trial" ? tried[i]?.set : tried[i]?.second;
    // Where something is to be looked at first there is no number to set.
    const start = own ?? (id === "trial" ? null : passes.find((pass) => pass.id === id)?.start);
    const same = groups.find(({ start: other }) => alike(other, start, say));
    if (same) same.numbers.push(i + 1);
    else groups.push({ numbers: [i + 1], start });
  });
  return groups.map(({ numbers, start }) => ({ name: listedZones(numbers), start }));
}

const alike = (one: Named["start"], other: Named["start"], { units }: Say): boolean =>
  settable(one?.largeMm ?? 0, units) === settable(other?.largeMm ?? 0, units) &&
  settable(one?.smallMm ?? 0, units) === settable(other?.smallMm ?? 0, units);
