import { radians } from "../../geometry/angle.ts";
import { hull } from "../../geometry/polygon.ts";
import { add2, direction, dot2, sub2, unit2, type Vec2 } from "../../geometry/vector.ts";
import type { Report } from "../../report/report.ts";
import type { Board } from "../board.ts";
import { boxOf, height, width } from "../box.ts";
import { isSeamLine } from "../dense.ts";
import { closed, type Drawing, line } from "../model.ts";
import type { Paper } from "../paper.ts";
import { fitSheet } from "../sheet.ts";
import { curveOf, inPlan } from "../views/ends.ts";

type BrakePlan = NonNullable<Report["forming"]["plans"][number]["brake"]>;

/** A corner of the rectangular end as the bend lines name it. */
export interface NamedCorner {
  readonly name: string;
  readonly at: Vec2;
  /** Which way it points from the middle, seen from above. [degrees] */
  readonly towardsDeg: number;
}

const QUARTER_DEG = 90;

/** Where the corners of the bend lines stand, seen from above; none where an end is not rectangular. */
export function namedCorners(report: Report, plan: BrakePlan): readonly NamedCorner[] {
  if (report.part.shape !== "square-to-round") return [];
  const ring = hull(inPlan(curveOf(report.solid.a, "outside")));
  const many = report.blanks.length > 1;
  const shared = new Set<string>();
  return plan.zones.flatMap(({ piece, zone }): NamedCorner[] => {
    const own = plan.lines.filter((one) => one.piece === piece && one.zone === zone);
    const middle = own[own.length >> 1];
    if (!middle) return [];
    // Lines of a corner touch it from all sides of its quarter; its flats lie square to the axes.
    const towardsDeg = (Math.floor(middle.planDeg / QUARTER_DEG) + 1 / 2) * QUARTER_DEG;
    const away = direction(radians(towardsDeg));
    const at = ring.reduce((best, one) => (dot2(one, away) > dot2(best, away) ? one : best));
    const name = `corner ${zone}${many ? ` of piece ${piece}` : ""}`;
    if (shared.has(name)) return [];
    shared.add(name);
    return [{ name, at, towardsDeg }];
  });
}

/** Both ends from above with the names of the corners, the seams, and where 0° is: which corner is which when it is measured. Undefined where there are none. */
export function cornerSketch(
  report: Report,
  { paper, plan }: { paper: Paper; plan: BrakePlan },
): Drawing | undefined {
  const corners = namedCorners(report, plan);
  if (corners.length === 0) return undefined;
  const { part, solid } = report;
  const [a, b] = [solid.a, solid.b].map((curves) => hull(inPlan(curveOf(curves, "outside"))));
  const box = boxOf([...(a ?? []), ...(b ?? [])]);
  return fitSheet(
    {
      paper,
      core: { widthMm: width(box), heightMm: height(box) },
      text: {
        title: `Corners of ${part.title}, from above`,
        description: corners.map(({ name, towardsDeg }) => `${name} towards ${towardsDeg}°`).join("; "),
        lines: [part.title, "From above, the round end up."],
        brief: "From above, the round end up",
      },
    },
    (board) => {
      for (const ring of [a, b]) if (ring) board.draw(closed("outline", ring));
      drawSeams(board, report, [(box.left + box.right) / 2, (box.bottom + box.top) / 2]);
      for (const one of corners) board.put(one.name, cornerWays(board, one));
      const right: Vec2 = [box.right, (box.bottom + box.top) / 2];
      board.put("0°", [
        {
          strokes: [line("thin", right, add2(right, [board.mm(4), 0]))],
          labels: [
            board.label("0°", add2(right, [board.mm(5), -board.mm(1)]), {
              role: "name",
              size: "small",
              anchor: "start",
            }),
          ],
        },
      ]);
    },
  );
}

/** Outside a corner: beside it, or along its side of the rectangle, where a narrow paper has room. */
function cornerWays(board: Board, { name, at, towardsDeg }: NamedCorner) {
  const { mm } = board;
  const [right, up] = direction(radians(towardsDeg)).map(Math.sign) as [number, number];
  const text = `${name}, ${towardsDeg}°`;
  const [outward, inward] = right > 0 ? (["start", "end"] as const) : (["end", "start"] as const);
  const way = (by: Vec2, anchor: "start" | "end") => ({
    strokes: [],
    labels: [board.label(text, add2(at, by), { role: "name", size: "small", anchor })],
  });
  return [
    ...[1.5, 3, 4.5].map((clear) => way([right * mm(clear), up > 0 ? -mm(2) : 0], outward)),
    ...[2.5, 5.5, 8.5].map((clear) => way([0, up * mm(clear)], inward)),
  ];
}

/** Seams as lines from end to end, each with its name. */
function drawSeams(board: Board, report: Report, middle: Vec2): void {
  const seams = report.solid.elements.filter((_, i) => isSeamLine(report, i));
  seams.forEach(({ a, b }, i) => {
    const [from, to] = inPlan([a, b]) as [Vec2, Vec2];
    board.draw(line("outline", from, to));
    // Beyond its foot, outside the rectangle; seams of sides above each other and beside each other have room there.
    const away = unit2(sub2(from, middle));
    const ways = [2.5, 4, 5.5].map((clear) => ({
      strokes: [],
      labels: [
        board.label(`seam ${i + 1}`, add2(from, [away[0] * board.mm(2 * clear), away[1] * board.mm(clear)]), {
          role: "name",
          size: "small",
        }),
      ],
    }));
    board.put(`seam ${i + 1}`, ways);
  });
}
