import { plain } from "../../drawing/format.ts";
import { TURN } from "../../geometry/angle.ts";
import { farthestTowards, leanOfLine } from "../../geometry/lineLean.ts";
import { MM_PER_INCH } from "../../geometry/units.ts";
import { direction, dot2 } from "../../geometry/vector.ts";
import { toShare } from "../../geometry/wall.ts";
import type { Shaped, SpacePoint } from "../../report/report.ts";
import type { Numbers } from "./numbers.ts";

/** A length as closely as a sum needs it to come out to the last figure that is told. */
export const closely = (say: Numbers, mm: number): string =>
  say.unit === "in" ? plain(mm / MM_PER_INCH, 4) : plain(mm, 2);

/** Directions that the curves of the faces are drawn in, every 5°: a mean over them is that over all. */
const LOOKS = 72;
const looks = (): number[] => Array.from({ length: LOOKS }, (_, i) => (i * TURN) / LOOKS);

/** How far a curve reaches towards a direction in plan. [mm] */
const reach = (curve: readonly SpacePoint[], planRad: number): number =>
  Math.max(...curve.map(([x, y]) => dot2([x, y], direction(planRad))));

/**
 * How far a face of the wall lies from another in the plane of an end, for each mm of plate between them, as a mean over all
 * directions: the mean of 1/cos β for edges made level, β how the wall leans there. [-]
 */
function meanMove({ solid, part }: Pick<Shaped, "solid" | "part">, end: "a" | "b"): number {
  const { inside, middle } = solid[end];
  const sum = looks().reduce((total, theta) => total + reach(middle, theta) - reach(inside, theta), 0);
  return sum / LOOKS / (part.thickness / 2);
}

/** A round end's size across as it is drawn; undefined of a rectangle. */
function roundEnd(part: Shaped["part"], end: "a" | "b") {
  if (part.shape === "square-to-round") return end === "b" ? part.roundEnd : undefined;
  const { largeEnd, smallEnd } = part;
  return end === "a" ? largeEnd : { ...smallEnd, measured: smallEnd.measured ?? largeEnd.measured };
}

/** A girth as a sum in words. */
interface GirthSum {
  readonly sum: string;
  /** Is the diameter drawn on another surface than the sum is for? */
  readonly isMoved: boolean;
}

/**
 * Once round a round end on one surface of the wall, by Cauchy: π × the mean width. "π × (600 + 3 × 1.0312)"; undefined of
 * a rectangle.
 *
 * @param share 0 the inside face, 1 the outside face
 */
export function roundGirth(
  shaped: Pick<Shaped, "solid" | "part">,
  { end, share, say }: { readonly end: "a" | "b"; readonly share: number; readonly say: Numbers },
): GirthSum | undefined {
  const drawn = roundEnd(shaped.part, end);
  if (!drawn) return undefined;
  const diameter = closely(say, drawn.diameter);
  const wider = 2 * toShare({ measured: drawn.measured, thicknessMm: shaped.part.thickness, share });
  if (wider === 0) return { sum: `π × ${diameter}`, isMoved: false };
  const plate = `${closely(say, Math.abs(wider))} × ${plain(meanMove(shaped, end), 4)}`;
  return { sum: `π × (${diameter} ${wider > 0 ? "+" : "−"} ${plate})`, isMoved: true };
}

/** What the last number of such a sum is, where it has one. */
export const MOVED_GIRTH =
  "In the plane of the end a leaning wall is thicker than square through the plate, and the last number says how many times, as a mean of all directions";

/** How the wall leans in each of those directions, positive where it comes in towards end B, on the surface that is laid out. [rad] */
export function leansRound({ solid, part }: Pick<Shaped, "solid" | "part">): number[] {
  const face =
    part.shape === "square-to-round" && part.rectangularEnd.measured !== "middle" ? "inside" : "middle";
  const [a, b] = [solid.a[face], solid.b.middle];
  return looks().flatMap((theta) => {
    const [lower, upper] = [farthestTowards(a, theta), farthestTowards(b, theta)];
    return lower && upper ? [leanOfLine(lower, upper, theta)] : [];
  });
}
