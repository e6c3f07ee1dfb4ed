import { degrees } from "../../geometry/angle.ts";
import { add2, direction, left2, scale2, type Vec2 } from "../../geometry/vector.ts";
import type { Board, Placing } from "../board.ts";
import { textWidth } from "../lettering.ts";
import { arc, type Stroke } from "../model.ts";
import { arcPoint } from "../pen.ts";
import { lazily, once, type Ways } from "../ways.ts";
import { ARROW_LONG, arrowhead } from "./arrow.ts";

/** An arc with arrowheads at its ends; where it is too short for them they point in from outside. */
function arrowedArc(
  board: Board,
  { centre, radius, fromRad, toRad }: { centre: Vec2; radius: number; fromRad: number; toRad: number },
): Stroke[] {
  const { unit } = board;
  const inside = radius * (toRad - fromRad) > (2 * ARROW_LONG + 1.5) * unit;
  // A head is as long as its chord, so it is turned by half the angle it spans, to lie along the arc.
  const lean = ((ARROW_LONG * unit) / radius / 2) * (inside ? 1 : -1);
  const head = (at: number, way: 1 | -1): Stroke => {
    const tangent = left2(direction(at - way * lean));
    return arrowhead(arcPoint({ centre, radius }, at), scale2(tangent, inside ? way : -way), unit);
  };
  const run = inside ? 0 : ((ARROW_LONG + 2) * unit) / radius;
  return [
    arc("dimension", { centre, radius, fromRad: fromRad - run, toRad: toRad + run }),
    head(fromRad, -1),
    head(toRad, 1),
  ];
}

/** Where along its arc a figure stands, and on which side: outside 1, inside −1. */
const PLACES: readonly (readonly [number, 1 | -1])[] = [
  [0.5, 1],
  [0.5, -1],
  [0.35, 1],
  [0.65, 1],
  [0.35, -1],
  [0.65, -1],
];

/** Ways to dimension an angle: an arc at each radius (mm of the part), the figure at its middle, outside or inside it. */
export function angularDimension(
  board: Board,
  what: { centre: Vec2; fromRad: number; toRad: number; radii: readonly number[]; text: string },
): Ways {
  const cap = board.paper.capsMm.figure;
  const long = textWidth(what.text, cap);
  const ways = function* (radius: number): Generator<() => Placing> {
    const strokes = once(() => arrowedArc(board, { ...what, radius }));
    const at = (share: number, side: 1 | -1): Placing => {
      const angle = what.fromRad + share * (what.toRad - what.fromRad);
      const out = direction(angle);
      // Half the room of level lettering in this direction, and a little.
      const room = (Math.abs(out[0]) * long + Math.abs(out[1]) * cap * 1.4) / 2 + 1;
      const place = add2(what.centre, scale2(out, radius + side * board.mm(room)));
      return { strokes: strokes(), labels: [board.label(what.text, place, { role: "dimension" })] };
    };
    for (const [share, side] of PLACES) yield () => at(share, side);
  };
  return lazily(function* () {
    for (const radius of what.radii) yield* ways(radius);
  });
}

/** Direction of a point seen from a centre. [rad] */
export const bearing = (centre: Vec2, p: Vec2): number => Math.atan2(p[1] - centre[1], p[0] - centre[0]);

/** Reading direction of a line. [degrees] */
export const slope = (dir: Vec2): number => degrees(Math.atan2(dir[1], dir[0]));
