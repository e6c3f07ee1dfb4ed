import { add2, distance2, left2, scale2, sub2, unit2, type Vec2 } from "../../geometry/vector.ts";
import type { Board, Figure, Placing } from "../board.ts";
import { textWidth } from "../lettering.ts";
import { line } from "../model.ts";
import { lazily, once, type Ways } from "../ways.ts";
import { slope } from "./angular.ts";
import { ARROW_LONG, arrowhead } from "./arrow.ts";

/** A figure beyond its arc is liked less, in the board's measure. */
const BEYOND_EXTRA = 8;

/**
 * Ways to dimension a radius (ISO 129-1): a line from the centre, or from a place short of it, to a point of the arc with its
 * arrowhead there. The figure stands beside the line at each share of its length, then within it, then beyond the arc.
 */
export function radiusDimension(
  board: Board,
  what: { start: Vec2; tips: readonly Vec2[]; text: Figure; shares: readonly number[]; beyond?: boolean },
): Ways {
  const { unit } = board;
  const cap = board.paper.capsMm.figure;
  const lines = [what.text.main, ...(what.text.second === undefined ? [] : [what.text.second])];
  const long = Math.max(...lines.map((one) => textWidth(one, cap))) * unit;
  const ways = function* (tip: Vec2): Generator<() => Placing> {
    const out = unit2(sub2(tip, what.start));
    const run = distance2(tip, what.start);
    const on = (reach: number, aside = 0): Vec2 =>
      add2(add2(what.start, scale2(out, reach)), scale2(left2(out), aside * 0.9 * cap * unit));
    const label = (text: string, at: Vec2) =>
      board.label(text, at, { role: "dimension", alongDeg: slope(out) });
    const head = once(() => arrowhead(tip, out, unit));
    // The same for each place of the figure: what a line costs is looked at once.
    const whole = once(() => [line("dimension", what.start, tip), head()]);
    const middles = what.shares.map((share) => Math.min(Math.max(share * run, long / 2), run - long / 2));

    const beside = (middle: number, side: 1 | -1): Placing => ({
      strokes: whole(),
      labels: lines.map((text, i) => label(text, on(middle, i === 0 ? side : -side))),
    });
    // The head keeps clear of the figure.
    const furthest = run - (ARROW_LONG + 2) * unit - long / 2;
    const broken = (wanted: number): Placing => {
      const middle = Math.max(Math.min(wanted, furthest), long / 2);
      const [before, after] = [middle - long / 2 - unit, middle + long / 2 + unit];
      const pieces = before > 0 ? [line("dimension", what.start, on(before))] : [];
      return {
        strokes: [...pieces, line("dimension", on(Math.min(after, run)), tip), head()],
        labels: [label(what.text.main, on(middle))],
      };
    };
    const past = (): Placing => ({
      extra: BEYOND_EXTRA,
      strokes: whole(),
      labels: [label(what.text.main, on(run + 1.5 * unit + long / 2))],
    });
    const fits = long + (ARROW_LONG + 1) * unit < run;
    if (fits) {
      for (const middle of middles) {
        yield () => beside(middle, 1);
        yield () => beside(middle, -1);
      }
      for (const middle of middles) yield () => broken(middle);
    }
    if (what.beyond === true) yield past;
  };
  return lazily(function* () {
    for (const tip of what.tips) yield* ways(tip);
  });
}
