import type { Vec2 } from "../geometry/vector.ts";
import type { FreeRectangle } from "./model.ts";

/** The plate is looked at in squares: so many along it, but none smaller than a rest that is worth a mark. */
const [SQUARES, LEAST_SQUARE_MM] = [400, 5];
/** A rest narrower than this is scrap. [mm] */
const LEAST_REST_MM = 50;

/**
 * The largest upright rectangle between the margins that no outline touches. Outlines are marked in a grid of squares, each
 * that is touched at all as taken, so the true rest is no smaller than told, and larger by a few squares at most.
 *
 * @param outlines grown by the spacing already
 */
export function freeRectangle(
  plate: { readonly lengthMm: number; readonly widthMm: number; readonly edgeMm: number },
  outlines: readonly (readonly Vec2[])[],
): FreeRectangle | null {
  const { edgeMm } = plate;
  const [long, high] = [plate.lengthMm - 2 * edgeMm, plate.widthMm - 2 * edgeMm];
  const square = Math.max(LEAST_SQUARE_MM, long / SQUARES);
  const [columns, rows] = [Math.floor(long / square), Math.floor(high / square)];
  const taken = Array.from({ length: rows }, () => new Uint8Array(columns));
  for (const outline of outlines)
    mark(
      outline.map(([x, y]): Vec2 => [(x - edgeMm) / square, (y - edgeMm) / square]),
      taken,
    );
  const best = largest(taken, columns);
  const [xMm, yMm] = [best.long * square, best.high * square];
  if (Math.min(xMm, yMm) < LEAST_REST_MM) return null;
  return { at: [edgeMm + best.x * square, edgeMm + best.y * square], xMm, yMm };
}

/** Marks every square that an outline touches, row by row: what its sides pass through, and what lies between two of them. */
function mark(outline: readonly Vec2[], taken: readonly Uint8Array[]): void {
  taken.forEach((row, y) => {
    const fill = (from: number, to: number) =>
      row.fill(1, Math.max(0, Math.floor(from)), Math.max(0, Math.floor(to) + 1));
    const crossed: number[] = [];
    outline.forEach((p, i) => {
      const q = outline[(i + 1) % outline.length] as Vec2;
      const [low, top] = p[1] < q[1] ? [p, q] : [q, p];
      if (top[1] < y || low[1] > y + 1) return;
      const at = (height: number) =>
        top[1] === low[1] ? low[0] : low[0] + ((height - low[1]) / (top[1] - low[1])) * (top[0] - low[0]);
      const ends = top[1] === low[1] ? [p[0], q[0]] : [at(Math.max(y, low[1])), at(Math.min(y + 1, top[1]))];
      fill(Math.min(...ends), Math.max(...ends));
      const middle = y + 0.5;
      if (low[1] <= middle && top[1] > middle) crossed.push(at(middle));
    });
    crossed.sort((a, b) => a - b);
    for (let i = 0; i + 1 < crossed.length; i += 2) fill(crossed[i] as number, crossed[i + 1] as number);
  });
}

/** The largest rectangle of squares that are not taken: for each row the columns of free squares above it, by a stack. */
function largest(
  taken: readonly Uint8Array[],
  columns: number,
): { x: number; y: number; long: number; high: number } {
  let best = { x: 0, y: 0, long: 0, high: 0 };
  const heights = new Array<number>(columns + 1).fill(0);
  taken.forEach((row, y) => {
    const open: { from: number; high: number }[] = [];
    for (let x = 0; x <= columns; x++) {
      const high = x === columns || row[x] === 1 ? 0 : (heights[x] ?? 0) + 1;
      heights[x] = high;
      let from = x;
      for (let last = open.at(-1); last && last.high >= high; last = open.at(-1)) {
        open.pop();
        from = last.from;
        const long = x - from;
        if (long * last.high > best.long * best.high)
          best = { x: from, y: y - last.high + 1, long, high: last.high };
      }
      open.push({ from, high });
    }
  });
  return best;
}
