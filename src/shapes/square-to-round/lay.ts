import { TURN } from "../../geometry/angle.ts";
import { allRound } from "../../geometry/measure.ts";
import { integrate } from "../../geometry/quadrature.ts";
import { circleRim, rectangleRim } from "../../geometry/rim.ts";
import { leanAt, type Skin } from "../../geometry/skin.ts";
import { SAME_ANGLE, SAME_POINT_MM } from "../../geometry/tolerance.ts";
import type { Vec2 } from "../../geometry/vector.ts";
import { toShare } from "../../geometry/wall.ts";
import { type Face, type Layout, MIDDLE, type Refused, refused, seamAt } from "../layout.ts";
import { levelProblem } from "../level.ts";
import type { Loose } from "../loose.ts";
import { takesPieces } from "../pieces.ts";
import type { Refusal } from "../refusal.ts";
import { wallTooThick } from "../words.ts";
import type { SquareToRound } from "./schema.ts";

const QUARTER = TURN / 4;
const SIDES = [0, 1, 2, 3].map((side) => side * QUARTER);

function drawnSkin(part: SquareToRound): Skin {
  const { length, width } = part.rectangularEnd;
  return {
    a: rectangleRim(length, width),
    b: circleRim(part.roundEnd.offset ?? [0, 0], part.roundEnd.diameter / 2),
    baseMm: 0,
    heightMm: part.height,
  };
}

/** How far a face moves level for each mm along the normal, at one normal angle: 1/cos β. */
const levelMove = (drawn: Skin, theta: number): number => 1 / Math.cos(leanAt(drawn, theta, 1).beta);

/** The same averaged round the turn. A circle can only grow evenly, so this is the trade's "mean diameter". */
function meanLevelMove(drawn: Skin): number {
  const move = (theta: number) => levelMove(drawn, theta);
  return SIDES.reduce((sum, from) => sum + integrate(move, from, from + QUARTER), 0) / TURN;
}

/**
 * One surface of the wall. The rectangle is folded about its inside corners, so it is laid out sharp on the surface it
 * is measured on, an outside size first brought inside, each side by t/cos β of its flat. The circle is brought to the
 * surface wanted with d/cos β averaged round the turn. Common practice, no source; the departure is stated.
 */
function faceSkin(part: SquareToRound, drawn: Skin, share: number, rectangleShare: number): Skin | null {
  const t = part.thickness;
  const { length, width, measured } = part.rectangularEnd;
  const side = toShare({ measured, thicknessMm: t, share: rectangleShare });
  const grow = (p: number, q: number) => side * (levelMove(drawn, p) + levelMove(drawn, q));
  const across = length + grow(0, 2 * QUARTER);
  const along = width + grow(QUARTER, 3 * QUARTER);
  const round = toShare({ measured: part.roundEnd.measured, thicknessMm: t, share });
  const radius = part.roundEnd.diameter / 2 + round * meanLevelMove(drawn);
  if (across <= 0 || along <= 0 || radius <= 0) return null;
  // With unlike leans the two sides of a pair move by different amounts, and the rectangle's centre with them.
  const shift: Vec2 = [
    (side * (levelMove(drawn, 0) - levelMove(drawn, 2 * QUARTER))) / 2,
    (side * (levelMove(drawn, QUARTER) - levelMove(drawn, 3 * QUARTER))) / 2,
  ];
  const a = rectangleRim(across, along, shift);
  return { a, b: circleRim(part.roundEnd.offset ?? [0, 0], radius), baseMm: 0, heightMm: part.height };
}

/** Keys that do not go together, as far as the file is right. */
export function squareToRoundProblems(part: Loose<SquareToRound>): Refusal[] {
  const issues: Refusal[] = [];
  const pieces = part.pieces ?? 1;
  if (part.edges === "square")
    issues.push({
      path: ["edges"],
      problem: "edges left square do not lie in one plane where flats and corners lean differently",
      remedy: "use edges: level, and trimAllowance: true where the edges are cut square and dressed",
    });
  if (!takesPieces("square-to-round", pieces))
    issues.push({
      path: ["pieces"],
      problem: `a square-to-round is not split in ${pieces}`,
      remedy: "split it in 2 or 4, at the middles of its sides",
    });
  const at = part.seam?.at;
  if (pieces > 1 && at !== undefined && at % 90 !== 0)
    issues.push({
      path: ["seam", "at"],
      problem: "pieces of a square-to-round meet at the middles of its sides",
      remedy: "use 0, 90, 180 or 270",
    });
  return issues;
}

/** The side whose middle line is shortest; on a tie the first counter-clockwise from +x. [rad] */
function shortestSide(skin: Skin): number {
  const middleLine = (theta: number): number => {
    const [p, q] = [skin.a.point(theta, -1), skin.a.point(theta, 1)];
    const round = skin.b.point(theta, 1);
    return Math.hypot((p[0] + q[0]) / 2 - round[0], (p[1] + q[1]) / 2 - round[1], skin.heightMm);
  };
  let best = 0;
  for (const theta of SIDES) if (middleLine(theta) < middleLine(best) - SAME_POINT_MM) best = theta;
  return best;
}

const inCorner = (seamRad: number): boolean => {
  const rest = ((seamRad % QUARTER) + QUARTER) % QUARTER;
  return rest > SAME_ANGLE && QUARTER - rest > SAME_ANGLE;
};

/** A square-to-round as the surface to lay out: flats stay flat, corners stay cones. */
export function laySquareToRound(part: SquareToRound): Layout | Refused {
  const issues = squareToRoundProblems(part);
  if (issues.length > 0) return refused(...issues);
  const drawn = drawnSkin(part);
  const level = levelProblem(drawn, "height");
  if (level) return refused(level);
  const { measured } = part.rectangularEnd;
  const laidShare = measured === "middle" ? MIDDLE : 0;
  const laid = faceSkin(part, drawn, part.neutral ?? MIDDLE, laidShare);
  const inside = faceSkin(part, drawn, 0, 0);
  if (!laid || !inside) {
    return refused(wallTooThick("the smaller end", part.thickness, part.units));
  }
  const faces: Record<Face, Skin | null> = {
    inside,
    middle: faceSkin(part, drawn, 0.5, 0.5),
    outside: faceSkin(part, drawn, 1, 1),
  };
  const seamRad = seamAt(part.seam?.at, shortestSide(laid));
  const toCircle = toShare({
    measured: part.roundEnd.measured,
    thicknessMm: part.thickness,
    share: part.neutral ?? MIDDLE,
  });
  const mean = meanLevelMove(drawn);
  const apart = [...allRound(), ...SIDES].map((theta) => Math.abs(levelMove(drawn, theta) - mean));
  const notes = [
    `The rectangular end is laid out sharp on its ${measured === "middle" ? "middle" : "inside"}, the round end on its middle diameter: common practice, no source.`,
    ...(inCorner(seamRad) && (part.pieces ?? 1) === 1
      ? [
          "The seam lies within a conical corner, where it is bent across: the middle of a side is easier to weld and true.",
        ]
      : []),
  ];
  return {
    kind: "layout",
    skin: laid,
    faces,
    wallMm: Math.abs(toCircle) * Math.max(...apart),
    heightMm: part.height,
    seamRad,
    notes,
  };
}
