import { radians } from "../../geometry/angle.ts";
import { add2, direction, scale2, unit2, type Vec2 } from "../../geometry/vector.ts";
import type { Board, Placing } from "../board.ts";
import { arrowhead } from "../dimension/arrow.ts";
import { textWidth } from "../lettering.ts";
import { circle, closed, line, type Stroke } from "../model.ts";
import type { Frame } from "./axes.ts";

/** One numbered dot of a plot; the key beside the plot says what it is. */
export interface Dot {
  readonly x: number;
  readonly y: number;
  readonly number: string;
  /** What it stands for does not go, for a reason that the plot does not show: a cross in place of the dot. */
  readonly crossed?: boolean;
}

/** [mm of paper] */
const RADIUS = 0.9;
/** Length and half the width of a cross's arms: they stand out from under a dot of the same place. [mm of paper] */
const [ARM, HALF_ARM] = [1.5, 0.28];
/** How far the number stands from its dot; beyond the last but two a line leads to it. [mm of paper] */
const REACHES = [0.8, 1.6, 2.6, 5, 8, 12, 16];
const LEADER_FROM = 4;
const DIRECTIONS = [45, 0, 90, -45, 135, 180, -90, -135];

/** A cross, filled, so that hatching stays clear of it as of a dot. */
function cross(place: Vec2, mm: (ofPaper: number) => number): Stroke {
  const [long, half] = [mm(ARM), mm(HALF_ARM)];
  const arms = [45, 135, 225, 315].flatMap((deg) => {
    const [out, side] = [direction(radians(deg)), direction(radians(deg + 90))];
    return [
      [long, -half],
      [long, half],
      [half, half],
    ].map(([u = 0, v = 0]): Vec2 => add2(place, add2(scale2(out, u), scale2(side, v))));
  });
  return closed("arrow", arms);
}

/** Dots of one place are one dot with all their numbers: one drawn on another would hide that there are two. */
function oneEach(dots: readonly Dot[]): Dot[] {
  const places = new Map<string, Dot>();
  for (const dot of dots) {
    const place = `${dot.x} ${dot.y} ${dot.crossed ?? false}`;
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
  for (const { dot, place, out } of placed) {
    if (out[0] > 0 || out[1] > 0) board.draw(arrowhead(place, unit2(out), board.unit));
    else if (dot.crossed) board.draw(cross(place, mm));
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
