import { length2, sub2, type Vec2 } from "./vector.ts";

/** How far points lie from the nearest point of a straight piece, ready to be asked of the thousands of an outline. [mm] */
export function fromSegment([fromX, fromY]: Vec2, [toX, toY]: Vec2): (p: Vec2) => number {
  const [runX, runY] = [toX - fromX, toY - fromY];
  const long = Math.sqrt(runX * runX + runY * runY);
  return (p) => {
    const outX = p[0] - fromX;
    const outY = p[1] - fromY;
    const along = outX * runX + outY * runY;
    if (long === 0 || along < 0) return Math.sqrt(outX * outX + outY * outY);
    if (along > long * long) return length2(sub2(p, [toX, toY]));
    return Math.abs(runX * outY - runY * outX) / long;
  };
}

/** How far a point lies from the nearest point of a straight piece. [mm] */
export const toSegment = (p: Vec2, from: Vec2, to: Vec2): number => fromSegment(from, to)(p);

/** Distance from a point to a row of points joined by straight lines. [mm] */
export function toPath(p: Vec2, path: readonly Vec2[]): number {
  let least = Infinity;
  for (let i = 0; i + 1 < path.length; i++)
    least = Math.min(least, toSegment(p, path[i] as Vec2, path[i + 1] as Vec2));
  return least;
}
