import { endRolled } from "../closure.ts";
import { COMMON_PRACTICE, DERIVED } from "../judge.ts";
import { chalkWords } from "./chalk.ts";
import { passPoints } from "../passPoints.ts";
import { isPipe } from "../skin.ts";
import { zoneByHand } from "../zoneByHand.ts";
import { seamOrder } from "../seamOrder.ts";
import { zonesOf } from "../zones.ts";
import type { RollSheetAsked } from "./asked.ts";
import { PAST_CAP } from "./firstCorrect.ts";
import { type PlanStep, stepNamed, taped } from "./step.ts";
import { templateLight } from "./templateLight.ts";
import { type GapWindow, gapWindows, leadMmOf, sharesOf, templateBrief, templateFigures } from "./touch.ts";
import { isBoxed, TIGHT_OR_OPEN, smallEndDepths, windowBoxes, windowFigures } from "./windowRadii.ts";

/** Templates hold at one gap only: which that is, and how far they may stand open elsewhere in the window. */
function halfWay(asked: RollSheetAsked, light: string): string {
  const { item, say } = asked;
  const aim = passPoints(item).find(({ id }) => id === "aim");
  const { cone } = item;
  if (!aim || !cone || aim.closed === null) return "";
  const soFar = { radiusMm: cone.largeRadiusMm, closed: aim.closed, leadMm: leadMmOf(asked) };
  const { insideGapMm } = endRolled(item, cone, soFar);
  const [open, tight] = [sharesOf(item).from, sharesOf(item).to].map((of) => templateBrief(item, say, of));
  return `half way, at a gap of ${say.tape(insideGapMm)}${isPipe(item) ? "" : " at the large end"}, ${templateBrief(item, say, aim.share)}${light === "" ? `. Right from ${open} to ${tight}` : `; right with ${light}`}: they count before the gap`;
}

/** How the piece lies, the same for everything that is measured on it: a bent or a squeezed one tells nothing. */
function lying({ item }: RollSheetAsked): string {
  const stood = isPipe(item) ? "on end" : "on its large end";
  return `Release it: bending roll lowered, run back until its seam edges are level, held, rolls off, pinch open. Inside up, no sling squeezing it. In doubt stand it ${stood} on a level floor.`;
}

/** A straightedge tells a radius too. Boxes of several zones have room for their depths; beside those of one the next step's table has them. */
function byDepth(asked: RollSheetAsked): string {
  const { item, roll, say } = asked;
  const [table] = roll ? zoneByHand({ item, roll, say }) : [];
  const small = table?.chordMm == null ? null : smallEndDepths(asked, table.chordMm);
  return item.cone || table?.chordMm == null
    ? ""
    : zonesOf(item).length > 1
      ? ` (or the depth under the middle of a ${say.length(table.chordMm)} straightedge held likewise, its window in brackets${windowBoxes(asked).every(({ label }) => label.endsWith(")")) ? "" : "; none: by template"})`
      : ` (a depth under the straightedge: by the next step's table, ${small === null ? "large end only" : `at the small end ${small}`})`;
}

/**
 * Where on the blank its bend is read: clear of what the bending roll did not reach or reached while it was still raised, which
 * both lie in the zone that is rolled first.
 */
function whereHeld(asked: RollSheetAsked): string {
  const zones = zonesOf(asked.item).length;
  const one =
    "Hold the inside templates of the first pass, square to the element line, to it, never on the straight lead, nor where the raise was still going on.";
  if (zones <= 1) return one;
  // Every blank has a lead of its own, in whatever zone it begins.
  if (asked.item.pieces > 1)
    return "Hold the inside templates square to the element line, to the middle of each zone, never on a blank's straight lead, nor where the raise was still going on.";
  const { leads } = seamOrder(asked);
  const [first, mark] =
    leads === null
      ? ["the zone rolled first", "its far mark"]
      : leads === 1
        ? ["zone 1", "zone 2's mark"]
        : [`zone ${zones}`, `its own mark`];
  return `Hold the inside templates square to the element line, to the middle of each zone; in ${first} half way from where the raise was all on to ${mark}, clear of both.`;
}

/** Zones may come out far apart: which of them is raised, and what one that is tight already means for the blank. */
function judged({ item, settings, roll, say }: RollSheetAsked): string {
  if ((settings?.zones.length ?? 0) < 2) return "";
  const corrected = roll && zoneByHand({ item, roll, say }).length > 0;
  const pipe = isPipe(item);
  return ` Look at all zones before one is raised. Any past its “never tighter”${pipe ? "" : ", at either end"}: ${PAST_CAP} Else each zone by itself${pipe ? "" : ", by its large end (closing brings in a small end still open)"}. Open: ${corrected ? `raise that zone alone, by ${stepNamed("first-correct")}${pipe ? "" : "; its small end tighter than its window: ask the foreman"}` : stepNamed("first-correct")}. Right or tighter: leave it as set (tighter: less for the next blank). None open: go on.`;
}

/** What is measured when the first pass is through: gaps of a right cone, inside radii of each zone of an uneven skin. */
export function firstMeasure(asked: RollSheetAsked): PlanStep {
  const { item, say } = asked;
  const gaps = gapWindows(asked);
  const share = passPoints(item).find(({ id }) => id === "aim")?.share ?? 1;
  const { from, to, cap: capShare } = sharesOf(item);
  const [large, small] = gaps;
  const range = ({ fromMm, toMm }: GapWindow) => `${say.tape(toMm)} to ${say.tape(fromMm)}`;
  // How the lead lies at the small end hangs on how the blank came in: its gap is told, and does not decide.
  const windows =
    large &&
    `${range(large)} at the ${large.end} (the window)${small ? `, about ${range(small)} at the small end` : ""}`;
  const cap = large && `${say.tape(large.capMm)}${small ? " at the large end" : ""}`;
  const chalk = chalkWords(asked);
  const light = templateLight(asked);
  const templates = templateFigures(item, share);
  const lead = leadMmOf(asked) > 0;
  const held = large
    ? ` Inside templates, square to the element line, clear of the lead: ${halfWay(asked, light.text)}.`
    : "";
  const ends = isPipe(item) ? "" : ", large end and small end";
  // Where there are lines for the radii found, each has its window before it.
  const boxed = isBoxed(asked);
  const half = ["Half way", share] as const;
  const never = ["Never tighter than", capShare] as const;
  const limits =
    templates.length === 0
      ? ""
      : ` Templates${ends}. ${(boxed
          ? [half, never]
          : [["Open limit", from] as const, half, ["Tight limit", to] as const, never]
        )
          .map(([name, of]) => `${name}: ${templateBrief(item, say, of)}.`)
          .join(" ")}`;
  const text = large
    ? `${lying(asked)} Measure straight across the seam, inside corner to inside corner${lead ? ", lead and all" : ""}${chalk.text}: right is ${windows}. Never below ${cap} in this pass.${held}`
    : `${lying(asked)} ${whereHeld(asked)} Right (the window) is ${say.percent(from)} to ${say.percent(to)} of the final bend${boxed ? ", the two radii of each box" : ""}; never above ${say.percent(capShare)}.${boxed ? ` Write in the radius that came out${byDepth(asked)}.` : ""}${limits}${judged(asked)}`;
  const at = (when: string, of: number) =>
    templateFigures(item, of).map((one) => ({ ...one, label: `${one.label}, ${when}` }));
  return {
    id: "first-measure",
    phase: "first pass",
    title: "Measure the first pass",
    text,
    figures: [
      ...gaps.flatMap(({ end, fromMm, toMm, capMm }) => [
        taped(`gap at the ${end}, widest of the window`, fromMm, DERIVED),
        taped(`gap at the ${end}, narrowest of the window`, toMm, DERIVED),
        ...(end === "small end" ? [] : [taped(`gap at the ${end}, never below`, capMm, DERIVED)]),
      ]),
      ...chalk.figures,
      ...templates,
      ...(large
        ? light.figures.length > 0
          ? light.figures
          : at("at the widest gap", from)
        : [...windowFigures(item), ...at("never tighter than", capShare)]),
    ],
    cautions: ["Let nobody stand under or inside the piece while it is held only by the rolls."],
    toNote: [
      ...gaps.map(({ end }) => ({
        label: chalk.text === "" ? `gap at the ${end}, measured` : `gap less chalk, ${end}`,
        unit: "mm",
      })),
      ...(large ? [TIGHT_OR_OPEN] : windowBoxes(asked)),
    ],
    basis: COMMON_PRACTICE,
  };
}
