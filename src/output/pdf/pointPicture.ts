import { createBoard, type Placing } from "../../drawing/board.ts";
import { boxOf, grow, height, meet, touch, width } from "../../drawing/box.ts";
import { labelCorners } from "../../drawing/lettering.ts";
import { type Box, type Label, line, path, type Stroke } from "../../drawing/model.ts";
import { checkDistance, columnLength } from "../../drawing/format.ts";
import { FULL } from "../../drawing/paper.ts";
import type { Units } from "../../geometry/units.ts";
import { add2, scale2, type Vec2 } from "../../geometry/vector.ts";
import type { MarkingPoint } from "./markingPoints.ts";
import type { Template } from "./template.ts";

/** A marking point on a template, turned as that is: arms of its cross lie along the base line and square to it. */
export interface PointOnTemplate extends MarkingPoint {
  readonly on: Vec2;
  readonly nextOn: Vec2;
  readonly along: Vec2 | null;
  /** Directions of x and y. */
  readonly arms: readonly [Vec2, Vec2];
}

/** Half a cross, and half the line that touches the edge. [mm] */
const [ARM_MM, TOUCH_MM] = [4, 15];
const LETTERS = { capMm: 2.5, stepMm: 4.2 };
/** From a cross to what is written beside it; beyond the second a line leads to it. [mm] */
const FAR = [7, 9, 14, 20, 28, 38];
const LED = 9;
/** Lettering keeps so far within what is printed. [mm] */
const WITHIN = 1;
/** The name alone is liked less, in the measure of the board. */
const NAME_ALONE = 30;

/** Marking points as the template lies. */
export const pointsOn = (
  points: readonly MarkingPoint[],
  turn: (p: Vec2) => Vec2,
): readonly PointOnTemplate[] =>
  points.map((one) => ({
    ...one,
    on: turn(one.at),
    nextOn: turn(one.next.at),
    along: one.tangent && turn(one.tangent),
    arms: [turn([1, 0]), turn([0, 1])],
  }));

/** What stands beside a marking point: its name, where it lies, how far it is to the next. */
const pointLines = ({ name, at: [x, y], next }: MarkingPoint, units: Units): string[] => [
  name,
  `x ${columnLength(x, units)}, y ${columnLength(y, units)}`,
  `to ${next.mark}: ${checkDistance(next.mm, units)}`,
];

/** A cross on every point, a line that touches the edge, and one straight to the next where that runs clear of the edge. */
const pointStrokes = (points: readonly PointOnTemplate[]): Stroke[] =>
  points.flatMap(({ on, nextOn, along, arms, next }) => [
    ...arms.map((arm) => line("dimension", add2(on, scale2(arm, -ARM_MM)), add2(on, scale2(arm, ARM_MM)))),
    ...(along ? [line("hidden", add2(on, scale2(along, -TOUCH_MM)), add2(on, scale2(along, TOUCH_MM)))] : []),
    ...(next.isNear ? [] : [line("centre", on, nextOn)]),
  ]);

/** Crosses and lines of all points, and beside those on one sheet what they are, as far as it goes there without covering anything. */
export function pointPicture(
  points: readonly PointOnTemplate[],
  template: Pick<Template, "edges" | "lines" | "labels">,
  { field, units }: { field: Box; units: Units },
): { readonly strokes: readonly Stroke[]; readonly labels: readonly Label[] } {
  const strokes = pointStrokes(points);
  const board = createBoard(FULL, 1);
  const seen = grow(field, 2 * WITHIN);
  for (const [kind, pieces] of [
    ["outline", template.edges],
    ["thin", template.lines],
  ] as const)
    board.draw(...pieces.filter((piece) => touch(boxOf(piece), seen)).map((piece) => path(kind, piece)));
  board.draw(...strokes.filter(({ shape }) => shape.type === "path" && touch(boxOf(shape.points), seen)));
  for (const one of template.labels.filter((label) => meet(boxOf(labelCorners(label)), seen)))
    board.tried([{ strokes: [], labels: [one] }], Infinity);
  const before = { strokes: board.strokes.length, labels: board.labels.length };
  const room = grow(field, -WITHIN);
  for (const one of points.filter(({ on }) => isWithin(boxOf([on]), field)))
    board.put(one.name, beside(board, one, { room, units }), Infinity);
  return {
    strokes: [...strokes, ...board.strokes.slice(before.strokes)],
    labels: board.labels.slice(before.labels),
  };
}

/** Ways to write beside a point, nearest first, all lines or the name alone. */
function beside(
  board: ReturnType<typeof createBoard>,
  point: PointOnTemplate,
  { room, units }: { room: Box; units: Units },
): Placing[] {
  const lines = pointLines(point, units);
  return [lines, lines.slice(0, 1)].flatMap((texts, k) =>
    FAR.flatMap((far) =>
      ROUND.map((turn): Placing => {
        const way: Vec2 = [Math.cos(turn), Math.sin(turn)];
        const labels = blockOf(board, texts, add2(point.on, scale2(way, far)), way);
        const lead = line(
          "dimension",
          add2(point.on, scale2(way, ARM_MM)),
          add2(point.on, scale2(way, far - 1)),
        );
        return { labels, strokes: far > LED ? [lead] : [], extra: k * NAME_ALONE };
      }).filter(({ labels }) => labels.every((one) => isWithin(boxOf(labelCorners(one)), room))),
    ),
  );
}

const ROUND = Array.from({ length: 16 }, (_, i) => ((i * 5 + 2) * Math.PI) / 8);

/** Lines one below the other, so that the block's nearest side or corner stands at a place. */
function blockOf(
  board: ReturnType<typeof createBoard>,
  texts: readonly string[],
  [x, y]: Vec2,
  [dx, dy]: Vec2,
): Label[] {
  const labels = texts.map((text) => ({
    ...board.label(text, [0, 0], { role: "note", size: "small", anchor: "start" }),
    capMm: LETTERS.capMm,
  }));
  const wide = Math.max(...labels.map((one) => width(boxOf(labelCorners(one)))));
  const high =
    (texts.length - 1) * LETTERS.stepMm + Math.max(...labels.map((one) => height(boxOf(labelCorners(one)))));
  const left = x + (wide / 2) * (dx - 1);
  const top = y + (high / 2) * (dy + 1);
  return labels.map((one, i) => ({ ...one, at: [left, top - LETTERS.capMm / 2 - i * LETTERS.stepMm] }));
}

const isWithin = (a: Box, b: Box): boolean =>
  a.left >= b.left && a.right <= b.right && a.bottom >= b.bottom && a.top <= b.top;
