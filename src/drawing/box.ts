import type { Vec2 } from "../geometry/vector.ts";
import type { Box } from "./model.ts";

/** Nothing yet: joining anything to it gives that thing. */
export const NO_BOX: Box = { left: Infinity, bottom: Infinity, right: -Infinity, top: -Infinity };

/** The upright rectangle round some points. */
export function boxOf(points: Iterable<Vec2>): Box {
  let { left, bottom, right, top } = NO_BOX;
  for (const point of points) {
    // Taken apart by hand: outlines of thousands of points are asked with every line that is drawn.
    const x = point[0];
    const y = point[1];
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < bottom) bottom = y;
    if (y > top) top = y;
  }
  return { left, bottom, right, top };
}

export const join = (a: Box, b: Box): Box => ({
  left: Math.min(a.left, b.left),
  bottom: Math.min(a.bottom, b.bottom),
  right: Math.max(a.right, b.right),
  top: Math.max(a.top, b.top),
});

export const grow = (box: Box, by: number): Box => ({
  left: box.left - by,
  bottom: box.bottom - by,
  right: box.right + by,
  top: box.top + by,
});

export const width = (box: Box): number => box.right - box.left;
export const height = (box: Box): number => box.top - box.bottom;

/** Do two upright rectangles share a point? That of an upright line has no width. */
export const touch = (a: Box, b: Box): boolean =>
  a.left <= b.right && b.left <= a.right && a.bottom <= b.top && b.bottom <= a.top;

/** Do two upright rectangles share any area? */
export const meet = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top;

/** The box of a line from one point to another. */
export const boxOfTwo = ([x, y]: Vec2, [u, v]: Vec2): Box => ({
  left: Math.min(x, u),
  right: Math.max(x, u),
  bottom: Math.min(y, v),
  top: Math.max(y, v),
});
