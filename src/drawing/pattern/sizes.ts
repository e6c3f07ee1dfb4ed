import {
  add2,
  between2,
  distance2,
  dot2,
  left2,
  scale2,
  sub2,
  unit2,
  type Vec2,
} from "../../geometry/vector.ts";
import type { MarkingRow, Report } from "../../report/report.ts";
import type { Board } from "../board.ts";
import { boxOf, height, width } from "../box.ts";
import { coarse } from "../coarse.ts";
import { COARSE } from "../costs.ts";
import { linearDimension } from "../dimension/linear.ts";
import type { Units } from "../format.ts";
import { closed } from "../model.ts";
import { along, type EdgePath, isSeam, straightSides } from "./edges.ts";

/** Lengths that differ by less than the drawing's last figure are one dimension. [mm] */
const ALIKE = 0.05;
const alike = (p: number, q: number): boolean => Math.abs(p - q) < ALIKE;

/** A chord that differs by less from the overall size tells nothing new. [-] */
const NEARLY = 0.01;

/** Dimension lines lie outside the blank: to the right of its outline, which runs counter-clockwise. [mm of paper] */
const OUTSIDE = [-8, -12, -16, -22];
const INSIDE = [8, 12, 16];
/** The same where none fits outside: so far in that the seam's name stands between. [mm of paper] */
const BEHIND_NAME = [12, 16];
/** Nearer than this to another edge a dimension line reads as that edge's. [mm of paper] */
const TOO_NEAR = 3;
/** Places along a dimension line that are looked at. */
const LOOKED_AT = 16;

/** Between the outline and the overall dimensions: the numbers stand there. [mm of paper] */
const OVERALL_CLEAR = 11;

/** The seams; seams of one length are dimensioned once. */
export function dimensionSeams(
  board: Board,
  edges: readonly EdgePath[],
  { outline, units }: { outline: readonly Vec2[]; units: Units },
): void {
  const done: number[] = [];
  const roughly = coarse(closed("outline", outline).shape, board.mm(COARSE));
  for (const edge of edges.filter(isSeam)) {
    if (done.some((length) => alike(length, edge.lengthMm))) continue;
    done.push(edge.lengthMm);
    const [from, to] = [edge.points[0] as Vec2, edge.points.at(-1) as Vec2];
    const text = board.length(edge.lengthMm, units);
    const free = OUTSIDE.filter((offset) => !landsOnBlank(board, roughly, { from, to, offset }));
    const places =
      free.length > 0
        ? { offsetsMm: free, elseMm: INSIDE }
        : { offsetsMm: BEHIND_NAME, elseMm: [...INSIDE, ...OUTSIDE] };
    board.put(`length of ${edge.name}`, linearDimension(board, { from, to, text, ...places }));
  }
}

/** Does a dimension line outside one edge lie on the blank again, as across the narrow gap of a nearly full ring? It would read as the other edge's. */
function landsOnBlank(
  board: Board,
  outline: readonly Vec2[],
  { from, to, offset }: { from: Vec2; to: Vec2; offset: number },
): boolean {
  const across = left2(unit2(sub2(to, from)));
  return [offset, offset - TOO_NEAR].some((mm) => {
    const aside = scale2(across, board.mm(mm));
    const places = Array.from({ length: LOOKED_AT + 1 }, (_, i) =>
      add2(between2(from, to, i / LOOKED_AT), aside),
    );
    return isAnyWithin(places, outline);
  });
}

/** Is any of some points within a closed outline? A ray to the right crosses it an odd number of times. */
function isAnyWithin(points: readonly Vec2[], outline: readonly Vec2[]): boolean {
  const { left, bottom, top } = boxOf(points);
  const inside = points.map(() => false);
  let p = outline.at(-1) as Vec2;
  for (const q of outline) {
    const px = p[0];
    const py = p[1];
    const qx = q[0];
    const qy = q[1];
    p = q;
    // Of the thousands of pieces that an outline has, nearly all lie above, below or to the left of all the points.
    if ((py > top && qy > top) || (py < bottom && qy < bottom) || (px < left && qx < left)) continue;
    for (let i = 0; i < points.length; i++) {
      const at = points[i] as Vec2;
      const y = at[1];
      if (py > y !== qy > y && at[0] < px + ((y - py) / (qy - py)) * (qx - px)) inside[i] = !inside[i];
    }
  }
  return inside.includes(true);
}

/** Straight sides one by one; a curved end by the chord between its corners, unless that is the overall width. */
export function dimensionEnd(
  board: Board,
  edge: EdgePath,
  { units, box }: { units: Units; box: number },
): void {
  const [from, to] = [edge.points[0] as Vec2, edge.points.at(-1) as Vec2];
  const sides = edge.name === "rectangular end" ? straightSides(edge.points) : [[from, to] as const];
  for (const [p, q] of sides) {
    const length = distance2(p, q);
    // Nearly as long as the whole blank, which is dimensioned below it: the two would only be mistaken for each other.
    const twin = alike(length, box) || Math.abs(length - box) < NEARLY * box;
    if (twin || length < board.mm(2)) continue;
    const text = board.length(length, units);
    const elseMm = sides.length > 1 ? [] : INSIDE;
    board.put(
      `length on ${edge.name}`,
      linearDimension(board, { from: p, to: q, text, offsetsMm: OUTSIDE, elseMm }),
    );
  }
}

/** How far the plate runs on past seam 2, square to it. */
export function dimensionLap(
  board: Board,
  { edges, rows, part }: { edges: readonly EdgePath[]; rows: readonly MarkingRow[]; part: Report["part"] },
): void {
  const [row, edge] = [rows.at(-1), edges.find((one) => one.name === "seam 2")];
  const lap = part.seam?.joint === "lap" ? part.seam.lap : undefined;
  if (!row || !edge || lap === undefined) return;
  const ways = [0.5, 0.35, 0.65, 0.2, 0.8].flatMap((share) => {
    const { at, dir } = along(edge.points, share);
    const across = left2(dir);
    const depth = dot2(sub2(row.a, at), across);
    const to = add2(at, scale2(across, depth));
    return [
      ...linearDimension(board, {
        from: at,
        to,
        text: board.length(lap, part.units),
        offsetsMm: [0],
        size: "small",
      }),
    ];
  });
  board.put("lap", ways, Infinity);
}

/** The upright rectangle of plate that the blank takes, as it lies. */
export function dimensionOverall(board: Board, outline: readonly Vec2[], units: Units): void {
  const box = boxOf(outline);
  const at = (pick: (p: Vec2) => number): Vec2 => {
    let [best, most] = [outline[0] as Vec2, -Infinity];
    for (const p of outline) {
      const value = pick(p);
      if (value > most) [best, most] = [p, value];
    }
    return best;
  };
  const drawn = board.extent();
  // Clear of the numbers still to come, and as close as the other dimensions allow.
  const beyond = (own: number, all: number): number[] => {
    const last = all / board.unit + OVERALL_CLEAR + 8;
    const count = Math.ceil((last - own / board.unit - OVERALL_CLEAR) / 4);
    return Array.from({ length: count + 1 }, (_, i) => own / board.unit + OVERALL_CLEAR + 4 * i);
  };
  const [left, right] = [at(([x]) => -x), at(([x]) => x)];
  const [low, high] = [at(([, y]) => -y), at(([, y]) => y)];
  board.put(
    "overall width",
    linearDimension(board, {
      from: left,
      to: right,
      along: [1, 0],
      text: board.length(width(box), units),
      offsetsMm: beyond(
        Math.min(left[1], right[1]) - box.bottom,
        Math.min(left[1], right[1]) - drawn.bottom,
      ).map((mm) => -mm),
    }),
    Infinity,
  );
  if (isDimensioned(board, height(box))) return;
  board.put(
    "overall height",
    linearDimension(board, {
      from: low,
      to: high,
      along: [0, 1],
      text: board.length(height(box), units),
      offsetsMm: beyond(Math.min(low[0], high[0]) - box.left, Math.min(low[0], high[0]) - drawn.left),
    }),
    Infinity,
  );
}

/** Is there an upright dimension of this length already, as the seam of a pipe is? */
function isDimensioned(board: Board, length: number): boolean {
  return board.strokes.some(({ kind, shape }) => {
    if (kind !== "dimension" || shape.type !== "path") return false;
    const [p, q] = [shape.points[0] as Vec2, shape.points.at(-1) as Vec2];
    return alike(distance2(p, q), length) && alike(Math.abs(unit2(sub2(q, p))[0]), 0);
  });
}
