import { edgePaths, isSeam, straightSides } from "../drawing/pattern/edges.ts";
import { SAME_POINT_MM } from "../geometry/tolerance.ts";
import { cross2, distance2, sub2, type Vec2 } from "../geometry/vector.ts";
import type { Blank, MarkingRow } from "../report/report.ts";

/** An edge of more straight sides than this is a curve told by chords, and has no corners of its own. */
const MOST_SIDES = 8;

/** Is an edge a row of straight sides, or one? */
export const isStraightSided = (points: readonly Vec2[]): boolean =>
  straightSides(points).length <= MOST_SIDES;

/** A corner of the cut edge. */
export interface CutCorner {
  readonly number: number;
  readonly at: Vec2;
  /** Where it lies: between which edges, or along which one. */
  readonly where: string;
  /** Two edges meet here. */
  readonly isEnd: boolean;
}

/** The corners of a blank as it is cut, counter-clockwise: where edges meet, and where a straight-sided edge turns. */
export function cutCorners(blank: Blank): CutCorner[] {
  const paths = edgePaths(blank);
  return paths
    .flatMap(({ name, points }, i) => {
      const before = paths.at(i - 1)?.name ?? name;
      const turns = isSeam({ name }) || !isStraightSided(points) ? [] : straightSides(points).slice(1);
      return [
        { at: points[0] as Vec2, where: `${before} meets ${name}`, isEnd: true },
        ...turns.map(([at]) => ({ at, where: `on the ${name}`, isEnd: false })),
      ];
    })
    .map((corner, i) => ({ ...corner, number: i + 1 }));
}

/** Does a line of the marking table lie along a seam edge of the blank as it is cut? */
export const isCutSeam = (blank: Blank, { a, b }: MarkingRow): boolean =>
  edgePaths(blank)
    .filter(isSeam)
    .some(({ points }) => {
      const [from, to] = [points[0] as Vec2, points.at(-1) as Vec2];
      const run = sub2(to, from);
      const long = distance2(from, to);
      return [a, b].every((p) => Math.abs(cross2(run, sub2(p, from))) / long <= SAME_POINT_MM);
    });
