import { SAME_POINT_MM } from "../geometry/tolerance.ts";
import { add2, left2, scale2, sub2, unit2, type Vec2 } from "../geometry/vector.ts";
import type { Blank, MarkingRow, Report } from "../report/report.ts";
import type { Board, Placing } from "./board.ts";
import { slope } from "./dimension/angular.ts";
import { linearDimension } from "./dimension/linear.ts";
import { dimension, type Units, drawnUnit } from "./format.ts";
import { type Drawing, line } from "./model.ts";
import type { Paper } from "./paper.ts";
import { rowsOf } from "./pattern/lines.ts";
import { fitSheet } from "./sheet.ts";
import { numberFeet } from "./trueShape/feet.ts";

/** Lengths that differ by less than the drawing's last figure share one line. [mm] */
const ALIKE = 0.05;

/** Lines of one true length: how long they are in plan, and the numbers of their rows. */
interface Ray {
  readonly planMm: number;
  readonly trueMm: number;
  readonly numbers: number[];
}

interface Line {
  readonly planMm: number;
  readonly trueMm: number;
  readonly number: number;
}

/** Lines of like length put together, the shortest first. */
function rays(lines: readonly Line[]): Ray[] {
  const out: Ray[] = [];
  for (const { planMm, trueMm, number } of [...lines].sort((p, q) => p.planMm - q.planMm)) {
    const like = out.find((ray) => Math.abs(ray.planMm - planMm) < ALIKE);
    if (like) like.numbers.push(number);
    else out.push({ planMm, trueMm, numbers: [number] });
  }
  return out;
}

const element = (n: number): string => String(n);
/** A diagonal runs from its line's point on end A to the next line's on end B. */
const diagonal = (n: number): string => `${n}/${n + 1}`;

/** Names in a row, runs drawn together: 1, 4 to 7, 12. */
function listed(numbers: readonly number[], name: (n: number) => string): string {
  const runs: [number, number][] = [];
  for (const n of [...numbers].sort((p, q) => p - q)) {
    const open = runs.at(-1);
    if (open && n <= open[1] + 1) open[1] = n;
    else runs.push([n, n]);
  }
  const shown = runs.flatMap(([from, to]) => {
    if (to - from < 2) return from === to ? [name(from)] : [name(from), name(to)];
    return [`${name(from)} to ${name(to)}`];
  });
  return shown.join(", ");
}

/** Plan lengths of the diagonals: from a line's point on end A to the next line's on end B. √(true² − H²) */
function diagonals(rows: readonly MarkingRow[], heightMm: number): Line[] {
  return rows.flatMap(({ next, number }) => {
    if (!next) return [];
    const trueMm = next.diagonalMm;
    return [{ planMm: Math.sqrt(Math.max(0, trueMm ** 2 - heightMm ** 2)), trueMm, number }];
  });
}

/**
 * The true-length diagram of the layout by hand: on an upright of the part's height, plan lengths are stepped off along the
 * base, elements to the right and diagonals to the left; the slopes are true lengths.
 */
export function trueShapeDrawing(report: Report, { paper, blank }: { paper: Paper; blank: Blank }): Drawing {
  const { part } = report;
  const rows = rowsOf(report, blank);
  const heightMm = laidHeight(rows) ?? report.shape.heightMm;
  const right = rays(rows);
  const left = rays(diagonals(rows, heightMm));
  const reach = (list: readonly Ray[]) => Math.max(0, ...list.map((ray) => ray.planMm));
  const which = report.blanks.length > 1 ? `, piece ${blank.piece}` : "";
  const note = diagonalNote(rows, part.units);
  return fitSheet(
    {
      paper,
      core: { widthMm: reach(left) + reach(right), heightMm },
      text: {
        title: `True lengths of ${part.title}${which}`,
        description:
          `Right-angled triangles of height ${dimension(heightMm, part.units)}: plan length along the base, true length as the slope. ` +
          right
            .map((ray) => `Line ${listed(ray.numbers, element)}: ${dimension(ray.trueMm, part.units)}`)
            .join("; ") +
          ".",
        lines: [
          part.title,
          `True-length diagram${which}: elements on the right; on the left diagonals, 1/2 from line 1 at end A to line 2 at end B. Sizes in ${drawnUnit(part.units)}.`,
          ...(note === undefined ? [] : [`${note}.`]),
        ],
        ...(note !== undefined && { brief: note }),
      },
    },
    (board) => drawDiagram(board, { left, right, heightMm, units: part.units }),
  );
}

/** Why the marking table has other diagonals, where it has. */
const diagonalNote = (rows: readonly MarkingRow[], units: Units): string | undefined =>
  rows.some(
    ({ next }) => next && dimension(next.diagonalMm, units) !== dimension(next.flat.diagonalMm, units),
  )
    ? "Diagonals run straight through space; those of the marking table lie on the plate"
    : undefined;

/** Height of the surface that is laid out: with square edges a little less than over all. [mm] */
function laidHeight(rows: readonly MarkingRow[]): number | undefined {
  const row = rows[0];
  return row && Math.sqrt(Math.max(0, row.trueMm ** 2 - row.planMm ** 2));
}

function drawDiagram(
  board: Board,
  {
    left,
    right,
    heightMm,
    units,
  }: { left: readonly Ray[]; right: readonly Ray[]; heightMm: number; units: Units },
): void {
  const top: Vec2 = [0, heightMm];
  const foot = (ray: Ray, side: 1 | -1): Vec2 => [side * ray.planMm, 0];
  const reach = (list: readonly Ray[]) => Math.max(0, ...list.map((ray) => ray.planMm));
  const past = board.mm(6);
  board.draw(
    line("outline", [0, 0], top),
    line("outline", [-reach(left) - (left.length > 0 ? past : 0), 0], [reach(right) + past, 0]),
  );
  for (const [list, side] of [
    [right, 1],
    [left, -1],
  ] as const)
    for (const ray of list) if (ray.planMm > SAME_POINT_MM) board.draw(line("thin", foot(ray, side), top));

  board.put(
    "height",
    linearDimension(board, {
      from: [-reach(left), 0],
      to: top,
      along: [0, 1],
      text: board.length(heightMm, units),
      offsetsMm: [11, 15, 19],
    }),
    Infinity,
  );
  const sides = [
    { list: right, side: 1, name: element, text: "elements" },
    { list: left, side: -1, name: diagonal, text: "diagonals" },
  ] as const;
  numberFeet(
    board,
    sides.flatMap(({ list, side, name }) =>
      list.map((ray) => ({ x: side * ray.planMm, text: listed(ray.numbers, name) })),
    ),
  );
  for (const { list, side } of sides)
    for (const ray of ends(list)) {
      const text = board.length(ray.trueMm, units).main;
      board.put(`true length ${text}`, alongSlope(board, { foot: foot(ray, side), top, text }), 30);
    }
  for (const { list, side, text } of sides) {
    if (list.length === 0) continue;
    const places = [0.5, 0.8, 0.3, 1].map((share): Vec2 => {
      const out = Math.max(reach(list) * share, board.mm(14));
      return [side * out, heightMm + board.mm(3)];
    });
    const labels = places.map((at) => board.label(text, at, { role: "name", size: "small" }));
    board.put(
      text,
      labels.map((label) => ({ strokes: [], labels: [label] })),
    );
  }
}

/** The longest and the shortest line: their true lengths stand along them; the table has them all. */
const ends = (list: readonly Ray[]): Ray[] =>
  [...new Set([list.at(-1), list[0]])].filter((ray) => ray !== undefined);

function alongSlope(board: Board, { foot, top, text }: { foot: Vec2; top: Vec2; text: string }): Placing[] {
  const dir = unit2(sub2(top, foot));
  const cap = board.paper.capsMm.small;
  return [0.35, 0.5, 0.25, 0.6].flatMap((share) =>
    ([1, -1] as const).map((side): Placing => {
      const on = add2(foot, scale2(sub2(top, foot), share));
      const at = add2(on, scale2(left2(dir), side * board.mm(0.9 + cap / 2)));
      return {
        strokes: [],
        labels: [board.label(text, at, { role: "dimension", size: "small", alongDeg: slope(dir) })],
      };
    }),
  );
}
