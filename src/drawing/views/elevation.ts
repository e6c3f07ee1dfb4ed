import { radians } from "../../geometry/angle.ts";
import { hull } from "../../geometry/polygon.ts";
import { SAME_POINT_MM } from "../../geometry/tolerance.ts";
import { add2, distance2, direction, dot2, type Vec2 } from "../../geometry/vector.ts";
import type { Drawable, SpacePoint } from "../../report/report.ts";
import { isDrawn, isSeamLine, lineStride } from "../dense.ts";
import { closed, element, type ElementLine, line, type Stroke } from "../model.ts";
import { curveOf, type End } from "./ends.ts";

/** A view from the side: which way is right on the sheet, and from where one looks; directions in plan. */
export interface Sight {
  readonly right: Vec2;
  /** From the part towards the eye. */
  readonly eye: Vec2;
}

/** From the front: looking along +y. */
export const FRONT: Sight = { right: [1, 0], eye: [0, -1] };
/** From the left: looking along +x, so that what lies away appears on the left. */
export const LEFT: Sight = { right: [0, -1], eye: [-1, 0] };

/** A wall thinner than this on paper is drawn as one line. [mm of paper] */
export const SEEN_WALL = 0.8;
/** Facing so little towards the eye is edge-on: the outline says it already. [-] */
const EDGE_ON = 0.02;

/** Where a point in space comes to lie in a view from the side, before the view is put in its place. */
export const project = (sight: Sight, [x, y, z]: SpacePoint): Vec2 => [dot2([x, y], sight.right), z];

/** The leftmost and the rightmost point of an end's face. */
export function extremes(
  end: End,
  face: "inside" | "middle" | "outside",
  sight: Sight,
): readonly [Vec2, Vec2] {
  const points = curveOf(end.curves, face).map((p) => project(sight, p));
  const pick = (way: 1 | -1): Vec2 => points.reduce((best, p) => (way * p[0] > way * best[0] ? p : best));
  return [pick(-1), pick(1)];
}

/** One view from the side, and where it stands on the sheet. */
interface Side {
  readonly sight: Sight;
  readonly at: Vec2;
  readonly unit: number;
}

/** Does the skin face the eye along an element? Its outward normal tells. */
const facing = ({ eye }: Sight, planDeg: number): number => dot2(direction(radians(planDeg)), eye);

/** Where every element line lies in a view from the side; those at the back are hidden. */
export function elevationLines(report: Drawable, { sight, at, unit }: Side): ElementLine[] {
  const step = lineStride(report, unit);
  const place = (p: SpacePoint): Vec2 => add2(project(sight, p), at);
  return report.solid.elements.map(({ planDeg, a, b }, i) => {
    const drawn = isDrawn(report, i, step);
    const shown = facing(sight, planDeg) < -EDGE_ON ? "hidden" : drawn ? "line" : "left out";
    return { elements: [i], from: place(a), to: place(b), shown };
  });
}

/**
 * Lines of a view from the side. The skin is the side of the convex hull of its ends, so its outline is the hull of
 * their outlines, and an element is seen if its outward normal points to the eye.
 */
export function elevation(
  report: Drawable,
  { ends, sight, at, unit }: Side & { ends: { a: End; b: End } },
): Stroke[] {
  const { solid, part } = report;
  const step = lineStride(report, unit);
  const place = (p: Vec2): Vec2 => add2(p, at);
  const faces = (end: End) => [...extremes(end, "outside", sight), ...extremes(end, "inside", sight)];
  const strokes: Stroke[] = [closed("outline", hull([...faces(ends.a), ...faces(ends.b)]).map(place))];
  if (part.thickness / unit >= SEEN_WALL && solid.a.inside.length > 0 && solid.b.inside.length > 0) {
    const [a, b] = [extremes(ends.a, "inside", sight), extremes(ends.b, "inside", sight)];
    for (const side of [0, 1] as const) strokes.push(line("hidden", place(a[side]), place(b[side])));
  }
  const seen = (planDeg: number): boolean => facing(sight, planDeg) > EDGE_ON;
  const drawn = (kind: "thin" | "outline", i: number, one: { a: SpacePoint; b: SpacePoint }): Stroke =>
    element(kind, [i], place(project(sight, one.a)), place(project(sight, one.b)));
  for (const [i, one] of solid.elements.entries())
    if (i % step === 0 && seen(one.planDeg)) strokes.push(drawn("thin", i, one));
  for (const [i, one] of solid.elements.entries())
    if (isSeamLine(report, i) && seen(one.planDeg)) strokes.push(drawn("outline", i, one));
  return strokes;
}

/** Upright centre lines of both ends, one where they stand over each other. */
export function axes(
  { ends, sight, at, unit }: { ends: readonly Vec2[]; sight: Sight; at: Vec2; unit: number },
  heights: readonly [number, number],
): Stroke[] {
  const places = ends.map((centre): Vec2 => [dot2(centre, sight.right), 0]);
  const apart = places.filter((p, i) => i === 0 || distance2(p, places[0] as Vec2) > SAME_POINT_MM);
  return apart.map(([x]) =>
    line("centre", add2([x, heights[0] - 4 * unit], at), add2([x, heights[1] + 4 * unit], at)),
  );
}
