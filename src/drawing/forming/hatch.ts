import { radians } from "../../geometry/angle.ts";
import { between2, direction, dot2, left2, type Vec2 } from "../../geometry/vector.ts";
import type { Board } from "../board.ts";
import { clip } from "../clip.ts";
import { boxOf, grow } from "../box.ts";
import { flatten } from "../flatten.ts";
import { labelCorners } from "../lettering.ts";
import { type Box, line, type Stroke } from "../model.ts";

export interface Hatching {
  readonly angleDeg: number;
  /** From one line to the next. [mm of paper] */
  readonly apartMm: number;
}

/** Hatching stays this far clear of lettering, dots and arrowheads. [mm of paper] */
const CLEAR = 0.7;

/** The stretches of a line at this height above `along` that lie within an outline of any form, by crossings in pairs. */
function stretches(outline: readonly Vec2[], along: Vec2, level: number): [Vec2, Vec2][] {
  const across = left2(along);
  const crossings: number[] = [];
  for (const [i, p] of outline.entries()) {
    const q = outline[(i + 1) % outline.length] as Vec2;
    const [u, v] = [dot2(p, across) - level, dot2(q, across) - level];
    // A corner on the line counts for the side above it only, so that crossings come in pairs.
    if (u >= 0 === v >= 0) continue;
    crossings.push(dot2(p, along) + (u / (u - v)) * (dot2(q, along) - dot2(p, along)));
  }
  crossings.sort((a, b) => a - b);
  const at = (s: number): Vec2 => [s * along[0] + level * across[0], s * along[1] + level * across[1]];
  return Array.from({ length: Math.floor(crossings.length / 2) }, (_, i) => [
    at(crossings[2 * i] as number),
    at(crossings[2 * i + 1] as number),
  ]);
}

const corners = ({ left, bottom, right, top }: Box): Vec2[] => [
  [left, bottom],
  [right, bottom],
  [right, top],
  [left, top],
];

/** A straight piece less what lies within upright boxes. */
function outside(piece: [Vec2, Vec2], boxes: readonly Box[]): [Vec2, Vec2][] {
  let rest: [Vec2, Vec2][] = [piece];
  for (const box of boxes)
    rest = rest.flatMap(([from, to]): [Vec2, Vec2][] => {
      const within = clip(from, to, { outline: corners(box) });
      if (!within) return [[from, to]];
      const left: [Vec2, Vec2][] = [];
      if (within[0] > 0) left.push([from, between2(from, to, within[0])]);
      if (within[1] < 1) left.push([between2(from, to, within[1]), to]);
      return left;
    });
  return rest;
}

/** Narrow parallel lines all over an outline, clear of the lettering, dots and arrowheads that the board already has. */
export function hatch(board: Board, outline: readonly Vec2[], { angleDeg, apartMm }: Hatching): Stroke[] {
  const along = direction(radians(angleDeg));
  const heights = outline.map((p) => dot2(p, left2(along)));
  const apart = board.mm(apartMm);
  const filled = board.strokes.filter(({ kind }) => kind === "arrow");
  const boxes = [
    ...board.labels.map((label) => boxOf(labelCorners(label))),
    ...filled.map(({ shape }) => boxOf(flatten(shape))),
  ].map((box) => grow(box, board.mm(CLEAR)));
  const strokes: Stroke[] = [];
  for (let k = Math.ceil(Math.min(...heights) / apart); k * apart < Math.max(...heights); k++)
    for (const piece of stretches(outline, along, k * apart))
      for (const [from, to] of outside(piece, boxes)) strokes.push(line("thin", from, to));
  return strokes;
}
