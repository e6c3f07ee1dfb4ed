import { labelCorners } from "../../src/drawing/lettering.ts";
import type { Drawing, Label } from "../../src/drawing/model.ts";
import { type Pen, trace } from "../../src/drawing/pen.ts";
import type { Vec2 } from "../../src/geometry/vector.ts";

/** A pen that walks along a shape and keeps where it has been; arcs in steps of half a degree. */
export function walkingPen(): Pen & { readonly points: Vec2[] } {
  const points: Vec2[] = [];
  return {
    points,
    moveTo: (x, y) => points.push([x, y]),
    lineTo: (x, y) => points.push([x, y]),
    arc: (cx, cy, radius, from, to) => {
      const steps = Math.ceil(Math.abs(to - from) / (Math.PI / 360));
      for (let i = 0; i <= steps; i++) {
        const at = from + ((to - from) * i) / steps;
        points.push([cx + radius * Math.cos(at), cy + radius * Math.sin(at)]);
      }
    },
    closePath: () => undefined,
  };
}

/** Area on the left of a closed walk, by the trapezoids under it. [mm²] */
export function areaOf(points: readonly Vec2[]): number {
  let area = 0;
  for (const [i, [x, y]] of points.entries()) {
    const [nx, ny] = points[(i + 1) % points.length]!;
    area += ((x - nx) * (y + ny)) / 2;
  }
  return area;
}

/** What two convex quadrilaterals share, by cutting one along the sides of the other: not the way the board does it. [mm²] */
function shared(p: readonly Vec2[], q: readonly Vec2[]): number {
  let rest = [...p];
  for (const [i, a] of q.entries()) {
    const b = q[(i + 1) % q.length]!;
    const side = ([x, y]: Vec2) => (b[0] - a[0]) * (y - a[1]) - (b[1] - a[1]) * (x - a[0]);
    const kept: Vec2[] = [];
    for (const [k, from] of rest.entries()) {
      const to = rest[(k + 1) % rest.length]!;
      const [sf, st] = [side(from), side(to)];
      if (sf >= 0) kept.push(from);
      if (sf >= 0 !== st >= 0) {
        const share = sf / (sf - st);
        kept.push([from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])]);
      }
    }
    rest = kept;
  }
  return areaOf(rest);
}

/** Labels that cover each other by more than a thousandth of a square millimetre of paper. */
export function coveredLabels({ labels, unit }: Drawing): string[] {
  const corners = labels.map((label) => labelCorners(label));
  return labels.flatMap((one: Label, i) =>
    labels.slice(i + 1).flatMap((other, k) => {
      const area = shared(corners[i]!, corners[i + 1 + k]!) / unit ** 2;
      return area > 0.001 ? [`"${one.text}" and "${other.text}" share ${area} mm²`] : [];
    }),
  );
}

/** Strokes and labels that reach beyond the sheet, by more than rounding. */
export function outsideSheet({ strokes, labels, extent, unit }: Drawing): string[] {
  const slack = unit / 1000;
  const beyond = ([x, y]: Vec2) =>
    x < extent.left - slack ||
    x > extent.right + slack ||
    y < extent.bottom - slack ||
    y > extent.top + slack;
  const lines = strokes.flatMap(({ kind, shape }) => {
    const pen = walkingPen();
    trace(shape, pen);
    return pen.points.some(beyond) ? [`a stroke "${kind}"`] : [];
  });
  return [...lines, ...labels.filter((label) => labelCorners(label).some(beyond)).map(({ text }) => text)];
}
