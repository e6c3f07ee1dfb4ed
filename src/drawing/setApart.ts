import { type Strip3, unrolledAt } from "../geometry/unroll.ts";
import { add3, type Vec3 } from "../geometry/vector.ts";
import type { RoundPiece } from "../report/round.ts";

/** Between flat pieces. [of the mean of their widths] */
const GAP = 0.08;
/** By when they stand clear of each other, so that none unrolls through another. [of the unrolling] */
const CLEAR_AT = 0.5;

/** Where pieces go while they unroll, for the same pieces each time. */
const known = new WeakMap<readonly RoundPiece[], readonly Vec3[]>();

/** How far each piece is moved, level, to lie beside the others once it is flat: in a row, as they stood from left to right. [mm] */
function moves(pieces: readonly RoundPiece[]): readonly Vec3[] {
  const before = known.get(pieces);
  if (before) return before;
  const flats = pieces.map(({ strip }, i) => {
    const { a, b } = unrolledAt(strip, 1);
    const all = [...a, ...b];
    const [xs, ys] = [all.map(([x]) => x), all.map(([, y]) => y)];
    const [left, right] = [Math.min(...xs), Math.max(...xs)];
    return { i, left, wide: right - left, at: (left + right) / 2, low: Math.min(...ys) };
  });
  // Those that stand one behind the other keep their order.
  const row = flats.toSorted((p, q) => p.at - q.at || p.i - q.i);
  const whole = row.reduce((sum, { wide }) => sum + wide, 0);
  const gap = (GAP * whole) / row.length;
  const moved: Vec3[] = pieces.map(() => [0, 0, 0]);
  let x = -(whole + gap * (row.length - 1)) / 2;
  for (const { i, left, wide, low } of row) {
    moved[i] = [x - left, (row[0]?.low ?? low) - low, 0];
    x += wide + gap;
  }
  known.set(pieces, moved);
  return moved;
}

/** The strips of a part at one step of its unrolling: of several pieces each is moved clear of the others. */
export function unrolledApart(pieces: readonly RoundPiece[], share: number): Strip3[] {
  const strips = pieces.map(({ strip }) => unrolledAt(strip, share));
  if (pieces.length === 1) return strips;
  const of = Math.min(1, share / CLEAR_AT);
  return strips.map((strip, i) => {
    const [x, y] = moves(pieces)[i] ?? [0, 0];
    const by: Vec3 = [of * x, of * y, 0];
    const move = (points: readonly Vec3[]) => points.map((point) => add3(point, by));
    return { a: move(strip.a), b: move(strip.b) };
  });
}
