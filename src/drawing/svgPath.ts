import type { Vec2 } from "../geometry/vector.ts";
import type { Drawing, Label, Shape } from "./model.ts";
import { CAP_PER_SIZE } from "./lettering.ts";
import { pathText } from "./pathText.ts";
import { type Pen, trace } from "./pen.ts";
import { seenAt } from "./seenAt.ts";
import { thin } from "./thin.ts";

/** Points nearer than this to the line without them are not seen on paper: a tenth of a narrow line. [mm of paper] */
const UNSEEN = 0.02;

/**
 * The SVG pen: paper millimetres, y down from the sheet's top left. The only place that turns y over.
 *
 * @param near how many times nearer one looks at most: curves are as fine as that
 */
export function svgPen(sheet: Pick<Drawing, "extent" | "unit">, near = 1) {
  const { extent, unit } = sheet;
  const x = (mm: number) => (mm - extent.left) / unit;
  const y = (mm: number) => (extent.top - mm) / unit;
  return {
    viewBox: `0 0 ${round(x(extent.right))} ${round(y(extent.bottom))}`,
    widthMm: round(x(extent.right)),
    heightMm: round(y(extent.bottom)),
    /** The `d` of a path, to three decimals. */
    d(shape: Shape): string {
      const out = pathText();
      const pen: Pen = {
        moveTo: (px, py) => out.moveTo(x(px), y(py)),
        lineTo: (px, py) => out.lineTo(x(px), y(py)),
        // Upside down, so the other way round.
        arc: (cx, cy, radius, from, to) => out.arc(x(cx), y(cy), radius / unit, -from, -to),
        closePath: () => out.closePath(),
      };
      trace(thinned(shape, (UNSEEN * unit) / near), pen);
      return out.toString();
    },
    /** A place of the drawing on the sheet, and back. */
    at: ([px, py]: Vec2): Vec2 => [x(px), y(py)],
    ends: (from: Vec2, to: Vec2): readonly [Vec2, Vec2] => [
      [x(from[0]), y(from[1])],
      [x(to[0]), y(to[1])],
    ],
    back: ([sx, sy]: Vec2): Vec2 => [extent.left + sx * unit, extent.top - sy * unit],
    /** Where a label's base line begins, how it is turned (clockwise), and its letter size: the same on the screen however near. */
    lettering(label: Label, nearer = 1) {
      const size = round(label.capMm / CAP_PER_SIZE / unit / nearer);
      const place = seenAt(label, nearer);
      const [at, down] = [
        `${round(x(place[0]))} ${round(y(place[1]))}`,
        round(label.capMm / 2 / unit / nearer),
      ];
      const turn = label.rotationDeg === 0 ? "" : ` rotate(${round(-label.rotationDeg)})`;
      return { size, dy: down, transform: `translate(${at})${turn}` };
    },
  };
}

const round = (value: number): number => Math.round(value * 1000) / 1000 + 0;

function thinned(shape: Shape, within: number): Shape {
  if (shape.type !== "path" || shape.points.length < 4) return shape;
  const { points } = shape;
  // A closed outline is thinned as an open one back to its first point.
  if (shape.closed && points[0])
    return { ...shape, points: thin([...points, points[0]], within).slice(0, -1) };
  return { ...shape, points: thin(points, within) };
}
