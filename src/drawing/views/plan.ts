import { radians } from "../../geometry/angle.ts";
import { SAME_POINT_MM } from "../../geometry/tolerance.ts";
import { add2, cross2, direction, distance2, dot2, sub2, type Vec2 } from "../../geometry/vector.ts";
import type { Report } from "../../report/report.ts";
import { boxOf } from "../box.ts";
import { closed, line, path, type Stroke, type StrokeKind } from "../model.ts";
import { type Mark, marksAlong } from "../pattern/lines.ts";
import { SEEN_WALL } from "./elevation.ts";
import { centreOf, curveOf, type End, inPlan } from "./ends.ts";

/** Is a point within a convex outline that runs counter-clockwise, or on it? */
const within = (p: Vec2, outline: readonly Vec2[]): boolean =>
  outline.length > 2 &&
  outline.every(
    (q, i) => cross2(sub2(outline[(i + 1) % outline.length] as Vec2, q), sub2(p, q)) >= -SAME_POINT_MM,
  );

/** Is a point strictly within, so that what lies above covers it? */
const covered = (p: Vec2, outline: readonly Vec2[]): boolean =>
  outline.length > 2 &&
  outline.every((q, i) => {
    const side = sub2(outline[(i + 1) % outline.length] as Vec2, q);
    return cross2(side, sub2(p, q)) > SAME_POINT_MM * Math.hypot(...side);
  });

/** A closed curve in runs of what is seen and what is not. */
function runs(points: readonly Vec2[], seen: (p: Vec2) => boolean): { kind: StrokeKind; points: Vec2[] }[] {
  const flags = points.map(seen);
  if (flags.every(Boolean)) return [{ kind: "outline", points: [...points] }];
  if (!flags.some(Boolean)) return [{ kind: "hidden", points: [...points] }];
  // Begin where it changes, so that no run is cut in two.
  const start = flags.findIndex((flag, i) => flag !== flags.at(i - 1));
  const out: { kind: StrokeKind; points: Vec2[] }[] = [];
  for (let i = 0; i <= points.length; i++) {
    const at = (start + i) % points.length;
    const kind: StrokeKind = flags[at] ? "outline" : "hidden";
    const open = out.at(-1);
    const p = points[at] as Vec2;
    if (open?.kind === kind) open.points.push(p);
    else if (open) {
      open.points.push(p);
      if (i < points.length) out.push({ kind, points: [p] });
    } else out.push({ kind, points: [p] });
  }
  return out;
}

/** Lines of the view from above. */
export function plan(
  { solid, part }: Report,
  { ends, at, unit }: { ends: { a: End; b: End }; at: Vec2; unit: number },
): Stroke[] {
  const place = (p: Vec2): Vec2 => add2(p, at);
  const [a, b] = [inPlan(curveOf(ends.a.curves, "outside")), inPlan(curveOf(ends.b.curves, "outside"))];
  const [aIn, bIn] = [inPlan(ends.a.curves.inside), inPlan(ends.b.curves.inside)];
  const strokes: Stroke[] = [];
  const ring = (points: readonly Vec2[], seen: (p: Vec2) => boolean): void => {
    if (points.length < 3) return;
    const parts = runs(points, seen);
    const whole = parts.length === 1;
    for (const one of parts) strokes.push((whole ? closed : path)(one.kind, one.points.map(place)));
  };
  // The upper end is seen whole; the lower where the skin does not cover it.
  ring(b, () => true);
  ring(a, (p) => !covered(p, b));
  if (part.thickness / unit >= SEEN_WALL) {
    ring(bIn, () => true);
    ring(aIn, (p) => within(p, bIn));
  }
  // From above every element is seen: from outside where the wall leans in, from inside where it leans out.
  for (const one of solid.elements) {
    const [p, q] = inPlan([one.a, one.b]) as [Vec2, Vec2];
    if (distance2(p, q) > SAME_POINT_MM) strokes.push(line("thin", place(p), place(q)));
  }
  for (const one of solid.seams) {
    const [p, q] = inPlan([one.a, one.b]) as [Vec2, Vec2];
    if (distance2(p, q) > SAME_POINT_MM) strokes.push(line("outline", place(p), place(q)));
  }
  return strokes;
}

/** Crossed centre lines of both ends, one cross where they stand over each other. */
export function crosses({ ends, at, unit }: { ends: { a: End; b: End }; at: Vec2; unit: number }): Stroke[] {
  const past = 4 * unit;
  const both = [ends.a, ends.b].map((end) => ({
    centre: centreOf(end),
    box: boxOf(inPlan(curveOf(end.curves, "outside"))),
  }));
  const apart = both.filter(
    (one, i) => i === 0 || distance2(one.centre, (both[0] as typeof one).centre) > SAME_POINT_MM,
  );
  return apart.flatMap(({ centre: [x, y], box }) => [
    line("centre", add2([box.left - past, y], at), add2([box.right + past, y], at)),
    line("centre", add2([x, box.bottom - past], at), add2([x, box.top + past], at)),
  ]);
}

/** The numbers of the elements round each end, one list for each piece: outside the end that lies outside, inside the other. */
export function planMarks({ solid, hand }: Report, at: Vec2): { readonly a: Mark[][]; readonly b: Mark[][] } {
  const lines = solid.elements.map((one, i) => {
    const row = hand.rows[i];
    const [a, b] = inPlan([one.a, one.b]) as [Vec2, Vec2];
    const normal = direction(radians(one.planDeg));
    const outer = dot2(sub2(a, b), normal) >= 0;
    return {
      number: row?.number ?? i + 1,
      piece: row?.piece ?? 1,
      a: add2(a, at),
      b: add2(b, at),
      normal,
      outer,
    };
  });
  // With several blanks the numbers begin anew at each seam, where two lines lie on each other.
  const pieces = [...new Set(lines.map((one) => one.piece))];
  const marks = (end: "a" | "b") =>
    pieces.map((piece) =>
      marksAlong(
        lines
          .filter((one) => one.piece === piece)
          .map((one) => {
            const away = one.outer === (end === "a") ? 1 : -1;
            const outward: Vec2 = [away * one.normal[0], away * one.normal[1]];
            return { number: one.number, at: one[end], other: one[end === "a" ? "b" : "a"], outward };
          }),
      ),
    );
  return { a: marks("a"), b: marks("b") };
}
