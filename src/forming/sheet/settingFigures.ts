import { DERIVED } from "../judge.ts";
import type { PassPoint } from "../passPoints.ts";
import type { RollSettings } from "../rollSettings.ts";
import type { Say } from "../say.ts";
import { zoneName } from "../zones.ts";
import type { Figure } from "./step.ts";

const length = (label: string, value: number | null): Figure[] =>
  value === null ? [] : [{ label, value, unit: "mm", basis: DERIVED }];

/** The setting of one moment in every zone: where to start, the band at both ends, tilt and bearings. */
export function settingFigures({ zones, stopMm }: RollSettings, id: PassPoint["id"]): Figure[] {
  return zones.flatMap((zone) => {
    const pass = zone.passes.find((one) => one.id === id);
    if (!pass?.start) return [];
    const name = zoneName(zone, zones.length);
    const { start, large, middle, small } = pass;
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

/** Everything that stands in the way of one moment's settings, zone by zone, each said once. */
export function settingProblems({ zones }: RollSettings, id: PassPoint["id"]): string[] {
  const all = zones.flatMap((zone) =>
    zone.passes.filter((pass) => pass.id === id).flatMap((p) => p.problems),
  );
  return [...new Set(all)];
}

/** The setting in a sentence's own words, where one setting serves all round; else where to find it. */
export function settingWords({ zones, stopMm }: RollSettings, id: PassPoint["id"], say: Say): string | null {
  const [zone] = zones;
  const start = zone?.passes.find((one) => one.id === id)?.start;
  if (!zone || !start) return null;
  if (zones.length > 1) return "the zone's own setting in the table";
  if (stopMm === null) return say.length(start.middleMm);
  return `${say.length(start.largeMm)} at the large edge and ${say.length(start.smallMm)} at the small edge (${say.length(start.middleMm)} at half the slant)`;
}

/** The same in as few words as stand on the sheet by the machine. */
export function settingBrief(settings: RollSettings, id: PassPoint["id"], say: Say): string | null {
  const starts = settings.zones.map((zone) => zone.passes.find((one) => one.id === id)?.start);
  if (settings.stopMm === null || starts.some((start) => !start)) return null;
  const edges = starts.map(
    (start) => `${say.length(start?.largeMm ?? 0)} large edge, ${say.length(start?.smallMm ?? 0)} small edge`,
  );
  return edges.length === 1
    ? (edges[0] ?? null)
    : edges.map((words, i) => `zone ${i + 1}: ${words}`).join("; ");
}
