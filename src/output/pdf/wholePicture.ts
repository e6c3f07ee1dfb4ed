import { boxOf, height, width } from "../../drawing/box.ts";
import { middle2, type Vec2 } from "../../geometry/vector.ts";
import type { Blank } from "../../report/report.ts";
import type { Pdf } from "./document.ts";
import { type Frame, onSheet } from "./pen.ts";
import { MIDDLE, OUTER, type Share } from "./share.ts";

/**
 * The whole pattern, small: its shares by number in the order in which they are scribed, the one that is printed grey. Says
 * where it ends. [mm of paper]
 */
export function wholePicture(
  pdf: Pdf,
  { whole, share, from, room }: { whole: Blank; share: Share; from: Vec2; room: Vec2 },
): number {
  const box = boxOf(whole.outline);
  const unit = Math.max(width(box) / room[0], height(box) / room[1]);
  const frame: Frame = {
    at: [box.left, box.top],
    on: [from[0] + (room[0] - width(box) / unit) / 2, from[1]],
    unit,
  };
  const outline = share.edges.flatMap(({ points }) => points.slice(0, -1));
  const shapeOf = (points: readonly Vec2[], closed: boolean) => ({ type: "path", points, closed }) as const;
  pdf.draw([shapeOf(outline, true)], frame, { widthMm: 0, fill: true, ink: 0.85 });
  const straight = share.edges.filter(({ name }) => name === MIDDLE || name === OUTER);
  share.places.forEach((place, i) => {
    const sides = straight.map(({ points }) => shapeOf(points.map(place), false));
    pdf.draw(sides, frame, { widthMm: 0.13, dashMm: [1.5, 1] });
    pdf.write(String(i + 1), onSheet(frame, place(within(share))), {
      capMm: 2.2,
      bold: true,
      anchor: "middle",
    });
  });
  pdf.draw([shapeOf(whole.outline, true)], frame, { widthMm: 0.3, round: true });
  return from[1] + height(box) / unit;
}

/** A point well within a share: between the middles of its ends. */
function within({ edges }: Share): Vec2 {
  const [a] = edges;
  const b = edges.length > 3 ? edges[2] : undefined;
  const half = (points: readonly Vec2[] | undefined): Vec2 => points?.[points.length >> 1] as Vec2;
  // Where end B is a point, a third of the way from the end to it.
  const tip = edges.at(-1)?.points[0] as Vec2;
  return b
    ? middle2(half(a?.points), half(b.points))
    : middle2(half(a?.points), middle2(half(a?.points), tip));
}
