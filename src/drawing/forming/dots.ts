import { radians } from "../../geometry/angle.ts";
import { add2, direction, scale2, unit2, type Vec2 } from "../../geometry/vector.ts";
import type { Board, Placing } from "../board.ts";
import { arrowhead } from "../dimension/arrow.ts";
import { textWidth } from "../lettering.ts";
import { circle, line } from "../model.ts";
import type { Frame } from "./axes.ts";

/** One numbered dot of a plot; the key beside the plot says what it is. */
export interface Dot {
  readonly x: number;
  readonly y: number;
  readonly number: string;
}

/** [mm of paper] */
const RADIUS = 0.9;
/** How far the number stands from its dot; beyond the last but two a line leads to it. [mm of paper] */
const REACHES = [0.8, 1.6, 2.6, 5, 8, 12, 16];
const LEADER_FROM = 4;
const DIRECTIONS = [45, 0, 90, -45, 135, 180, -90, -135];

/** Dots of one place are one dot with all their numbers: one drawn on another would hide that there are two. */
function oneEach(dots: readonly Dot[]): Dot[] {
  const places = new Map<string, Dot>();
  for (const dot of dots) {
    const place = `${dot.x} ${dot.y}`;
    const there = places.get(place);
    places.set(place, there ? { ...there, number: `${there.number}, ${dot.number}` } : dot);
  }
  return [...places.values()];
}

/** A dot and its number beside it; what lies outside the plot is shown as an arrowhead at its edge. */
export function drawDots(board: Board, { box, at }: Frame, dots: readonly Dot[]): void {
  const { mm } = board;
  const placed = oneEach(dots).map((dot) => {
    const wanted = at(dot.x, dot.y);
    const edge = mm(RADIUS);
    const place: Vec2 = [
      Math.min(Math.max(wanted[0], box.left), box.right - edge),
      Math.min(Math.max(wanted[1], box.bottom), box.top - edge),
    ];
    const out: Vec2 = [Math.max(0, wanted[0] - box.right), Math.max(0, wanted[1] - box.top)];
    return { dot, place, out };
  });
  for (const { place, out } of placed) {
    if (out[0] > 0 || out[1] > 0) board.draw(arrowhead(place, unit2(out), board.unit));
    else board.draw(circle("arrow", place, mm(RADIUS)));
  }
  const cap = board.paper.capsMm.small;
  for (const { dot, place } of placed) {
    const long = textWidth(dot.number, cap);
    const ways = REACHES.flatMap((reach) =>
      DIRECTIONS.map((deg): Placing => {
        const out = direction(radians(deg));
        const room = RADIUS + reach + (Math.abs(out[0]) * long + Math.abs(out[1]) * cap) / 2;
        const end = add2(place, scale2(out, mm(RADIUS + reach)));
        return {
          strokes: reach > LEADER_FROM ? [line("dimension", place, end)] : [],
          labels: [
            board.label(dot.number, add2(place, scale2(out, mm(room))), { role: "number", size: "small" }),
          ],
        };
      }),
    );
    board.put(`number ${dot.number}`, ways, Infinity);
  }
}
