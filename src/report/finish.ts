import { degrees, planHundredths, radians, TURN } from "../geometry/angle.ts";
import { rimLength } from "../geometry/measure.ts";
import type { Skin } from "../geometry/skin.ts";
import { distance3, type Vec3 } from "../geometry/vector.ts";
import type { Finish } from "../forming/inspection.ts";
import type { Layout } from "../shapes/layout.ts";
import type { Part } from "../shapes/part.ts";
import type { Shape } from "../shapes/shape.ts";

type End = Omit<Finish["ends"][number], "girthMm" | "name">;

/** The sizes across both ends, as drawn. */
function drawnEnds(part: Part): readonly [End, End] {
  if (part.shape === "square-to-round") {
    const { rectangularEnd: a, roundEnd: b } = part;
    return [
      { acrossMm: [a.length, a.width], measured: a.measured },
      { acrossMm: [b.diameter], measured: b.measured },
    ];
  }
  const { largeEnd: a, smallEnd: b } = part;
  return [
    { acrossMm: [a.diameter], measured: a.measured },
    { acrossMm: b.diameter > 0 ? [b.diameter] : [], measured: b.measured ?? a.measured },
  ];
}

const QUARTERS = [0, 90, 180, 270] as const;
const CORNERS = [45, 135, 225, 315] as const;

/** Plan angles of all seams of a part in alike pieces. [degrees] */
const seamsAt = ({ pieces = 1 }: Part, seamDeg: number): number[] =>
  Array.from({ length: pieces }, (_, i) => planHundredths(seamDeg + (360 * i) / pieces));

/** Straight across inside, from end A to the far side of end B: unequal ones tell that it leans or twists. */
function tapes(inside: Skin | null, part: Part, seamDeg: number): Finish["tapes"] {
  if (!inside) return [];
  const cornered = part.shape === "square-to-round";
  const point = (end: "a" | "b", deg: number): Vec3 => {
    const [x, y] = inside[end].point(radians(deg % 360), 1);
    return [x, y, inside.baseMm + (end === "a" ? 0 : inside.heightMm)];
  };
  /** A plan angle, and that the seam lies there. */
  const seams = seamsAt(part, seamDeg);
  const at = (deg: number) =>
    `${deg % 360}°${seams.includes(deg % 360) ? ` (${seams.length > 1 ? "a" : "the"} seam)` : ""}`;
  const pointed = part.shape !== "square-to-round" && part.smallEnd.diameter === 0;
  if (pointed)
    return QUARTERS.map((deg) => ({
      label: `inside, large end at ${at(deg)} to the point`,
      lengthMm: distance3(point("a", deg), point("b", deg)),
    }));
  return (cornered ? CORNERS : QUARTERS).map((deg) => ({
    label: `inside, ${cornered ? `corner towards ${deg}°` : `large end at ${at(deg)}`} to ${cornered ? "round" : "small"} end at ${at(deg + 180)}`,
    lengthMm: distance3(point("a", deg), point("b", deg + 180)),
  }));
}

/** From corner to corner inside a rectangular end, in the plane of that end. [mm] */
function diagonal(inside: Skin | null, part: Part): Pick<Finish, "diagonalMm"> {
  if (!inside || part.shape !== "square-to-round") return {};
  const [[x1, y1], [x2, y2]] = [inside.a.point(radians(45), 1), inside.a.point(radians(225), 1)];
  return { diagonalMm: Math.hypot(x2 - x1, y2 - y1) };
}

/** What of the finished part is inspected. */
export function finishOf(part: Part, shape: Shape, { faces, heightMm, seamRad }: Layout): Finish {
  const seamDeg = planHundredths(degrees(seamRad));
  const [a, b] = drawnEnds(part);
  const girth = (end: "a" | "b") =>
    faces.outside ? rimLength(faces.outside, end, { from: 0, to: TURN }) : null;
  return {
    ...(part.tolerance && { toleranceClass: part.tolerance }),
    ends: [
      { name: shape.ends.a, ...a, girthMm: girth("a") },
      { name: shape.ends.b, ...b, girthMm: girth("b") },
    ],
    heightMm,
    isHeightDrawn: part.height !== undefined,
    tapes: tapes(faces.inside, part, seamDeg),
    ...diagonal(faces.inside, part),
    seamDeg,
  };
}
