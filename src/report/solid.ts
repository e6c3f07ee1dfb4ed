import { TURN } from "../geometry/angle.ts";
import type { Rim, Side } from "../geometry/rim.ts";
import type { Skin } from "../geometry/skin.ts";
import type { Station } from "../geometry/station.ts";
import { distance2, type Vec2 } from "../geometry/vector.ts";
import type { Face, Layout } from "../shapes/layout.ts";
import { type LaidBlank, planDegrees } from "./blanks.ts";
import type { Solid, SpacePoint } from "./report.ts";

/** Points round a rim for drawing: every 5°, and both ends of every straight side. */
const DRAWN_STEPS = 72;

function curve(rim: Rim, level: number): SpacePoint[] {
  const thetas = Array.from({ length: DRAWN_STEPS }, (_, i) => (i * TURN) / DRAWN_STEPS);
  const all = [...thetas, ...rim.breaks].sort((p, q) => p - q);
  const points: Vec2[] = [];
  // Only a break has two limits.
  const sides: readonly Side[] = rim.breaks.length > 0 ? [-1, 1] : [1];
  for (const theta of all)
    for (const side of sides) {
      const p = rim.point(theta, side);
      const last = points.at(-1);
      if (!last || distance2(last, p) > 0) points.push(p);
    }
  // The first normal angle is nought, which may itself be a break: then the loop began at the far end of its side.
  if (points.length > 1 && distance2(points[0] as Vec2, points.at(-1) as Vec2) === 0) points.pop();
  return points.map(([x, y]) => [x, y, level]);
}

function faceCurves(faces: Layout["faces"], end: "a" | "b"): Record<Face, SpacePoint[]> {
  const of = (face: Face): SpacePoint[] => {
    const skin: Skin | null = faces[face];
    return skin ? curve(skin[end], skin.baseMm + (end === "b" ? skin.heightMm : 0)) : [];
  };
  return { inside: of("inside"), middle: of("middle"), outside: of("outside") };
}

const line = ({ theta, a, b }: Station) => ({ planDeg: planDegrees(theta), a, b });

/** Curves and lines in space that the views are drawn from. */
export function solidOf(layout: Layout, laid: readonly LaidBlank[]): Solid {
  return {
    heightMm: layout.heightMm,
    a: faceCurves(layout.faces, "a"),
    b: faceCurves(layout.faces, "b"),
    elements: laid.flatMap(({ elements }) => elements.map(({ station }) => line(station))),
    seams: laid.flatMap(({ elements }) => elements.slice(0, 1).map(({ station }) => line(station))),
  };
}
