import { radians } from "../../geometry/angle.ts";
import { add2, direction, dot2, type Vec2 } from "../../geometry/vector.ts";
import type { Drawable } from "../../report/report.ts";
import type { Board } from "../board.ts";
import { boxOf, grow, meet } from "../box.ts";
import { leader } from "../dimension/leader.ts";
import { angleText } from "../format.ts";
import { labelCorners, textWidth } from "../lettering.ts";
import type { Box } from "../model.ts";
import { inPlan } from "./ends.ts";

/** More seams than this are not named one by one. */
const MOST_SEAMS = 4;

/** Where the seams lie, in the view from above. */
export function nameSeams(board: Board, { report, at }: { report: Drawable; at: Vec2 }): void {
  const { seams } = report.solid;
  // Many seams stand evenly round: the first and the step between them say where all are.
  const [first, second] = seams;
  const every = seams.length > MOST_SEAMS && first && second ? second.planDeg - first.planDeg : undefined;
  for (const { planDeg, a, b } of every === undefined ? seams : seams.slice(0, 1)) {
    const [p, q] = inPlan([a, b]) as [Vec2, Vec2];
    // At the outer end, so that the leader crosses no lines.
    const out = direction(radians(planDeg));
    const tip = add2(dot2(p, out) > dot2(q, out) ? p : q, at);
    const turn = [25, -25, 40, -40, 60, -60, 90, -90];
    const ways = leader(board, {
      tip,
      text: `seam ${angleText(planDeg)}${every === undefined ? "" : `, then every ${angleText(Math.abs(every))}`}`,
      directionsDeg: turn.map((one) => planDeg + one),
      lengthsMm: [12, 18, 24, 32, 40, 8],
      role: "name",
    });
    board.put("seam", ways, Infinity);
  }
}

/** A view's name so near to a dimension's lettering reads as its second line; what that costs, in the board's measure. [mm of paper] */
const APART = 4;
const READS_ON = 11;

/** What each view is, under it or above it. */
export function nameViews(board: Board, views: readonly { text: string; box: Box }[]): void {
  for (const { text, box } of views) {
    const middle = (box.left + box.right) / 2;
    const cap = board.paper.capsMm.small;
    // Under the view or above its corners; else beside its middle line, clear of the centre line there.
    const at = (gap: number, x: number, above: boolean): Vec2 => [
      x,
      above ? box.top + board.mm(gap) : box.bottom - board.mm(gap + cap),
    ];
    const aside = board.mm(textWidth(text, cap) / 2 + 1.5);
    const gaps = [6, 10, 14, 18, 22, 26];
    const places = [
      ...gaps.flatMap((gap) => [
        at(gap, middle, false),
        at(gap, box.left, false),
        at(gap, box.right, false),
        at(gap, box.left, true),
        at(gap, box.right, true),
      ]),
      ...gaps.flatMap((gap) =>
        [false, true].flatMap((above) => [
          at(gap, middle - aside, above),
          at(gap, middle + aside, above),
          at(gap, box.left - aside, above),
          at(gap, box.right + aside, above),
        ]),
      ),
    ];
    const sizes = board.labels
      .filter(({ role }) => role === "dimension")
      .map((one) => boxOf(labelCorners(one)));
    board.put(
      `view ${text}`,
      places.map((place) => {
        const label = board.label(text, place, { role: "name", size: "small" });
        const room = grow(boxOf(labelCorners(label)), board.mm(APART));
        const reads = sizes.some((one) => meet(room, one));
        return { strokes: [], labels: [label], extra: reads ? READS_ON : 0 };
      }),
    );
  }
}
