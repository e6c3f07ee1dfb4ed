import { radians } from "../../geometry/angle.ts";
import { hull } from "../../geometry/polygon.ts";
import { SAME_POINT_MM } from "../../geometry/tolerance.ts";
import {
  add2,
  between2,
  direction,
  distance2,
  dot2,
  length2,
  scale2,
  sub2,
  unit2,
  type Vec2,
} from "../../geometry/vector.ts";
import type { Drawable, SpacePoint } from "../../report/report.ts";
import { boxOf } from "../box.ts";
import { clip } from "../clip.ts";
import { isDrawn, isSeamLine, lineStride } from "../dense.ts";
import { closed, element, type ElementLine, line, path, type Stroke, type StrokeKind } from "../model.ts";
import { type Mark, marksAlong } from "../pattern/lines.ts";
import { SEEN_WALL } from "./elevation.ts";
import { centreOf, curveOf, type End, inPlan } from "./ends.ts";

/** A closed curve, piece by piece: `inside` where it runs within a convex outline, `outside` where it does not. */
function parted(
  curve: readonly Vec2[],
  {
    by,
    depth,
    inside,
    outside,
  }: { by: readonly Vec2[]; depth: number; inside: StrokeKind; outside: StrokeKind },
): Stroke[] {
  const pieces: { kind: StrokeKind; points: Vec2[] }[] = [];
  const add = (kind: StrokeKind, from: Vec2, to: Vec2): void => {
    const open = pieces.at(-1);
    if (open?.kind === kind) open.points.push(to);
    else pieces.push({ kind, points: [from, to] });
  };
  for (const [i, p] of curve.entries()) {
    const q = curve[(i + 1) % curve.length] as Vec2;
    const [enter, leave] = (by.length > 2 ? clip(p, q, { outline: by, depth }) : undefined) ?? [1, 1];
    const [u, v] = [between2(p, q, enter), between2(p, q, leave)];
    if (enter > 0) add(outside, p, u);
    if (leave > enter) add(inside, u, v);
    if (enter < 1 && leave < 1) add(outside, v, q);
  }
  const [first, last] = [pieces[0], pieces.at(-1)];
  if (!first || !last) return [];
  if (first === last) return [closed(first.kind, curve)];
  // The curve begins in the middle of a piece as a rule: its two halves are one.
  if (first.kind === last.kind) {
    first.points.unshift(...last.points.slice(0, -1));
    pieces.pop();
  }
  return pieces.map(({ kind, points }) => path(kind, points));
}

/** A stroke of straight pieces, put in its place on the sheet. */
function moved(stroke: Stroke, at: Vec2): Stroke {
  const { shape } = stroke;
  if (shape.type !== "path") throw new RangeError(`a ring as ${shape.type}`);
  return { ...stroke, shape: { ...shape, points: shape.points.map((p) => add2(p, at)) } };
}

/** Lines of the view from above. */
export function plan(
  report: Drawable,
  { ends, at, unit }: { ends: { a: End; b: End }; at: Vec2; unit: number },
): Stroke[] {
  const { solid, part } = report;
  const step = lineStride(report, unit);
  const place = (p: Vec2): Vec2 => add2(p, at);
  // Ends are convex: their hull is the ring itself, each corner once.
  const ring = (points: readonly SpacePoint[]): readonly Vec2[] => hull(inPlan(points));
  const [a, b] = [ring(curveOf(ends.a.curves, "outside")), ring(curveOf(ends.b.curves, "outside"))];
  const [aIn, bIn] = [ring(ends.a.curves.inside), ring(ends.b.curves.inside)];
  const rings: Stroke[] = [];
  // The upper end is seen whole; the lower where nothing lies over it, and its inside where one looks down to it.
  if (b.length > 2) rings.push(closed("outline", b));
  if (a.length > 2)
    rings.push(...parted(a, { by: b, depth: SAME_POINT_MM, inside: "hidden", outside: "outline" }));
  if (part.thickness / unit >= SEEN_WALL && aIn.length > 2) {
    if (bIn.length > 2) rings.push(closed("outline", bIn));
    rings.push(...parted(aIn, { by: bIn, depth: -SAME_POINT_MM, inside: "outline", outside: "hidden" }));
  }
  const strokes = rings.map((ring) => moved(ring, at));
  // From above every element is seen: from outside where the wall leans in, from inside where it leans out.
  const lines = solid.elements.map(({ a, b }, i) => ({ i, ends: inPlan([a, b]) as [Vec2, Vec2] }));
  const seen = lines.filter(({ ends: [p, q] }) => distance2(p, q) > SAME_POINT_MM);
  const drawn = (kind: "thin" | "outline", { i, ends: [p, q] }: (typeof lines)[number]): Stroke =>
    element(kind, [i], place(p), place(q));
  strokes.push(...seen.filter(({ i }) => i % step === 0).map((one) => drawn("thin", one)));
  strokes.push(...seen.filter(({ i }) => isSeamLine(report, i)).map((one) => drawn("outline", one)));
  return strokes;
}

/** Where every element line lies in the view from above: none is hidden there. An upright one is a point. */
export function planLines(
  report: Drawable,
  { at, unit }: { readonly at: Vec2; readonly unit: number },
): ElementLine[] {
  const step = lineStride(report, unit);
  return report.solid.elements.map(({ a, b }, i) => {
    const [from, to] = inPlan([a, b]) as [Vec2, Vec2];
    const drawn = isDrawn(report, i, step);
    return { elements: [i], from: add2(from, at), to: add2(to, at), shown: drawn ? "line" : "left out" };
  });
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

/** Of one blank the first line and the last come to lie on each other at the seam: "1, 13". */
function closedRound(marks: readonly Mark[]): Mark[] {
  const [first, last] = [marks[0], marks.at(-1)];
  if (!first || !last || marks.length < 3 || distance2(first.at, last.at) > SAME_POINT_MM) return [...marks];
  const both: Mark = {
    ...first,
    closesRound: true,
    text: `${first.text}, ${last.text}`,
    elements: [...first.elements, ...last.elements],
  };
  return [both, ...marks.slice(1, -1)];
}

/** Of several blanks the first and the last number of each stand on the side of its own lines: another's lie on them. */
function sided(marks: readonly Mark[]): Mark[] {
  const last = marks.length - 1;
  return marks.map((mark, i) => {
    const next = i === 0 ? marks[1] : i === last ? marks[last - 1] : undefined;
    if (!next || !mark.out) return mark;
    const run = sub2(next.at, mark.at);
    const side = sub2(run, scale2(mark.out, dot2(run, mark.out)));
    return length2(side) > SAME_POINT_MM ? { ...mark, side: unit2(side) } : mark;
  });
}

/** The numbers of the elements round each end, one list for each piece: outside the end that lies outside, inside the other. */
export function planMarks(
  { solid, hand }: Drawable,
  at: Vec2,
): { readonly a: Mark[][]; readonly b: Mark[][] } {
  const lines = solid.elements.map((one, i) => {
    const row = hand.rows[i];
    const [a, b] = inPlan([one.a, one.b]) as [Vec2, Vec2];
    const normal = direction(radians(one.planDeg));
    const outer = dot2(sub2(a, b), normal) >= 0;
    return {
      number: row?.number ?? i + 1,
      elements: [i],
      piece: row?.piece ?? 1,
      a: add2(a, at),
      b: add2(b, at),
      normal,
      outer,
    };
  });
  // With several blanks the numbers begin anew at each seam, where two lines lie on each other.
  const pieces = [...new Set(lines.map((one) => one.piece))];
  const ofPiece = pieces.length > 1 ? sided : closedRound;
  const marks = (end: "a" | "b") =>
    pieces.map((piece) =>
      ofPiece(
        marksAlong(
          lines
            .filter((one) => one.piece === piece)
            .map((one) => {
              const away = one.outer === (end === "a") ? 1 : -1;
              const outward: Vec2 = [away * one.normal[0], away * one.normal[1]];
              return {
                number: one.number,
                elements: one.elements,
                at: one[end],
                other: one[end === "a" ? "b" : "a"],
                outward,
              };
            }),
        ),
      ),
    );
  return { a: marks("a"), b: marks("b") };
}
