import type { PassPoint } from "../passPoints.ts";
import { alikeZones, listedZones } from "../zoneWords.ts";
import { isPipe } from "../skin.ts";
import { ROLL_ENDS } from "./rollEnds.ts";
import type { RollSheetAsked } from "./asked.ts";
import { type RollPlaces, settable } from "../rollPlaces.ts";
import type { Say } from "../say.ts";
import type { NoteBox } from "./step.ts";
import type { RollSettings } from "../rollSettings.ts";
import { settableStart } from "../settingProblem.ts";
import type { TriedZone } from "../tried.ts";

/**
 * Where one moment's raise is written down beside the one that was planned, zone by zone: at the bearings, where the scales
 * are; at both edges where the shop gives no bearings. Nothing is planned where trials name nothing that is safe.
 *
 * @param carried does what the first pass taught come on top of what is planned?
 */
export function settingBoxes(
  { item, settings, tried, say }: RollSheetAsked,
  id: PassPoint["id"],
  carried = false,
): NoteBox[] {
  /** A raise, with what the plan has for it where the roll's geometry is known. [mm] */
  const box = (label: string, planned: number | null | undefined): NoteBox => ({
    label: `${label}, set`,
    unit: "mm",
    ...(planned == null ? {} : { planned: settable(planned, say.units), ...(carried && { carried }) }),
  });
  /** For what came of the sums before it, which have room for their parts. */
  const told = ({ label, unit, planned }: NoteBox): NoteBox => ({
    label,
    unit,
    ...(planned !== undefined && { planned }),
  });
  // What each zone taught comes on top: those that are planned alike may then be set otherwise.
  const zones = carried ? eachZone(settings?.zones ?? []) : alikeZones(settings?.zones ?? []);
  const passes = zones.map(({ zone }) => zone.passes.find((pass) => pass.id === id));
  // A number beside the line to write on is one to set.
  const starts = passes.map(settableStart);
  /** The raises of one zone, or of all round. */
  const boxes = (name: string, start: RollPlaces | null | undefined, atBearings: boolean): NoteBox[] => {
    const head = name === "" ? "" : `${name}, `;
    if (!atBearings) {
      const edge = (end: string) => (name === "" ? `raise, ${end} edge` : `${head}${end}`);
      return [box(edge("large"), start?.largeMm), box(edge("small"), start?.smallMm)];
    }
    const raises = { small: start?.smallBearingMm, large: start?.largeBearingMm };
    return [
      ...ROLL_ENDS.map(({ name: end, edge }, i): NoteBox => {
        const side = edge[id === "finished" ? "second" : "first"];
        return { ...box(i === 0 ? `${head}${end}` : end, raises[side]), onto: "reading at 0" };
      }),
      // Corrections are told for the large edge; what both bearings came to stands there.
      told(box(name === "" ? "raise, large edge" : "large edge", start?.largeMm)),
    ];
  };
  const withBearings = passes.every(
    (pass) => pass?.start?.smallBearingMm != null && pass.start.largeBearingMm !== null,
  );
  if (zones.length > 1) {
    const all =
      tried?.zones.length && !carried ? byTrials(settings?.zones ?? [], tried.zones, { id, say }) : null;
    const planned = zones.map(({ name }, i) => ({
      name,
      start: tried?.look || (carried && tried?.zones[i]?.look) ? null : starts[i],
    }));
    return (all ?? planned).flatMap(({ name, start }) =>
      isPipe(item) ? [box(name, start?.largeMm)] : boxes(name, start, withBearings),
    );
  }
  const byTrial = id === "trial" ? tried?.set : id === "finished" ? tried?.second : null;
  const start = byTrial ?? (tried?.look ? null : starts[0]);
  if (isPipe(item)) return [box("raise", start?.largeMm)];
  return boxes("", start, withBearings && starts.length > 0);
}

const eachZone = (zones: RollSettings["zones"]) =>
  zones.map((zone, i) => ({ zone, name: listedZones([i + 1]) }));

interface Named {
  readonly name: string;
  readonly start: RollPlaces | null | undefined;
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
    const plan =
      id === "trial" || tried[i]?.look ? null : settableStart(passes.find((pass) => pass.id === id));
    const start = own ?? plan;
    const same = groups.find(({ start: other }) => alike(other, start, say));
    if (same) same.numbers.push(i + 1);
    else groups.push({ numbers: [i + 1], start });
  });
  return groups.map(({ numbers, start }) => ({ name: listedZones(numbers), start }));
}

const alike = (one: Named["start"], other: Named["start"], { units }: Say): boolean =>
  settable(one?.largeMm ?? 0, units) === settable(other?.largeMm ?? 0, units) &&
  settable(one?.smallMm ?? 0, units) === settable(other?.smallMm ?? 0, units);
