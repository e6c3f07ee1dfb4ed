import { TURN } from "../geometry/angle.ts";
import type { Pen } from "./pen.ts";

/** Less than this an arc does not turn. [rad] */
const NO_TURN = 1e-6;

/** A pen that writes the `d` of an SVG path, to three decimals. Millimetres of paper, y down; what it wrote is its text. */
export function pathText(): Pen & { readonly toString: () => string } {
  let d = "";
  const n = (value: number): number => Math.round(value * 1000) / 1000;
  const place = (x: number, y: number): string => `${n(x)},${n(y)}`;
  return {
    moveTo: (x, y) => {
      d += `M${place(x, y)}`;
    },
    lineTo: (x, y) => {
      d += `L${place(x, y)}`;
    },
    arc(cx, cy, radius, from, to) {
      const turn = Math.abs(to - from);
      if (radius === 0 || turn <= NO_TURN) return;
      const at = (angle: number) => place(cx + radius * Math.cos(angle), cy + radius * Math.sin(angle));
      // An arc that ends where it begins, to the decimals that are written, would not be drawn: two halves are.
      const whole = turn > TURN - NO_TURN;
      const inTwo = whole || (turn >= Math.PI && at(from) === at(to));
      const isLarge = whole || (!inTwo && turn >= Math.PI);
      const arc = `A${n(radius)},${n(radius)},0,${isLarge ? 1 : 0},${to > from ? 1 : 0},`;
      d += `${inTwo ? arc + at((from + to) / 2) : ""}${arc}${at(to)}`;
    },
    closePath: () => {
      d += "Z";
    },
    toString: () => d,
  };
}
