import { add2, between2, cross2, distance2, dot2, left2, scale2, sub2, type Vec2 } from "./vector.ts";

/** From the end of the piece before to `to`, along a circle: bulge is the tangent of a quarter of its angle, 0 a straight line. */
export interface ArcPiece {
  readonly to: Vec2;
  /** Positive where it turns to the left. */
  readonly bulge: number;
}

/** More than this of a circle in one piece is told badly by three points. [rad] */
const MOST_TURN = 1.9 * Math.PI;

/**
 * A path of many points as few circular arcs and straight lines, each as long as it can be: nowhere does a piece lie
 * further from the path than `within`, between its points neither. [mm]
 *
 * @param points the ends stay as they are
 */
export function fitArcs(points: readonly Vec2[], within: number): ArcPiece[] {
  const pieces: ArcPiece[] = [];
  for (let from = 0; from < points.length - 1;) {
    const run = longestRun(points, from, within);
    pieces.push(run.piece);
    from = run.to;
  }
  return pieces;
}

/** The longest run from a point that one piece keeps to: looked for by doubling, then by halving. */
function longestRun(points: readonly Vec2[], from: number, within: number): { to: number; piece: ArcPiece } {
  let best = { to: from + 1, piece: straight(points[from + 1] as Vec2) };
  let tooFar = points.length;
  const tries = (to: number): void => {
    const piece = onePiece(points, { from, to, within });
    if (piece) best = { to, piece };
    else tooFar = to;
  };
  for (let step = 2; from + step < tooFar; step *= 2) tries(from + step);
  while (tooFar - best.to > 1) tries((best.to + tooFar) >> 1);
  return best;
}

const straight = (to: Vec2): ArcPiece => ({ to, bulge: 0 });

/** One line or arc from the first point of a run to its last, if the whole path between lies near enough to it. */
function onePiece(
  points: readonly Vec2[],
  { from, to, within }: { from: number; to: number; within: number },
): ArcPiece | undefined {
  const [a, b] = [points[from] as Vec2, points[to] as Vec2];
  if (isNearLine(points, { from, to, within })) return straight(b);
  const middle = points[(from + to) >> 1] as Vec2;
  const circle = through(a, middle, b);
  if (!circle) return undefined;
  const { centre, radius } = circle;
  const isOff = (p: Vec2): boolean => Math.abs(distance2(p, centre) - radius) > within;
  // Between two points a path is straight: a circle through both may yet be far from it there.
  for (let i = from; i < to; i++) {
    const [p, q] = [points[i] as Vec2, points[i + 1] as Vec2];
    if (isOff(p) || isOff(between2(p, q, 0.5))) return undefined;
  }
  const turn = turnOf(points, { from, to, centre });
  if (turn === undefined || Math.abs(turn) > MOST_TURN) return undefined;
  return { to: b, bulge: Math.tan(turn / 4) };
}

function isNearLine(
  points: readonly Vec2[],
  { from, to, within }: { from: number; to: number; within: number },
): boolean {
  const [a, b] = [points[from] as Vec2, points[to] as Vec2];
  const run = sub2(b, a);
  const long = distance2(a, b);
  if (long === 0) return false;
  let before = 0;
  for (let i = from + 1; i < to; i++) {
    const p = sub2(points[i] as Vec2, a);
    const along = dot2(p, run);
    if (Math.abs(cross2(run, p)) / long > within || along < before) return false;
    before = along;
  }
  return true;
}

/** Angle about the centre from the first point to the last, all steps the same way round; undefined where they are not. [rad] */
function turnOf(
  points: readonly Vec2[],
  { from, to, centre }: { from: number; to: number; centre: Vec2 },
): number | undefined {
  let sum = 0;
  for (let i = from; i < to; i++) {
    const [p, q] = [sub2(points[i] as Vec2, centre), sub2(points[i + 1] as Vec2, centre)];
    const step = Math.atan2(cross2(p, q), dot2(p, q));
    if (sum !== 0 && step * sum < 0) return undefined;
    sum += step;
  }
  return sum;
}

/** The circle through three points; undefined where they lie in a line. */
function through(p: Vec2, q: Vec2, r: Vec2): { centre: Vec2; radius: number } | undefined {
  const [a, b] = [sub2(q, p), sub2(r, p)];
  const d = 2 * cross2(a, b);
  if (d === 0) return undefined;
  const [aa, bb] = [dot2(a, a), dot2(b, b)];
  const centre = add2(p, [(b[1] * aa - a[1] * bb) / d, (a[0] * bb - b[0] * aa) / d]);
  return Number.isFinite(centre[0]) ? { centre, radius: distance2(centre, p) } : undefined;
}

/** Centre and radius of a piece that is an arc. [mm] */
export function circleOf(from: Vec2, { to, bulge }: ArcPiece): { centre: Vec2; radius: number } {
  const chord = sub2(to, from);
  const middle = between2(from, to, 0.5);
  const off = (1 - bulge * bulge) / (4 * bulge);
  const centre = add2(middle, scale2(left2(chord), off));
  return { centre, radius: distance2(centre, from) };
}
