import type { RollGeometry, RollMoment, RollSections } from "../../drawing/forming/rollSection.ts";
import { sectionNote } from "../../drawing/forming/rollSection.ts";
import type { Shop } from "../../forming/machine.ts";
import { insideRadiusAtMm, sectionOf } from "../../forming/rollSetting.ts";
import type { Report } from "../../report/report.ts";
import { numbersIn } from "../words/numbers.ts";
import { rollOf } from "./rollOf.ts";

type Plan = Report["forming"]["plans"][number];
type Zone = NonNullable<Plan["settings"]>["zones"][number];
type Pass = Zone["passes"][number];

/** The moments that are drawn are those that the work sheet gives settings for. */
const PASSES = [
  { id: "trial", name: "first trial" },
  { id: "finished", name: "second pass" },
] as const;
const ENDS = [
  { id: "large", name: "Large end" },
  { id: "small", name: "Small end" },
] as const;

const radiusOf = (diameter: number | undefined): number | null =>
  diameter === undefined ? null : diameter / 2;

/** More zones than these are told by the ends of their range. */
const MOST_DRAWN = 2;

/** Both zones of two; of more the one that is bent most and the one that is bent least: the others lie between. */
function drawnZones(zones: readonly Zone[]): readonly Zone[] {
  if (zones.length <= MOST_DRAWN) return zones;
  const tight = zones.toSorted((a, b) => a.largeRadiusMm - b.largeRadiusMm);
  return [tight[0], tight.at(-1)].filter((zone) => zone !== undefined);
}

/** Sections of the machine with the part in it, a set a zone; none where the plan has no settings to draw. */
export function sectionsOf(report: Report, plan: Plan, shop: Shop): readonly RollSections[] {
  const zones = drawnZones(plan.settings?.zones ?? []);
  return zones.flatMap((zone) => sectionsIn(zone, report, plan, shop) ?? []);
}

function sectionsIn(zone: Zone, report: Report, plan: Plan, shop: Shop): RollSections | undefined {
  const { part } = report;
  const { settings } = plan;
  const roll = rollOf(plan, shop);
  const section = roll && sectionOf(roll);
  if (!roll || !section || !settings) return undefined;
  const thicknessMm = part.thickness;
  const inside = (middleMm: number) => middleMm - thicknessMm / 2;
  const by = (id: string) => zone.passes.find((pass) => pass.id === id);

  const moment = (pass: Pass, name: string, end: (typeof ENDS)[number]): RollMoment[] => {
    const { lowMm, bestMm, highMm, freeMm } = pass[end.id];
    if (lowMm === null || bestMm === null || highMm === null) return [];
    const before = pass.id === "finished" ? by("aim")?.[end.id].freeMm : undefined;
    const start = { large: pass.start?.largeMm, small: pass.start?.smallMm }[end.id];
    return [
      {
        title: `${end.name}, ${name}`,
        flatUpMm: settings.flat.upMm,
        incomingMm: before === undefined ? null : inside(before),
        touchingMm: insideRadiusAtMm(section, { raiseMm: bestMm, thicknessMm }),
        wantedMm: inside(freeMm),
        lowMm,
        bestMm,
        highMm,
        startMm: start ?? null,
      },
    ];
  };
  const moments = PASSES.flatMap(({ id, name }) => {
    const pass = by(id);
    return pass ? ENDS.flatMap((end) => moment(pass, name, end)) : [];
  });
  if (moments.length === 0) return undefined;
  const say = numbersIn(part.units);
  const geometry: RollGeometry = { ...section, pinchRadiusMm: radiusOf(roll.rolls.pinchDiameter) };
  const seenFrom = roll.dropEnd === undefined ? null : roll.dropEnd === "right" ? "drop end" : "fixed end";
  const angles = `${Math.round(zone.fromDeg)}° to ${Math.round(zone.toDeg)}°`;
  const where = settings.zones.length > 1 ? `, zone from ${angles}` : "";
  return {
    title: `${part.title} on ${roll.name}: the rolls in section${where}`,
    description: moments
      .map(
        ({ title, lowMm, bestMm, highMm, wantedMm }) =>
          `${title}: raise ${say.length(bestMm)}, between ${say.length(lowMm)} and ${say.length(highMm)}, to spring back to an inside radius of ${say.length(wantedMm)}.`,
      )
      .join(" "),
    lines: [`${part.title} on ${roll.name}${where}`, sectionNote({ units: part.units, seenFrom })],
    units: part.units,
    seenFrom,
    roll: geometry,
    thicknessMm,
    moments,
  };
}
