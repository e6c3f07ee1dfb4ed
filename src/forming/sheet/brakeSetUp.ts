import { MM_PER_INCH } from "../../geometry/units.ts";
import type { PartAsked } from "../asked.ts";
import { type BrakeDepth, isUnlike } from "../brakeDepths.ts";
import { brakeEnds } from "../brakeEnds.ts";
import type { BrakePlan } from "../brakePlan.ts";
import type { BrakeRemark } from "../brakeRemarks.ts";
import { findsRoom } from "../brakeThroat.ts";
import { COMMON_PRACTICE, DERIVED } from "../judge.ts";
import { number } from "../say.ts";
import { type LiftAsked, liftCautions, SHARP } from "./lifting.ts";
import { down } from "./modelTable.ts";
import { type Figure, mm, type NoteBox, type PlanStep, taped } from "./step.ts";

export const GUARDS =
  "Hands never between punch and die; the blank lifts quickly at a hit: keep face and arms out of its swing. Guards and the machine's manual come first.";

/** What of the plan's remarks bites at one step, in sentences. */
export const lookAt = ({ remarks }: BrakePlan, step: BrakeRemark["step"]): string[] =>
  remarks.filter((one) => one.step === step).map(({ atStep }) => atStep);

/** What a strip is bent to for its lines: the middle of their angles, which are nearly the same. */
const angleOf = ({ fromDeg, toDeg }: BrakeDepth): string => `${number((fromDeg + toDeg) / 2, 1)}°`;

/** Where angles are so many that one depth serves unlike lines: how unlike, and what to do. */
function unlike({ depths }: BrakePlan): string {
  const [most] = depths.toSorted((one, other) => other.toDeg - other.fromDeg - (one.toDeg - one.fromDeg));
  if (!most || !isUnlike(most)) return "";
  return ` Lines of one letter are not quite alike: those of ${most.letter} run from ${number(most.fromDeg, 1)}° to ${number(most.toDeg, 1)}°, and its depth is for ${angleOf(most)}. What each line wants more or less than that stands beside its letter in the table.`;
}

/** How much deeper a degree more is, by letters: "0.14 mm (A to D), 0.13 mm (E)"; one number where all are alike. */
export function deeperWords({ say }: PartAsked, { depths }: BrakePlan): string {
  // A thousandth of an inch is too coarse for a degree.
  const fine = (mm: number) => (say.units === "mm" ? say.length(mm) : `${number(mm / MM_PER_INCH, 4)} in`);
  const groups: { letters: string[]; told: string }[] = [];
  for (const { letter, perDegreeMm } of depths) {
    const [last, told] = [groups.at(-1), fine(perDegreeMm)];
    if (last?.told === told) last.letters.push(letter);
    else groups.push({ letters: [letter], told });
  }
  const named = groups.map(({ letters: [first = "", ...more], told }) => {
    const last = more.at(-1);
    return `${told} (${first}${last === undefined ? "" : ` to ${last}`})`;
  });
  return groups.length === 1 ? (groups[0]?.told ?? "") : named.join(", ");
}

const KINDS = { border: " (the lines beside a flat)", inner: "", both: "" } as const;

/** The depths by their letters: "A 8.3° (the lines beside a flat); B 12.2°". */
const depthWords = ({ depths }: BrakePlan): string =>
  depths.map((one) => `${one.letter} ${angleOf(one)}${KINDS[one.kind]}`).join("; ");

/** How deep a strip is bent at first: "A 1 mm, B 1.4 mm". */
const beginWords = ({ say }: PartAsked, { depths }: BrakePlan): string =>
  depths.map(({ letter, beginMm }) => `${letter} ${say.length(down(beginMm))}`).join(", ");

/** What a protractor reads between the legs of each strip: "A 171.7°, B 167.8°". */
const legWords = ({ depths }: BrakePlan): string =>
  depths
    .map(({ letter, fromDeg, toDeg }) => `${letter} ${number(180 - (fromDeg + toDeg) / 2, 1)}°`)
    .join(", ");

/** A box for each depth. */
export const depthBoxes = ({ depths }: BrakePlan, label: string): NoteBox[] =>
  depths.map((one) => ({ label: `${one.letter}, ${angleOf(one)}: ${label}`, unit: "mm" }));

/** A part that is better made otherwise is bent as drawn only by somebody's order. */
const orderBoxes = ({ closes, behind, throatMm }: BrakePlan): NoteBox[] =>
  closes || (throatMm !== null && behind !== null && !findsRoom(behind, throatMm))
    ? [{ label: "kept as drawn, foreman", unit: "-" }]
    : [];

function mark(asked: LiftAsked, plan: BrakePlan): PlanStep {
  const { item, say } = asked;
  const lap = item.seamLapMm ?? 0;
  const lines = Math.round(plan.lines.length / Math.max(1, item.pieces));
  const turned = item.faceUp === "outside";
  const short = plan.lines.some(({ stopsShortMm }) => stopsShortMm > 0);
  const ordered = orderBoxes(plan);
  const face = turned
    ? "The pattern is drawn with its outside up: turn the blank over and scribe on the inside; lines that the cutting table has marked are then below"
    : "Inside up, as the pattern is drawn";
  return {
    id: "mark",
    phase: "set-up",
    title: "Dress and mark",
    text: `Dress the edges. ${face}. The punch presses on the inside: the plate folds up, on both sides of a line. Scribe the ${lines} bend lines of each piece on the inside, by their distances along both edges from seam edge 1 (see the picture and the table). Write its number and the letter of its depth to each.${short ? ` Where a line is dashed there it is not bent: mark the end of its bent length, measured from the ${brakeEnds(item).from}.` : ""}${lap > 0 ? ` Scribe the lap line too, ${say.tape(lap)} from the edge of the plate beyond seam 2.` : ""}${ordered.length > 0 ? " Begin only with the foreman’s name in the box: see “Look at this first”." : ""}`,
    figures: [],
    cautions: [SHARP, ...liftCautions(asked, "brake")],
    toNote: ordered,
    basis: COMMON_PRACTICE,
  };
}

/** What plate stronger than the least of its grade does to limit and tools; it goes without a certificate too. */
function strongerPlate(
  say: PartAsked["say"],
  { tensileMostMPa, forceLimitKN, forceLimitMostKN, forceKNPerM }: BrakePlan,
): string {
  const along = say.forceAlong(forceKNPerM);
  if (tensileMostMPa === null || forceLimitMostKN === null)
    return `The greatest tensile strength of this plate is not known here, and sound plate may take more. With a certificate raise the limit in proportion to its tensile strength. Without one the ram may stop at the limit: ask for the strength of the plate before it is raised. Apart from that limit punch and die must be marked to bear ${along} of their length or more, and for more in proportion.`;
  const [most, limit] = [say.strength(tensileMostMPa), say.force(forceLimitMostKN)];
  const raise = forceLimitMostKN > forceLimitKN;
  return `The grade runs up to ${most}. ${raise ? `With a certificate raise the limit in proportion to its tensile strength. Without one the ram may stop at the limit in sound plate: look at die, plate and depth first, then raise it in small steps, never above ${limit}.` : "Sound plate may therefore stop the ram."} Apart from that limit punch and die must be marked to bear ${along} of their length or more; that is for ${most}.`;
}

function tooling({ item, say }: PartAsked, plan: BrakePlan): PlanStep {
  const { used, greatest } = plan.forceConstant;
  const most = (plan.greatestForceKN * greatest) / used;
  // The limit is the brake's own force only where that is less: two ways to the same product differ in their last digits.
  const capped = plan.brakeForceKN !== null && plan.brakeForceKN < most;
  const limit = say.force(plan.forceLimitKN);
  const look = lookAt(plan, "tooling");
  const hit = `${say.force(plan.greatestForceKN)} to ${say.force(most)}`;
  const tensile = say.strength(plan.tensileMPa);
  const stronger = strongerPlate(say, plan);
  const own = say.units === say.shopUnits ? {} : { inShop: say.shopUnits };
  const set = capped
    ? `Set the force limit to ${limit}, all that the brake has: a hit may stall before it is through, and is not to be forced.`
    : `Set the force limit to ${limit}${plan.brakeForceKN === null ? "" : ` (the brake has ${say.force(plan.brakeForceKN)})`}: what asks for more is a wrong die, a second plate, a ram set too deep, or stronger plate.`;
  return {
    id: "tooling",
    phase: "set-up",
    title: "Tooling and force",
    text: `Die opening ${say.shops(plan.dieMm)} (this thickness wants at least ${say.length(plan.leastDieMm)}). It leaves an inside radius of about ${say.length(plan.insideRadiusMm)}. The strongest hit bends ${say.tape(plan.longestHitMm)} and takes about ${hit} (constant ${used} to ${greatest}), in plate of ${tensile} tensile strength, the least of its grade. ${set} ${stronger}`,
    figures: [
      { ...mm("die opening", plan.dieMm, COMMON_PRACTICE), ...own },
      mm("inside radius, about", plan.insideRadiusMm, COMMON_PRACTICE),
      mm("least inside radius advised", plan.leastInsideRadiusMm, plan.leastInsideRadiusBasis),
      ...[
        ["tensile strength, least of the grade", plan.tensileMPa],
        ["tensile strength, greatest of the grade", plan.tensileMostMPa],
      ].flatMap(([label, value]): Figure[] =>
        value === null
          ? []
          : [{ label, value, unit: "MPa", basis: item.material.sources.strength } as Figure],
      ),
      ...[
        ["greatest force of a hit, about", plan.greatestForceKN, "kN"],
        ["force limit to set", plan.forceLimitKN, "kN"],
        ...(plan.forceLimitMostKN === null ? [] : [["force limit, at most", plan.forceLimitMostKN, "kN"]]),
        ["load along punch and die", plan.forceKNPerM, "kN/m"],
      ].map(([label, value, unit]): Figure => ({ label, value, unit, basis: "groover-memory" }) as Figure),
    ],
    cautions: [GUARDS, ...look],
    toNote: [
      { label: "die used", unit: "mm", planned: plan.dieMm, ...own },
      { label: "force limit set", unit: "kN", planned: plan.forceLimitKN },
    ],
    basis: COMMON_PRACTICE,
  };
}

/** A strip no longer than this brings hands near the die, a narrower one bends at its edges. [mm, or whole inches] */
const LEAST_STRIP = { mm: { acrossMm: 300, alongMm: 50 }, in: { acrossMm: 304.8, alongMm: 50.8 } } as const;
/** Both in proportion: across the line in die openings, along it in thicknesses. Common practice, no source. [-] */
const [STRIP_OPENINGS, STRIP_THICKNESSES] = [4, 10];

function strip({ item, say }: PartAsked, plan: BrakePlan): PlanStep {
  const least = LEAST_STRIP[item.units ?? "mm"];
  const acrossMm = Math.max(least.acrossMm, STRIP_OPENINGS * plan.dieMm);
  const alongMm = Math.max(least.alongMm, STRIP_THICKNESSES * item.thicknessMm);
  const size = `at least ${say.tape(acrossMm)} across the line and ${say.tape(alongMm)} along it`;
  const several = plan.depths.length > 1;
  const strips = several ? "a strip of the same plate for each angle" : "a strip of the same plate";
  return {
    id: "strip",
    phase: "set-up",
    title: several ? "Trial strips" : "Trial strip",
    text: `Cut ${strips}, ${size}. Mark the rolling direction on plate and strip before they are cut apart: a strip’s line lies to it as its lines do on the blank, the middle one of them where they differ. Bend it over the same die. Let the punch just touch the strip on the die and write down the machine’s reading. All ram depths count from there: add them to that reading, or take them off where the scale counts down. Begin no deeper than ${beginWords({ item, say }, plan)} (no springback at all), go deeper little by little and note the depth that leaves the angle after springback: ${depthWords(plan)}. A degree more wants about ${deeperWords({ item, say }, plan)} more. The table has the letter of each line. A bend angle is what the plate turns by, from flat; a protractor between the legs reads 180° less that: ${legWords(plan)}. Bent too far, take another strip and go less deep.${unlike(plan)}`,
    figures: [
      taped("trial strip, across the line at least", acrossMm, COMMON_PRACTICE),
      taped("trial strip, along the line at least", alongMm, COMMON_PRACTICE),
      ...plan.depths.map(({ letter, perDegreeMm }) =>
        mm(`${letter}: deeper for a degree more, about`, perDegreeMm, DERIVED),
      ),
      ...plan.depths.map(({ letter, beginMm }) =>
        mm(`${letter}: begin no deeper than`, down(beginMm), DERIVED),
      ),
    ],
    cautions: [],
    toNote: [{ label: "reading at touch", unit: "mm" }, ...depthBoxes(plan, "depth from touch")],
    basis: COMMON_PRACTICE,
  };
}

/** What is done before the first line is bent. */
export const brakeSetUp = (asked: LiftAsked, plan: BrakePlan): PlanStep[] => [
  mark(asked, plan),
  tooling(asked, plan),
  strip(asked, plan),
];
