import { radians } from "../geometry/angle.ts";
import { hull } from "../geometry/polygon.ts";
import { SAME_POINT_MM } from "../geometry/tolerance.ts";
import { between2, direction, distance2, dot2, type Vec2 } from "../geometry/vector.ts";
import type { Report, SpacePoint } from "../report/report.ts";
import { clip } from "./clip.ts";
import { boxOf, height, width } from "./box.ts";
import { closed, type Drawing, line, type Stroke } from "./model.ts";
import type { Paper } from "./paper.ts";
import { fitSheet } from "./sheet.ts";
import { curveOf } from "./views/ends.ts";

const [ROOT2, ROOT6] = [Math.sqrt(2), Math.sqrt(6)];

/** Isometric projection (ISO 5456-3): the eye stands at the front, to the right and above, as far along as across and up. */
const isometric = ([x, y, z]: SpacePoint): Vec2 => [(x + y) / ROOT2, (2 * z + y - x) / ROOT6];

/** An end as seen: convex, so its hull is the ring itself, each corner once. */
const ringOf = (points: readonly SpacePoint[]): Vec2[] => hull(points.map(isometric));

/**
 * The part in the round. Its skin is the side of a convex hull, so nothing has to be sorted by distance: the outline is the
 * hull of both ends, lines whose normal points to the eye are seen whole, and of the others what shows through the upper
 * end's opening.
 */
export function isometricDrawing(report: Report, { paper }: { paper: Paper }): Drawing {
  const { part, solid } = report;
  const [a, b] = [ringOf(curveOf(solid.a, "outside")), ringOf(curveOf(solid.b, "outside"))];
  // With edges left square to the plate the inside corner of the lower edge hangs below the outside one.
  const outline = hull([...a, ...b, ...ringOf(solid.a.inside)]);
  const box = boxOf(outline);
  return fitSheet(
    {
      paper,
      core: { widthMm: width(box), heightMm: height(box) },
      text: {
        title: part.title,
        description: `The part in the round, from the front, the right and above.`,
        lines: [],
      },
      toScale: false,
    },
    (board) => board.draw(...strokesOf(report, { a, b, outline })),
  );
}

function strokesOf(
  { solid }: Report,
  { a, b, outline }: { a: readonly Vec2[]; b: readonly Vec2[]; outline: readonly Vec2[] },
): Stroke[] {
  const strokes: Stroke[] = [closed("outline", outline)];
  const inside = ringOf(solid.b.inside);
  // One looks in through the upper end, where it is open.
  const opening = inside.length > 2 ? inside : b;
  const through = (from: Vec2, to: Vec2) => (b.length > 2 ? clip(from, to, { outline: opening }) : undefined);
  if (b.length > 2) strokes.push(closed("outline", b));
  if (inside.length > 2) strokes.push(closed("thin", inside));

  const drawn = (wanted: Stroke["kind"], from: Vec2, to: Vec2, whole: boolean): void => {
    if (distance2(from, to) < SAME_POINT_MM) return;
    // Seen from inside a seam is only a line.
    const kind = whole ? wanted : "thin";
    const seen = whole ? ([0, 1] as const) : through(from, to);
    if (seen) strokes.push(line(kind, between2(from, to, seen[0]), between2(from, to, seen[1])));
  };
  for (const [list, kind] of [
    [solid.elements, "thin"],
    [solid.seams, "outline"],
  ] as const)
    for (const one of list) drawn(kind, isometric(one.a), isometric(one.b), facesEye(one));

  // The lower edge at the back, as far as it shows through the opening; at the front it is outline already.
  for (const [i, p] of a.entries()) {
    const q = a[(i + 1) % a.length] as Vec2;
    const seen = through(p, q);
    if (seen) strokes.push(line("thin", between2(p, q, seen[0]), between2(p, q, seen[1])));
  }
  return strokes;
}

/**
 * Does the skin face the eye along an element? Its normal leans up by β, tan β = (h_A − h_B)/H with h the distance of the
 * tangent from the axis; the eye stands in direction (1, −1, 1).
 */
function facesEye({ planDeg, a, b }: { planDeg: number; a: SpacePoint; b: SpacePoint }): boolean {
  const n = direction(radians(planDeg));
  const lean = (dot2([a[0], a[1]], n) - dot2([b[0], b[1]], n)) / (b[2] - a[2]);
  return n[0] - n[1] + lean > 0;
}
