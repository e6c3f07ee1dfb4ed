import { plain } from "../../../drawing/format.ts";
import type { FormingCase } from "../../../forming/case.ts";
import type { PlateRoll } from "../../../forming/machine.ts";
import type { PlaceSetting } from "../../../forming/passSettings.ts";
import { bendOnRolls, type RollSection, sectionOf } from "../../../forming/rollSetting.ts";
import type { RollSettings } from "../../../forming/rollSettings.ts";
import { settableStart, worstOf } from "../../../forming/settingProblem.ts";
import { type Elastic, loadedRadiusMm, plateOf } from "../../../forming/springback.ts";
import { degrees as inDegrees } from "../../../geometry/angle.ts";
import { MM_PER_INCH, type Units } from "../../../geometry/units.ts";
import { closely } from "../girth.ts";
import { degrees, numbersIn, type Numbers } from "../numbers.ts";
import type { Worked } from "../worked.ts";
import { type TableAnswers, withUnitOf } from "./answers.ts";
import { figures, underLoad } from "./underLoad.ts";
import { momentWorked, zoneWorked } from "./moments.ts";
import { SETTING_GROUPS, type SettingGroup } from "./settingGroups.ts";

/** What the settings of a bending roll were worked out from. */
export interface SetBy {
  readonly settings: RollSettings;
  readonly item: FormingCase;
  readonly roll: PlateRoll;
  readonly units: Units;
}

type Zone = RollSettings["zones"][number];
type Pass = Zone["passes"][number];

interface Asked extends Omit<SetBy, "units"> {
  readonly zone: Zone;
  readonly pass: Pass;
  readonly section: RollSection;
  readonly plate: Elastic;
  readonly say: Numbers;
}

/** How each figure in the table of settings was worked out: by its group of columns, and in it by zone and moment. */
export function askedSettings({ units, ...by }: SetBy): TableAnswers {
  const section = sectionOf(by.roll);
  if (!section) return new Map();
  const [say, plate, { zones }] = [numbersIn(units), plateOf(by.item), by.settings];
  const all = zones.flatMap((zone, i) =>
    zone.passes.map((pass) => ({
      row: zones.length > 1 ? `zone ${i + 1}, ${pass.label}` : pass.label,
      asked: { ...by, zone, pass, section, plate, say },
    })),
  );
  const table = SETTING_GROUPS.map(
    ({ id, name }) =>
      [id, { name, rows: all.map(({ row, asked }) => ({ row, worked: WORKED[id](asked) })) }] as const,
  );
  const cut = zones.map((zone, i) => ({ row: `zone ${i + 1}`, worked: zoneWorked(zone, zones.length, say) }));
  return new Map([...table, ["zone", { name: "Zone", rows: cut }]]);
}

/** Sums below each other: a chain of them is read line by line. */
const lines = (all: readonly string[]): string => all.join("\n");

/** How far the roll goes up for one end by itself, in the order in which it is keyed in. */
function ends(asked: Asked, name: string, place: PlaceSetting, finalMm: number): Worked {
  return {
    rule: `What the ${name} asks by itself: how far the roll goes up its slide, from where it touches the flat plate, to touch the outside of the bent plate. Low: as if the plate had sprung back already. High: as if it still were fully bent. Best: two thirds of the way from low to high. C is from the middle of the bend to the middle of the roll. Radii are to the middle of the plate, square to its lines; f tells how much of the bend stays: where it is great, little springs back.`,
    numbers: lines([
      `Radius wanted at this moment, when free: ${closely(asked.say, finalMm)} / ${plain(asked.pass.share, 4)} = ${closely(asked.say, place.freeMm)}\u00a0${asked.say.unit} (finished radius / share of the bend)`,
      ...(place.bestMm === null || place.lowMm === null || place.highMm === null
        ? [`No setting: it is ${place.refused ?? "out of reach"}.`]
        : raised(asked, place.freeMm, { low: place.lowMm, best: place.bestMm, high: place.highMm })),
    ]),
    basis: "derived here",
  };
}

function raised(
  { section, plate, settings: { flat }, say }: Asked,
  freeMm: number,
  mm: { readonly low: number; readonly best: number; readonly high: number },
): string[] {
  const [t, b, x] = [plate.thicknessMm, section.bendingRadiusMm, flat.acrossMm].map((one) =>
    closely(say, one),
  );
  const angle = degrees(inDegrees(section.angleRad), 3);
  const raise = (name: string, radiusMm: number, toMm: number): string[] => {
    const { thicknessMm } = plate;
    const { centreMm, alongMm } = bendOnRolls(section, {
      insideRadiusMm: radiusMm - thicknessMm / 2,
      thicknessMm,
    });
    const told = closely(say, alongMm);
    return [
      `C, ${name}: ${closely(say, radiusMm)} + ${t} / 2 + ${b} = ${closely(say, centreMm)}`,
      `H, ${name}: ${x} × cos(${angle}) + ${closely(say, centreMm)} × sin(${angle}) = ${told} (across × cos of the slide’s rise + C × its sin)`,
      `${name === "low" ? "Low" : "High"}: ${x}² / (${told} + √(${told}² − ${x}²)) = ${withUnitOf(say, toMm)} (across² / (H + √(H² − across²)))`,
    ];
  };
  return [
    `From the pinch across to the roll at the flat plate: ${withUnitOf(say, flat.acrossMm)}. Its slide rises ${angle} above level. Half its diameter: ${b}\u00a0${say.unit}.`,
    ...raise("low", freeMm, mm.low),
    ...underLoad(plate, freeMm, say),
    ...raise("high", loadedRadiusMm(freeMm, plate), mm.high),
    `Best: ${closely(say, mm.low)} + 2 / 3 × (${closely(say, mm.high)} − ${closely(say, mm.low)}) = ${withUnitOf(say, mm.best)}`,
  ];
}

/** A raise to a thousandth of a millimetre, for sums that carry it on far beyond the plate. */
const finely = (mm: number, say: Numbers): string =>
  say.unit === "in" ? plain(mm / MM_PER_INCH, 5) : plain(mm, 3);

/** Why a moment has nothing to set, where it has not. */
const unset = (pass: Pass): string => {
  const why = worstOf(pass.problems);
  return why.length > 0 ? why.join(" ") : "One end has no setting, and the roll is straight.";
};

const START_RULE =
  "The roll is straight, and a straight roll set to the best of both ends stands too high in between. So both are divided by how many times too high that is at half the slant. The tilt is the line through both.";

function start({ pass, zone, say }: Asked): Worked {
  const set = settableStart(pass);
  const { large, small, middle } = pass;
  if (!set || large.bestMm === null || small.bestMm === null)
    return { rule: START_RULE, numbers: unset(pass), basis: "derived here" };
  const [over, q] = [plain(set.middleOverbend, 5), figures(zone.largeRadiusMm / zone.smallRadiusMm)] as const;
  const [atLarge, atSmall] = [large.bestMm, small.bestMm].map((mm) => finely(mm, say));
  const [toLarge, toSmall] = [set.largeMm, set.smallMm].map((mm) => finely(mm, say));
  const wide = closely(say, zone.slantMm);
  // The radii of both ends alone tell it where half the slant has no setting of its own.
  const half = middle.bestMm !== null && middle.bestMm > 0 ? middle.bestMm : undefined;
  return {
    rule: START_RULE,
    numbers: lines([
      half === undefined
        ? `Times too high at half the slant: (${q} + 1)² / (4 × ${q}) = ${over} (by the radii of both ends alone)`
        : set.middleOverbend === 1
          ? `Half the slant asks ${withUnitOf(say, half)} by itself, no less than the line through both: nothing is taken off.`
          : `Times too high at half the slant: (${atLarge} + ${atSmall}) / (2 × ${finely(half, say)}) = ${over} (half the slant asks ${withUnitOf(say, half)} by itself)`,
      `Large end: ${atLarge} / ${over} = ${withUnitOf(say, set.largeMm)}`,
      `Small end: ${atSmall} / ${over} = ${withUnitOf(say, set.smallMm)}`,
      `Tilt: arctan((${toSmall} − ${toLarge}) / ${wide}) = ${degrees(set.tiltDeg, 1)} (over a slant of ${wide}\u00a0${say.unit})`,
    ]),
    basis: "derived here",
  };
}

const BEARING_RULE =
  "The line through what is set at both ends, carried on to the bearings, where a machine’s scale shows it: so much more or less as the tilt gives on the way there.";

function bearings({ pass, zone, roll, settings, say }: Asked): Worked {
  const set = settableStart(pass);
  const none = (numbers: string): Worked => ({ rule: BEARING_RULE, numbers, basis: "derived here" });
  if (!set) return none(unset(pass));
  if (!roll.bearings || set.smallBearingMm === null || set.largeBearingMm === null)
    return none("The shop file does not say how far the bearings lie from the ends of the rolls.");
  const turned = pass.id === "finished";
  const [drop, fixed] = roll.bearings;
  const [near, far] = turned ? [fixed, drop] : [drop, fixed];
  const stopMm = settings.stopMm ?? 0;
  const [large, small] = [set.largeMm, set.smallMm].map((mm) => finely(mm, say));
  const slant = closely(say, zone.slantMm);
  const rise = `(${small} − ${large}) / ${slant}`;
  const all = (own: readonly number[]) => own.map((mm) => closely(say, mm));
  const [stop, width, nearer, farther] = all([stopMm, roll.workingWidth, near, far]);
  return none(
    lines([
      `Small edge: ${stop}\u00a0${say.unit} from the end of the rolls${turned ? ", the fixed end now that the job is turned round" : ""}. The bearing there stands ${nearer}\u00a0${say.unit} beyond that end, the other ${farther}\u00a0${say.unit} beyond the other end. Rolls: ${width}\u00a0${say.unit} long.`,
      `Beyond the small edge: ${small} + (${stop} + ${nearer}) × ${rise} = ${withUnitOf(say, set.smallBearingMm)}`,
      `Beyond the large edge: ${small} − (${width} − ${stop} + ${farther}) × ${rise} = ${withUnitOf(say, set.largeBearingMm)}`,
    ]),
  );
}

const WORKED: Readonly<Record<SettingGroup, (asked: Asked) => Worked>> = {
  moment: ({ pass, item, settings }) => momentWorked(pass, item, settings.zones.length),
  large: (asked) => ends(asked, "large end", asked.pass.large, asked.zone.largeRadiusMm),
  small: (asked) => ends(asked, "small end", asked.pass.small, asked.zone.smallRadiusMm),
  start,
  bearings,
};
