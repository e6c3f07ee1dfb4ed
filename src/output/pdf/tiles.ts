import { clip } from "../../drawing/clip.ts";
import { boxOf, grow, height, width } from "../../drawing/box.ts";
import type { Box } from "../../drawing/model.ts";
import type { Vec2 } from "../../geometry/vector.ts";
import type { TileLayout } from "./tilePaper.ts";

/** Neighbouring sheets show this much of each other; their common line runs along its middle. [mm] */
export const OVERLAP = 10;
/** Clear paper round the whole pattern. [mm] */
const CLEAR = 3;
/** A line that runs so near to a sheet's share is wanted on it: two sheets must not part along a line. [mm] */
const NEAR = 2;
/** Places of the pattern in the grid's play that are tried, as shares of it; the middle first. */
const PLACES = [0.5, 0, 1, 0.25, 0.75];

/** One sheet of the pattern, by row from above and column from the left, from 0. */
export interface Tile {
  readonly row: number;
  readonly column: number;
  /** "B3": second row, third column. */
  readonly name: string;
  /** What is printed, overlaps included. [mm of the pattern] */
  readonly field: Box;
  /** Its own share, between the common lines. [mm of the pattern] */
  readonly core: Box;
}

/** A straight piece of what has to be seen. */
export type Piece = readonly [Vec2, Vec2];

export interface Tiling {
  readonly layout: TileLayout;
  readonly rows: number;
  readonly columns: number;
  /** In reading order. */
  readonly tiles: readonly Tile[];
  /** Sheets that would hold nothing. */
  readonly leftOut: readonly Tile[];
}

/**
 * Cover a pattern with sheets at full size; sheets that no piece crosses are left out. Of several places of the grid the one
 * with the fewest sheets is taken.
 *
 * @param pieces what has to be seen, in straight pieces
 * @param round what the grid goes round: more than what is printed, where sheets of it are left out on purpose
 */
export function tilingOf(
  pieces: readonly Piece[],
  layout: TileLayout,
  round: readonly Piece[] = pieces,
): Tiling {
  const box = boxOf(round.flat());
  const { widthMm, heightMm } = layout.field;
  const step: Vec2 = [widthMm - OVERLAP, heightMm - OVERLAP];
  if (!(step[0] > OVERLAP && step[1] > OVERLAP)) throw new RangeError(`field of ${widthMm} × ${heightMm} mm`);
  const count = (long: number, one: number) => Math.max(1, Math.ceil((long + 2 * CLEAR - OVERLAP) / one));
  const [columns, rows] = [count(width(box), step[0]), count(height(box), step[1])];
  /** What the grid is wider and higher than the pattern with its clear paper. */
  const play: Vec2 = [
    columns * step[0] + OVERLAP - width(box) - 2 * CLEAR,
    rows * step[1] + OVERLAP - height(box) - 2 * CLEAR,
  ];
  let best: { used: ReadonlySet<number>; corner: Vec2 } | undefined;
  for (const x of PLACES)
    for (const y of PLACES) {
      const corner: Vec2 = [box.left - CLEAR - x * play[0], box.top + CLEAR + y * play[1]];
      const used = usedBy(pieces, { corner, step, rows, columns });
      if (!best || used.size < best.used.size) best = { used, corner };
    }
  if (!best) throw new RangeError("no place for the grid");
  const { used, corner } = best;
  const all = Array.from({ length: rows * columns }, (_, i) => tileAt(i, { corner, step, rows, columns }));
  return {
    layout,
    rows,
    columns,
    tiles: all.filter((_, i) => used.has(i)),
    leftOut: all.filter((_, i) => !used.has(i)),
  };
}

interface Grid {
  /** Upper left of all. */
  readonly corner: Vec2;
  readonly step: Vec2;
  readonly rows: number;
  readonly columns: number;
}

/** Rows are letters, as in a street map; after Z comes AA. */
function rowLetters(row: number): string {
  const letter = String.fromCharCode(65 + (row % 26));
  return row < 26 ? letter : rowLetters(Math.floor(row / 26) - 1) + letter;
}

function tileAt(index: number, { corner, step, rows, columns }: Grid): Tile {
  const [row, column] = [Math.floor(index / columns), index % columns];
  const [left, top] = [corner[0] + column * step[0], corner[1] - row * step[1]];
  const field = { left, top, right: left + step[0] + OVERLAP, bottom: top - step[1] - OVERLAP };
  const half = OVERLAP / 2;
  return {
    row,
    column,
    name: `${rowLetters(row)}${column + 1}`,
    field,
    core: {
      left: field.left + (column > 0 ? half : 0),
      right: field.right - (column < columns - 1 ? half : 0),
      top: field.top - (row > 0 ? half : 0),
      bottom: field.bottom + (row < rows - 1 ? half : 0),
    },
  };
}

/** Which sheets the pieces cross, by row and column in one number. */
function usedBy(pieces: readonly Piece[], grid: Grid): ReadonlySet<number> {
  const { corner, step, rows, columns } = grid;
  const used = new Set<number>();
  const index = (along: number, one: number, count: number) =>
    Math.min(count - 1, Math.max(0, Math.floor((along - OVERLAP / 2) / one)));
  for (const [p, q] of pieces) {
    const box = grow(boxOf([p, q]), NEAR);
    const [first, last] = [box.left, box.right].map((x) => index(x - corner[0], step[0], columns)) as [
      number,
      number,
    ];
    const [upper, lower] = [box.top, box.bottom].map((y) => index(corner[1] - y, step[1], rows)) as [
      number,
      number,
    ];
    for (let row = upper; row <= lower; row++)
      for (let column = first; column <= last; column++) {
        const tile = row * columns + column;
        if (!used.has(tile) && crosses(p, q, grow(tileAt(tile, grid).core, NEAR))) used.add(tile);
      }
  }
  return used;
}

const crosses = (p: Vec2, q: Vec2, { left, right, bottom, top }: Box): boolean =>
  clip(p, q, {
    outline: [
      [left, bottom],
      [right, bottom],
      [right, top],
      [left, top],
    ],
  }) !== undefined;
