import { add3, cross3, dot3, length3, scale3, sub3, type Vec2, type Vec3 } from "../geometry/vector.ts";
import type { RoundPiece } from "../report/round.ts";
import { unrolledApart } from "./setApart.ts";

/** Where one looks from: turned about the upright, and tilted from level to straight down. [rad] */
export interface Sight3 {
  readonly turnRad: number;
  readonly tiltRad: number;
}

/** A facet as it is seen, the farthest first: corners on the screen, which face of the plate, how light it lies; or a line on it. */
interface SeenFacet {
  readonly face: "inside" | "outside" | "edge" | LineFace;
  /** 0 in the shade … 1 in the light; without steps, or a round wall would seem to have creases. */
  readonly light: number;
  readonly points: readonly Vec2[];
}
/** element: a numbered line. contour: where the wall turns away from the eye. */
type LineFace = "element" | "seam" | "contour" | "chosen";

export interface RoundDrawing {
  readonly facets: readonly SeenFacet[];
  /** The chosen line whether anything lies before it or not: where it is hidden it shines through. */
  readonly chosen: readonly Vec2[] | null;
  /** Half the side of a square, about the middle of what is seen, that holds it all. [mm] */
  readonly reachMm: number;
}

/** From the upper left, over the shoulder of whoever looks. */
const LIGHT: Vec3 = [-0.45, 0.55, 0.7];
/** A line lies on both facets that meet in it, so it is painted after the nearer of them. [of the part's reach] */
const OVER = 0.002;
/** More numbered lines on a piece than this are drawn every second, every fourth … */
const MOST_LINES = 32;
/** Room round it. [-] */
const MARGIN = 1.06;

interface Eye {
  readonly right: Vec3;
  readonly up: Vec3;
  /** Towards the eye. */
  readonly back: Vec3;
}

function eyeAt({ turnRad, tiltRad }: Sight3): Eye {
  const [s, c] = [Math.sin(turnRad), Math.cos(turnRad)];
  const [st, ct] = [Math.sin(tiltRad), Math.cos(tiltRad)];
  return { right: [c, s, 0], up: [-s * st, c * st, ct], back: [s * ct, -c * ct, st] };
}

/** The numbered line that is chosen: the piece's place in the list, and which of its lines. */
export interface ChosenInRound {
  readonly piece: number;
  readonly line: number;
}

/** The part at one step of its unrolling as an eye far off sees it, ready to be painted one facet over the other. */
export function roundDrawing(
  pieces: readonly RoundPiece[],
  {
    share,
    sight,
    thicknessMm,
    chosen,
  }: { share: number; sight: Sight3; thicknessMm: number; chosen?: ChosenInRound | undefined },
): RoundDrawing {
  const eye = eyeAt(sight);
  const strips = unrolledApart(pieces, share);
  const all = strips.flatMap(({ a, b }) => [...a, ...b]);
  const seen = all.map((p): Vec2 => [dot3(p, eye.right), dot3(p, eye.up)]);
  const [xs, ys] = [seen.map(([x]) => x), seen.map(([, y]) => y)];
  const middle: Vec2 = [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2];
  const reach = Math.max(Math.max(...xs) - middle[0], Math.max(...ys) - middle[1]);
  const facets = pieces.flatMap((piece, i) =>
    facetsOf(piece, strips[i] as (typeof strips)[0], {
      eye,
      middle,
      thicknessMm,
      over: OVER * reach,
      chosen: chosen?.piece === i ? piece.lines[chosen.line] : undefined,
    }),
  );
  return {
    facets: facets.sort((p, q) => p.depth - q.depth),
    chosen: facets.find(({ face }) => face === "chosen")?.points ?? null,
    reachMm: MARGIN * (reach + thicknessMm),
  };
}

interface Deep extends SeenFacet {
  readonly depth: number;
}

interface Scene {
  readonly eye: Eye;
  readonly middle: Vec2;
  readonly thicknessMm: number;
  readonly over: number;
  /** Station of the chosen line. */
  readonly chosen: number | undefined;
}

function facetsOf(
  { stations, lines }: RoundPiece,
  { a, b }: { a: readonly Vec3[]; b: readonly Vec3[] },
  { eye, middle, thicknessMm, over, chosen }: Scene,
): Deep[] {
  const onScreen = (p: Vec3): Vec2 => [dot3(p, eye.right) - middle[0], -(dot3(p, eye.up) - middle[1])];
  const corner = (list: readonly Vec3[], i: number) => list[i] as Vec3;
  /** Outward of the facet after station i, as it stands now; the stations tell which side is outward. */
  const outward = stations.slice(1).map((_, i) => {
    const now = across(corner(a, i), corner(b, i), corner(a, i + 1), corner(b, i + 1));
    const [one, next] = [stations[i], stations[i + 1]];
    if (!now || !one || !next) return undefined;
    const was = across(one.a, one.b, next.a, next.b);
    return was && dot3(was, one.normal) < 0 ? scale3(now, -1) : now;
  });
  const normalAt = (i: number): Vec3 =>
    outward[Math.min(i, outward.length - 1)] ?? outward[i - 1] ?? [0, 0, 1];
  const depthOf = (points: readonly Vec3[]): number =>
    points.reduce((sum, p) => sum + dot3(p, eye.back), 0) / points.length;
  const facet = (points: readonly Vec3[], normal: Vec3, face: SeenFacet["face"]): Deep => {
    const lit = dot3(face === "inside" ? scale3(normal, -1) : normal, LIGHT) / length3(LIGHT);
    return { face, light: (lit + 1) / 2, points: points.map(onScreen), depth: depthOf(points) };
  };
  /** Which way a facet faces: its outside to the eye, its inside, or it has no area. */
  const facing = outward.map((normal) => (normal ? (dot3(normal, eye.back) >= 0 ? 1 : -1) : 0));
  /** The face that is seen lies half the thickness before the middle of the wall. */
  const onFace = (i: number, list: readonly Vec3[], side: number): Vec3 =>
    add3(corner(list, i), scale3(normalAt(i), (side * thicknessMm) / 2));
  const found: Deep[] = [];
  const depths = outward.map((normal, i) => {
    if (!normal) return -Infinity;
    const side = facing[i] as number;
    const points = [onFace(i, a, side), onFace(i, b, side), onFace(i + 1, b, side), onFace(i + 1, a, side)];
    const seen = facet(points, normal, side > 0 ? "outside" : "inside");
    found.push(seen);
    // The plate's own thickness, where it shows: along both ends.
    for (const list of [a, b]) {
      const [from, to] = [corner(list, i), corner(list, i + 1)];
      found.push(facet(band(from, to, normalAt(i), normalAt(i + 1), thicknessMm), [0, 0, 1], "edge"));
    }
    return seen.depth;
  });
  const last = stations.length - 1;
  for (const i of [0, last])
    found.push(
      facet(band(corner(a, i), corner(b, i), normalAt(i), normalAt(i), thicknessMm), [0, 0, 1], "edge"),
    );
  const line = (i: number, face: LineFace): void => {
    // On the face that is seen there; where it turns away, on the one that faces the eye.
    const [before, after] = [facing[i - 1] ?? 0, facing[i] ?? 0];
    const side = Math.max(before, after) || Math.min(before, after);
    const depth = Math.max(depths[i - 1] ?? -Infinity, depths[i] ?? -Infinity) + over;
    found.push({ face, light: 0, points: [onFace(i, a, side), onFace(i, b, side)].map(onScreen), depth });
  };
  const every = 2 ** Math.ceil(Math.log2(Math.max(1, lines.length / MOST_LINES)));
  for (const [k, i] of lines.entries()) if (i > 0 && i < last && k % every === 0) line(i, "element");
  for (let i = 1; i < last; i++) if ((facing[i - 1] ?? 0) * (facing[i] ?? 0) < 0) line(i, "contour");
  line(0, "seam");
  line(last, "seam");
  if (chosen !== undefined) line(chosen, "chosen");
  return found;
}

/** Half the thickness to either side of an edge. */
function band(from: Vec3, to: Vec3, n: Vec3, m: Vec3, thicknessMm: number): Vec3[] {
  const half = thicknessMm / 2;
  return [
    add3(from, scale3(n, -half)),
    add3(from, scale3(n, half)),
    add3(to, scale3(m, half)),
    add3(to, scale3(m, -half)),
  ];
}

/** Square to a facet of two triangles, p q r and r q s; undefined for one without area. */
function across(p: Vec3, q: Vec3, r: Vec3, s: Vec3): Vec3 | undefined {
  const both = add3(cross3(sub3(r, p), sub3(q, p)), cross3(sub3(r, q), sub3(s, q)));
  const size = length3(both);
  return size > 0 ? scale3(both, 1 / size) : undefined;
}
