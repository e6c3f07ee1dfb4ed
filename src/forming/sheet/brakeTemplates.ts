import type { PartAsked } from "../asked.ts";
import type { BrakePlan } from "../brakePlan.ts";
import { number } from "../say.ts";
import { roundTemplate } from "../inspection.ts";
import { DERIVED } from "../judge.ts";
import { isPipe } from "../skin.ts";
import { type Figure, mm, taped } from "./step.ts";
import { templateBrief, templateFigures } from "./touch.ts";

/** What an inside template shows over lines that are bent, but not enough. */
export const TOO_FLAT = "shows light at both its ends";

/** What a part on the brake is tried by: one sentence, and its numbers. */
export interface BrakeTemplate {
  readonly words: string;
  readonly figures: readonly Figure[];
}

/**
 * Templates of the finished part. A corner of a square-to-round is tried at its round end in the plane of that end, where
 * the radius is the drawing's own; a skin that is round at both ends square to the element line.
 *
 * @see derived here
 */
export function brakeTemplate(asked: PartAsked, plan: Pick<BrakePlan, "zones">): BrakeTemplate {
  const { item, say } = asked;
  if (item.tightestRadiusMm === null) {
    const { label, value: radiusMm } = roundTemplate(item);
    const acrossMm = radiusMm + item.thicknessMm / 2;
    // In the plane of that end a facet spans as much of its rim as lies from line to line.
    const light = lightUnder(
      asked,
      plan.zones,
      ({ spacingMm }) => acrossMm * (1 - Math.cos(spacingMm.wide / (2 * acrossMm))),
    );
    return {
      words: `Template of the round end: ${say.tape(radiusMm)} radius, on the inside, held in the plane of that end along its edge. ${light.words}`,
      figures: [taped(label, radiusMm, DERIVED), ...light.figures],
    };
  }
  const held = "Templates, on the inside, held square to the element line";
  const figures = templateFigures(item, 1).filter(({ value }) => value > 0);
  const light = lightUnder(asked, plan.zones, ({ facetMm }) => facetMm);
  if (figures.length === 0) {
    const uneven = unevenTemplates(asked, held);
    return { words: `${uneven.words}. ${light.words}`, figures: [...uneven.figures, ...light.figures] };
  }
  const radii = `${isPipe(item) ? "both ends" : "large and small end"}: ${templateBrief(item, say, 1)}`;
  return { words: `${held}, ${radii}. ${light.words}`, figures: [...figures, ...light.figures] };
}

/**
 * What light under an inside template means, whose rounded edge lies in the hollow. It bears on the flats; light at a line
 * is R (1 − cos φ/2) and grows with what that line is bent by. A hollow less curved than the template touches its middle.
 *
 * @see derived here
 */
function lightUnder(
  { say }: PartAsked,
  zones: BrakePlan["zones"],
  mostOf: (zone: BrakePlan["zones"][number]) => number,
): BrakeTemplate {
  const lightMm = Math.max(...zones.map(mostOf));
  return {
    words: `It bears on the flats: where both flats beside a line bear, up to ${say.length(lightMm)} of light at it passes; more: it is bent too far, do not hit it again. Where the template ${TOO_FLAT}, the plate is too flat`,
    figures: [mm("light under the template at a line, up to", lightMm, DERIVED)],
  };
}

/** A skin without zones, to a point or curved too unevenly: its tightest and its slackest place at each end. */
function unevenTemplates({ item, say }: PartAsked, held: string): BrakeTemplate {
  const radii = (end: "large" | "small"): number[] =>
    (
      item.curvature?.map((one) => one[`${end}RadiusMm`]) ??
      (item.tightestRadiusMm ? [item.tightestRadiusMm[end]] : [])
    ).map((middleMm) => middleMm - item.thicknessMm / 2);
  const ends = (["large", "small"] as const).flatMap((end) => {
    const [tight, slack] = [Math.min(...radii(end)), Math.max(...radii(end))];
    return tight > 0 && Number.isFinite(slack) ? [{ end: `${end} end`, tight, slack }] : [];
  });
  const one = item.curvature === undefined;
  const words = ends.map(({ end, tight, slack }) =>
    one
      ? `${end}: R ${say.length(tight)}`
      : `${end}: from R ${say.length(tight)}, where it is tightest, to R ${say.length(slack)}`,
  );
  return {
    words:
      ends.length === 0
        ? `${held}, made for each place from the drawing`
        : `${held}, ${words.join("; ")}${one ? "" : "; the plot of its curvature shows where"}`,
    figures: ends.flatMap(({ end, tight, slack }) =>
      one
        ? [templateAt(end, tight)]
        : [templateAt(`${end}, tightest place`, tight), templateAt(`${end}, slackest place`, slack)],
    ),
  };
}

const templateAt = (place: string, value: number): Figure => ({
  label: `template radius inside, ${place}, held square to the element line`,
  value,
  unit: "mm",
  basis: DERIVED,
});

/** Whose number it is: "corner 2", or "corner 2 of piece 1". */
const cornerName = ({ piece, zone }: BrakePlan["zones"][number], pieces: number): string =>
  `corner ${zone}${pieces > 1 ? ` of piece ${piece}` : ""}`;

/** An angle of the corners, in words: the same everywhere, or each with its corner. */
function each(
  { zones }: BrakePlan,
  pieces: number,
  deg: (zone: BrakePlan["zones"][number]) => number,
): string {
  const told = zones.map((zone) => `${number(deg(zone), 1)}°`);
  const [first] = told;
  return first !== undefined && told.every((other) => other === first)
    ? first
    : zones.map((zone, i) => `${cornerName(zone, pieces)}: ${told[i] ?? ""}`).join("; ");
}

/** What the corners of a part with flats are checked by. */
interface CornerCheck {
  /** Sum of the hits of each corner. */
  readonly turn: string;
  /** How the flats stand to each other; null where a seam runs through a corner. */
  readonly flats: string | null;
  readonly figures: readonly Figure[];
}

/**
 * Corners: all hits together, and the angle that a protractor finds between both flats. They do not add up to 180°: a cone
 * turns round its corner, so that its hits come to more than the straight way from one flat to the other.
 *
 * @see derived here; pyramid-60 for the angle between two flats
 */
export function cornerCheck({ item }: PartAsked, plan: BrakePlan): CornerCheck {
  const known = plan.zones.every(({ flatsDeg }) => flatsDeg !== null);
  return {
    turn: each(plan, item.pieces, ({ turnDeg }) => turnDeg),
    flats: known ? each(plan, item.pieces, ({ flatsDeg }) => flatsDeg ?? 0) : null,
    figures: plan.zones.flatMap((zone): Figure[] => {
      const name = cornerName(zone, item.pieces);
      const turn = { label: `${name}: all its bends together`, value: zone.turnDeg };
      const flats = { label: `${name}: between its two flats, inside`, value: zone.flatsDeg };
      return [turn, flats].flatMap(({ label, value }) =>
        value === null ? [] : [{ label, value, unit: "°", basis: DERIVED }],
      );
    }),
  };
}
