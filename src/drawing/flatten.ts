import type { Vec2 } from "../geometry/vector.ts";
import type { Shape } from "./model.ts";
import { arcPoint } from "./pen.ts";

/** An arc is measured and tested as this many chords a turn: within a five-hundredth of its radius. */
const CHORDS_A_TURN = 48;

/** The corners of a shape; arcs as chords, a closed path back to its first point. */
export function flatten(shape: Shape): readonly Vec2[] {
  switch (shape.type) {
    case "path":
      return shape.closed && shape.points[0] ? [...shape.points, shape.points[0]] : shape.points;
    case "arc": {
      const sweep = shape.toRad - shape.fromRad;
      const count = Math.max(2, Math.ceil((Math.abs(sweep) / (2 * Math.PI)) * CHORDS_A_TURN));
      return Array.from({ length: count + 1 }, (_, i) =>
        arcPoint(shape, shape.fromRad + (sweep * i) / count),
      );
    }
    default:
      return shape satisfies never;
  }
}
