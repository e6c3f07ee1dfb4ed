import type { PartAsked } from "../asked.ts";
import { brakeEnds } from "../brakeEnds.ts";
import { middleLinesOf } from "../brakeLines.ts";
import type { BrakePlan } from "../brakePlan.ts";
import { COMMON_PRACTICE, DERIVED } from "../judge.ts";
import { number } from "../say.ts";
import { listed } from "../words.ts";
import { GUARDS, lookAt } from "./brakeSetUp.ts";
import { type Figure, mm, type PlanStep, taped } from "./step.ts";

/** The middle line of every corner of a piece, or the two on both sides of its middle: "lines 4 and between 10 and 11". */
function middleLinesOn({ lines, zones }: BrakePlan, piece: number): string {
  const numbers = zones
    .filter((zone) => zone.piece === piece)
    .flatMap((corner) => {
      const [low, high] = middleLinesOf(lines, corner);
      if (!low) return [];
      return [high ? `between ${low.number} and ${high.number}` : `${low.number}`];
    });
  // With an "and" of their own they are only parted by commas.
  const named = numbers.some((one) => one.startsWith("between")) ? numbers.join(", ") : listed(numbers);
  return numbers.length === 0 ? "" : `line${numbers.length > 1 ? "s" : ""} ${named}`;
}

/** The same of all pieces, each with its own where they differ: " (piece 1: lines 4 and …; piece 2: …)". */
export function middleLines(plan: BrakePlan): string {
  const pieces = [...new Set(plan.zones.map(({ piece }) => piece))];
  const told = pieces.map((piece) => middleLinesOn(plan, piece));
  const [first = ""] = told;
  if (told.every((one) => one === first))
    return first === "" ? "" : ` (${first}${pieces.length > 1 ? " of each piece" : ""})`;
  return ` (${pieces.map((piece, i) => `piece ${piece}: ${told[i]}`).join("; ")})`;
}

/** How the punch gets at a tip, how far it reaches, and when the fold is done. */
export const reachWords = (from: string): string =>
  `Open on its seam side the piece lets the punch into every corner. Use one no longer than the fold, its end a little past the rectangular edge, or hang the ${from} out past the end of punch and die. Short hits, a little at a time, with no depth of their own, until its two flats stand as checked in the next step; what stays round beyond the punch, dress over a bar inside.`;

/** How far a strip is folded: as the sharpest corner, where that is known. */
function stripWords({ zones }: BrakePlan): string {
  const flats = zones.flatMap(({ flatsDeg }) => flatsDeg ?? []);
  return flats.length === 0 ? "as far as a corner" : `to ${number(Math.min(...flats), 1)}° between its legs`;
}

/** How far short the lines stop over their own die, the worst of all. [mm] */
const shortOf = (lines: BrakePlan["lines"]): number =>
  Math.max(0, ...lines.map(({ stopsShortMm }) => stopsShortMm));

/** Over the wider die lines stop further short, and where they grow fewer the flats between them stand further off. */
function notThroughout({ say }: PartAsked, { tips, lines, zones }: BrakePlan): string {
  if (!tips) return "";
  const { stopsShortMm, facetMm } = tips.throughout;
  const now = shortOf(lines);
  const off = Math.max(...zones.map((zone) => zone.facetMm));
  const why = [
    ...(stopsShortMm > now
      ? [`they would stop short by up to ${say.tape(stopsShortMm)}, not ${say.tape(now)}`]
      : []),
    ...(facetMm > off
      ? [`flats would stand up to ${say.length(facetMm)} off the curve, not ${say.length(off)}`]
      : []),
  ];
  return why.length === 0 ? "" : ` Not for the lines: over it ${listed(why)}.`;
}

/** The tips, where they want a wider die than the lines; nothing where they do not, or no line leaves one. */
export function foldTips(asked: PartAsked, plan: BrakePlan): PlanStep[] {
  const { tips } = plan;
  if (!tips || tips.longestMm === 0 || plan.closes) return [];
  const { say } = asked;
  const { from } = brakeEnds(asked.item);
  const least = say.length(tips.leastDieMm);
  const own = say.units === say.shopUnits ? {} : { inShop: say.shopUnits };
  const die = tips.dieMm === null ? `one of ${least} or more` : `${say.shops(tips.dieMm)}, at least ${least}`;
  const longest = say.tape(tips.longestMm);
  const most = tips.forceLimitMostKN;
  const protractor = plan.zones.every(({ flatsDeg }) => flatsDeg !== null)
    ? ", and the corners by the protractor as in the next step, held towards the round end (the tips may hold them a little open)"
    : "";
  const raised =
    most !== null && most > tips.forceLimitKN ? `, never above ${say.force(most)} for stronger plate` : "";
  return [
    {
      id: "tips",
      phase: "bending",
      title: "Fold the tips over a wider die",
      text: `When all lines${plan.lines.some(({ piece }) => piece > 1) ? " of all pieces" : ""} are bent, and right by the template${protractor}, change the die: ${die}. Set the force limit to ${say.force(tips.forceLimitKN)}${raised}; if it cannot be set so low, the lowest it takes. Fold a strip of the same plate over it first, ${stripWords(plan)}, and look for cracks on its outside. Then fold the tip of each corner along its middle line${middleLines(plan)}, from where the bent length ends: ${longest} at most. ${reachWords(from)}${notThroughout(asked, plan)}`,
      figures: [
        mm("die for the tips, opening at least", tips.leastDieMm, COMMON_PRACTICE),
        ...(tips.dieMm === null ? [] : [{ ...mm("die for the tips", tips.dieMm, COMMON_PRACTICE), ...own }]),
        taped("longest fold", tips.longestMm, "metalforming-step-bending"),
        ...[
          ["force limit to set for the tips", tips.forceLimitKN],
          ...(most === null ? [] : [["force limit for the tips, at most", most]]),
        ].map(([label, value]): Figure => ({ label, value, unit: "kN", basis: "groover-memory" }) as Figure),
        ...(tips.throughout.stopsShortMm > shortOf(plan.lines)
          ? [taped("lines over that die would stop short by up to", tips.throughout.stopsShortMm, DERIVED)]
          : []),
      ],
      cautions: [GUARDS, ...lookAt(plan, "tips")],
      toNote: [
        {
          label: "tip die, used",
          unit: "mm",
          ...(tips.dieMm !== null && { planned: tips.dieMm }),
          ...own,
        },
        { label: "force limit set", unit: "kN", planned: tips.forceLimitKN },
      ],
      basis: COMMON_PRACTICE,
    },
  ];
}
