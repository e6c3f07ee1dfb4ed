import { radians } from "../../geometry/angle.ts";
import { DERIVED } from "../judge.ts";
import type { LessTilt } from "../lessTilt.ts";
import type { PassPoint } from "../passPoints.ts";
import { type RollPlaces, setting } from "../rollPlaces.ts";
import { settableStart, worstOf } from "../settingProblem.ts";
import type { RollSettings } from "../rollSettings.ts";
import type { Say } from "../say.ts";
import { zoneName } from "../zoneWords.ts";
import { endTowards } from "./rollEnds.ts";
import { type Figure, scaled } from "./step.ts";

const length = (label: string, value: number | null): Figure[] =>
  value === null ? [] : [scaled(label, value)];

/** The setting of one moment in every zone: where to start, the band at both ends, tilt and bearings. */
export function settingFigures({ zones, stopMm }: RollSettings, id: PassPoint["id"]): Figure[] {
  return zones.flatMap((zone) => {
    const pass = zone.passes.find((one) => one.id === id);
    const start = settableStart(pass);
    if (!pass || !start) return [];
    const name = zoneName(zone, zones.length);
    const { large, middle, small } = pass;
    if (stopMm === null)
      return [
        ...length(`${name}raise to start with`, start.middleMm),
        ...length(`${name}low`, middle.lowMm),
        ...length(`${name}high`, middle.highMm),
      ];
    return [
      ...length(`${name}start at the large edge`, start.largeMm),
      ...length(`${name}start at half the slant`, start.middleMm),
      ...length(`${name}start at the small edge`, start.smallMm),
      { label: `${name}tilt, small end higher`, value: start.tiltDeg, unit: "°", basis: DERIVED },
      ...length(`${name}bearing beyond the small edge`, start.smallBearingMm),
      ...length(`${name}bearing beyond the large edge`, start.largeBearingMm),
      ...length(`${name}half the slant needs by itself`, middle.bestMm),
      ...length(`${name}large end, low`, large.lowMm),
      ...length(`${name}large end, high`, large.highMm),
      ...length(`${name}small end, low`, small.lowMm),
      ...length(`${name}small end, high`, small.highMm),
    ];
  });
}

/** Everything that stands in the way of one moment's settings in any zone, each at its worst; and what tilt would go. */
export function settingProblems({ zones }: RollSettings, id: PassPoint["id"], say: Say): string[] {
  const passes = zones.flatMap((zone) => zone.passes.filter((pass) => pass.id === id));
  const problems = worstOf(passes.flatMap((pass) => pass.problems));
  const [only, ...others] = passes;
  return only?.lessTilt && others.length === 0 ? [...problems, lessTiltSaid(only.lessTilt, say)] : problems;
}

function lessTiltSaid({ largeMm, tiltDeg, smallBearingMm, largeBearingMm }: LessTilt, say: Say): string {
  const bearings =
    smallBearingMm === null || largeBearingMm === null
      ? ""
      : `, ${setting(smallBearingMm, say)} at the small edge's bearing and ${setting(largeBearingMm, say)} at the large edge's`;
  return `With ${setting(largeMm, say)} at the large edge kept, at most ${say.angle(radians(tiltDeg))} of tilt goes${bearings}: the small end stays open by what is missing.`;
}

const isBelow = ({ smallBearingMm, largeBearingMm }: RollPlaces): boolean =>
  Math.min(smallBearingMm ?? 0, largeBearingMm ?? 0) < 0;

/** The setting in a sentence's own words, where one setting serves all round; else where to find it (`zoneBy`). Null where the roll cannot be set so. */
export function settingWords(
  { zones, stopMm }: RollSettings,
  id: PassPoint["id"],
  { say, zoneBy }: { say: Say; zoneBy: string },
): string | null {
  const [start = null, ...others] = zones.map((zone) =>
    settableStart(zone.passes.find((one) => one.id === id)),
  );
  if ([start, ...others].every((one) => one === null)) return null;
  if (others.length > 0) return `each zone's setting ${zoneBy}`;
  if (!start) return null;
  if (stopMm === null) return setting(start.middleMm, say);
  const { smallBearingMm, largeBearingMm } = start;
  const edges = `${setting(start.largeMm, say)} at the large edge and ${setting(start.smallMm, say)} at the small edge`;
  if (smallBearingMm === null || largeBearingMm === null) return edges;
  // Scales stand at the bearings: what is set comes first, and what it makes of the edges behind it.
  const below = isBelow(start) ? " (minus: below it)" : "";
  const bearings = `${setting(smallBearingMm, say)} at the small edge's bearing (now at the ${endTowards("small", id)}) and ${setting(largeBearingMm, say)} at the large edge's (at the ${endTowards("large", id)})`;
  // The first pass has said how they are counted, and what a minus is where it has one.
  const first = settableStart(zones[0]?.passes.find((one) => one.id === "trial"));
  const newly = isBelow(start) && !(first && isBelow(first)) ? " (minus: below 0)" : "";
  return id === "finished"
    ? `${bearings}${newly}: that is ${edges}`
    : `${bearings}, each from its own 0${below}: that is ${edges}`;
}
