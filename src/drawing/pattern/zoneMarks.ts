import { distance2, type Vec2 } from "../../geometry/vector.ts";
import type { Blank } from "../../report/report.ts";
import type { Board } from "../board.ts";
import { line } from "../model.ts";
import { along, edgePaths, type EdgePath, endsOf, nameAlong } from "./edges.ts";

/** Where a zone that is rolled with a setting of its own begins: along both edges from seam edge 1. [mm] */
export interface ZoneBegin {
  readonly name: string;
  readonly piece: number;
  readonly largeMm: number;
  readonly smallMm: number;
}

/** From the line to its name, on either side. [mm of paper] */
const NAME_CLEAR = [1.2, -1.2, 2.5, -2.5, 4, -4];

/** The point so far along an edge from the end of it at seam edge 1. */
function pointAlong({ points, lengthMm }: EdgePath, mm: number, seam1: Vec2): Vec2 {
  const [first, last] = [points[0] ?? seam1, points.at(-1) ?? seam1];
  const share = Math.min(1, mm / lengthMm);
  return along(points, distance2(first, seam1) <= distance2(last, seam1) ? share : 1 - share).at;
}

/** The line across the blank where each zone begins, chain-dotted, with its name along it. */
export function zoneMarks(
  board: Board,
  blank: Blank,
  { begins, seam1 }: { begins: readonly ZoneBegin[]; seam1: { readonly a: Vec2; readonly b: Vec2 } },
): void {
  const [a, b] = endsOf(edgePaths(blank));
  if (!a || !b) return;
  for (const { name, piece, largeMm, smallMm } of begins) {
    if (piece !== blank.piece) continue;
    const points = [pointAlong(a, largeMm, seam1.a), pointAlong(b, smallMm, seam1.b)] as const;
    board.draw(line("centre", ...points));
    const edge = { name, points, lengthMm: distance2(...points) };
    board.put(name, nameAlong(board, edge, { clearMm: NAME_CLEAR, insideToo: true }), Infinity);
  }
}
