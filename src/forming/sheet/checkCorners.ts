import { radians } from "../../geometry/angle.ts";
import { MM_PER_INCH } from "../../geometry/units.ts";
import type { PartAsked } from "../asked.ts";
import type { BrakePlan } from "../brakePlan.ts";
import { type CornerLimit, cornerLimit } from "../cornerLimit.ts";
import { COMMON_PRACTICE } from "../judge.ts";
import { number } from "../say.ts";
import { cornerCheck, TOO_FLAT } from "./brakeTemplates.ts";
import type { Figure, PlanStep } from "./step.ts";

/** How far from a corner the light under a try square is looked at: a round number on the rule. [mm] */
const LEG_MM = { mm: 100, in: 4 * MM_PER_INCH } as const;

/** What a try square may show: the light under its leg where the corner is as far off as it may be. */
function squareWords({ item, say }: PartAsked, limit: CornerLimit | null): string {
  const square =
    "Hold a try square in each corner of the rectangular end, level along its two edges: 90° inside";
  if (!limit) return `${square}.`;
  const legMm = LEG_MM[item.units ?? "mm"];
  const lightMm = legMm * Math.tan(radians(limit.withinDeg));
  return `${square}, ± ${number(limit.withinDeg, 2)}°, that is up to ${say.length(lightMm)} of light ${say.length(legMm)} from the corner.`;
}

/** What is done with a corner that reads too much or too little. */
function wrongWords({ say }: PartAsked, { lines, closes, tips, dieMm, forceLimitKN }: BrakePlan): string {
  const hasTips = lines.some(({ stopsShortMm }) => stopsShortMm > 0);
  const more = closes ? "dress its tip a little more over the bar" : "fold its tip a little further";
  const one = "a line a degree deeper for each degree that it lacks, the middle ones first, and no other";
  // Over the wider die of the tips no line is hit again.
  const back = tips
    ? `put die ${say.shops(dieMm)} and force limit ${say.force(forceLimitKN)} back, and hit `
    : "hit ";
  const flat = `where the template ${TOO_FLAT}`;
  const again = hasTips ? `${more}; ${flat}, ${closes ? "its lines too" : `${back}${one}`}` : `hit ${one}`;
  return `If it reads more, the corner is too open: ${again}. If it reads less, it is bent too far: stop and ask the foreman before anything is tacked.`;
}

/** A part with flats: how its corners are measured before it is tacked. Nothing where it is round all the way. */
export function checkCorners(asked: PartAsked, plan: BrakePlan): PlanStep[] {
  if (asked.item.tightestRadiusMm !== null) return [];
  const { turn, flats, figures } = cornerCheck(asked, plan);
  const limit = cornerLimit(asked.item);
  const within = limit ? `± ${number(limit.withinDeg, 2)}°` : "";
  const protractor =
    "Then hold a protractor inside, a leg on each flat beside the corner, and rock it up and down along it: its greatest reading is";
  const reading = flats === null ? "" : ` ${protractor} ${flats}${within && `, ${within}`}.`;
  return [
    {
      id: "corners",
      phase: "bending",
      title: "Check the corners",
      text: `${squareWords(asked, limit)}${reading} Within that it passes. ${wrongWords(asked, plan)} The hits of a corner add up to ${turn}: no angle to measure. Corners are numbered on the inspection sheet's sketch.`,
      figures: [
        ...(limit
          ? [{ label: "corner, within", value: limit.withinDeg, unit: "°", basis: limit.basis } as Figure]
          : []),
        ...figures,
      ],
      cautions: ["The bent piece is springy and tips easily: prop it before anybody reaches in."],
      toNote: plan.zones.map(({ piece, zone, flatsDeg }) => ({
        label: `corner ${zone}${asked.item.pieces > 1 ? ` of piece ${piece}` : ", flats"}`,
        unit: "°",
        ...(flatsDeg !== null && { planned: flatsDeg }),
      })),
      basis: COMMON_PRACTICE,
    },
  ];
}
