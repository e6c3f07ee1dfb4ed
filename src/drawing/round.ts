import { unrolledAt } from "../geometry/unroll.ts";
import { add3, cross3, dot3, length3, scale3, sub3, type Vec2, type Vec3 } from "../geometry/vector.ts";
import type { RoundPiece } from "../report/round.ts";

/** Where one looks from: turned about the upright, and tilted from level to straight down. [rad] */
export interface Sight3 {
  readonly turnRad: number;
  readonly tiltRad: number;
}

/** One facet as it is seen, the farthest first: corners on the screen, which face of the plate, how light it lies. */
interface SeenFacet {
  readonly face: "inside" | "outside" | "edge";
  /** 0 in the shade … 4 in the light. */
  readonly light: number;
  readonly points: readonly Vec2[];
  /** A line of the wall along its left side: an element, or the edge of a seam. */
  readonly line: "element" | "seam" | null;
}

export interface RoundDrawing {
  readonly facets: readonly SeenFacet[];
  /** Half the side of a square, about the middle of what is seen, that holds it all. [mm] */
  readonly reachMm: number;
}

/** From the upper left, over the shoulder of whoever looks. */
const LIGHT: Vec3 = [-0.45, 0.55, 0.7];
const LIGHTS = 5;
/** So many facets to one drawn element line. */
const ELEMENT_EVERY = 6;
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

/** The part at one step of its unrolling as an eye far off sees it, ready to be painted one facet over the other. */
export function roundDrawing(
  pieces: readonly RoundPiece[],
  { share, sight, thicknessMm }: { share: number; sight: Sight3; thicknessMm: number },
): RoundDrawing {
  const eye = eyeAt(sight);
  const strips = pieces.map(({ strip }) => unrolledAt(strip, share));
  const all = strips.flatMap(({ a, b }) => [...a, ...b]);
  const seen = all.map((p): Vec2 => [dot3(p, eye.right), dot3(p, eye.up)]);
  const [xs, ys] = [seen.map(([x]) => x), seen.map(([, y]) => y)];
  const middle: Vec2 = [(Math.min(...xs) + Math.max(...xs)) / 2, (Math.min(...ys) + Math.max(...ys)) / 2];
  const reach = Math.max(Math.max(...xs) - middle[0], Math.max(...ys) - middle[1]);
  const facets = pieces.flatMap((piece, i) =>
    facetsOf(piece, strips[i] as (typeof strips)[0], { eye, middle, thicknessMm }),
  );
  return {
    facets: facets.sort((p, q) => p.depth - q.depth),
    reachMm: MARGIN * (reach + thicknessMm),
  };
}

interface Deep extends SeenFacet {
  readonly depth: number;
}

function facetsOf(
  { stations }: RoundPiece,
  { a, b }: { a: readonly Vec3[]; b: readonly Vec3[] },
  { eye, middle, thicknessMm }: { eye: Eye; middle: Vec2; thicknessMm: number },
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
  const facet = (
    points: readonly Vec3[],
    normal: Vec3,
    face: SeenFacet["face"],
    line: SeenFacet["line"],
  ): Deep => {
    const lit = dot3(face === "inside" ? scale3(normal, -1) : normal, LIGHT) / length3(LIGHT);
    return {
      face,
      light: Math.min(LIGHTS - 1, Math.max(0, Math.floor(((lit + 1) / 2) * LIGHTS))),
      points: points.map(onScreen),
      line,
      depth: points.reduce((sum, p) => sum + dot3(p, eye.back), 0) / points.length,
    };
  };
  const found: Deep[] = [];
  outward.forEach((normal, i) => {
    if (!normal) return;
    const [p, q, r, s] = [corner(a, i), corner(b, i), corner(b, i + 1), corner(a, i + 1)];
    const line = i === 0 ? "seam" : i % ELEMENT_EVERY === 0 ? "element" : null;
    found.push(facet([p, q, r, s], normal, dot3(normal, eye.back) >= 0 ? "outside" : "inside", line));
    // The plate's own thickness, where it shows: along both ends.
    for (const [from, to] of [
      [p, s],
      [q, r],
    ] as const)
      found.push(facet(band(from, to, normalAt(i), normalAt(i + 1), thicknessMm), [0, 0, 1], "edge", null));
  });
  const last = stations.length - 1;
  for (const i of [0, last])
    found.push(
      facet(
        band(corner(a, i), corner(b, i), normalAt(i), normalAt(i), thicknessMm),
        [0, 0, 1],
        "edge",
        "seam",
      ),
    );
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
