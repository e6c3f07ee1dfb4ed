import { middle2, type Vec2 } from "../../geometry/vector.ts";
import type { Drawable, Solid, SpacePoint } from "../../report/report.ts";
import { boxOf } from "../box.ts";
import type { Board, Figure } from "../board.ts";

export type Face = "inside" | "middle" | "outside";

/** One end of the part: how it is measured on the drawing. */
export interface End {
  readonly curves: Solid["a"];
  readonly measured: Face;
  /** A round end by its diameter, a rectangle by its sides: as drawn, in mm. Nought is a point. */
  readonly sizes:
    | { readonly round: true; readonly diameter: number }
    | { readonly round: false; readonly length: number; readonly width: number };
}

/** Both ends as the part file gives them. */
export function endsOfPart({ part, solid }: Drawable): { readonly a: End; readonly b: End } {
  const round = (
    end: { diameter: number; measured?: Face | undefined },
    curves: Solid["a"],
    otherwise: Face,
  ): End => ({
    curves,
    measured: end.measured ?? otherwise,
    sizes: { round: true, diameter: end.diameter },
  });
  if (part.shape === "square-to-round") {
    const { length, width, measured } = part.rectangularEnd;
    const a: End = { curves: solid.a, measured, sizes: { round: false, length, width } };
    return { a, b: round(part.roundEnd, solid.b, measured) };
  }
  return {
    a: round(part.largeEnd, solid.a, part.largeEnd.measured),
    b: round(part.smallEnd, solid.b, part.largeEnd.measured),
  };
}

/** The face's curve, or the nearest face that has one: at a point the inside has none. */
export function curveOf(curves: Solid["a"], face: Face): readonly SpacePoint[] {
  const order: Readonly<Record<Face, readonly Face[]>> = {
    inside: ["inside", "middle", "outside"],
    middle: ["middle", "outside", "inside"],
    outside: ["outside", "middle", "inside"],
  };
  for (const one of order[face]) if (curves[one].length > 0) return curves[one];
  throw new RangeError(`an end without any curve: ${face}`);
}

/** Seen from above. */
export const inPlan = (points: readonly SpacePoint[]): Vec2[] => points.map(([x, y]) => [x, y]);

/** Centre of an end in plan. [mm] */
export function centreOf(end: End): Vec2 {
  const box = boxOf(inPlan(curveOf(end.curves, end.measured)));
  return middle2([box.left, box.bottom], [box.right, box.top]);
}

/** Offset of end B's centre from end A's, as the part file has it. [mm] */
export function offsetOf({ part }: Drawable): Vec2 {
  switch (part.shape) {
    case "right-cone":
      return [0, 0];
    case "eccentric-cone":
      return part.smallEnd.offset;
    case "square-to-round":
      return part.roundEnd.offset ?? [0, 0];
    default:
      return part satisfies never;
  }
}

/** The size of an end across a view, with the face it is measured on: Ø 900 outside. */
export function sizeText(board: Board, end: End, along: "length" | "width", units: "mm" | "in"): Figure {
  const { sizes, measured } = end;
  const figure = sizes.round ? board.length(sizes.diameter, units, "Ø ") : board.length(sizes[along], units);
  return { ...figure, main: `${figure.main} ${measured}` };
}
