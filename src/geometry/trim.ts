import { isPoint, type Ends } from "./seam.ts";
import type { Station } from "./station.ts";
import { NO_LENGTH_MM, SAME_ANGLE } from "./tolerance.ts";
import {
  add2,
  between2,
  cross2,
  distance2,
  dot3,
  left2,
  length3,
  middle2,
  scale2,
  sub2,
  sub3,
  unit2,
  type Vec2,
  type Vec3,
} from "./vector.ts";

/** A straight line on the sheet. */
interface Line {
  readonly at: Vec2;
  readonly along: Vec2;
}

/** A point of an end moved out by its allowance, with the direction of the edge there. */
interface Moved {
  readonly net: Vec2;
  readonly at: Vec2;
  readonly edge: Vec2;
  /** The element through it, from end A to end B. */
  readonly element: Vec2;
}

/** A corner whose mitre would stick out further than so many times its allowance is cut off instead. [-] */
const MITRE = 4;

/**
 * Moves one station's ends out so that an edge cut square to the plate still reaches the end plane over its full
 * thickness: (t/2) tan β, square to the edge, which is the way the plate leans. Normal angles grow to the left. [mm]
 */
function movedOut(station: Station, foot: Vec2, head: Vec2, thicknessMm: number): { a: Moved; b: Moved } {
  const [x, y, z] = station.normal;
  const level = Math.hypot(x, y);
  const space = sub3(station.b, station.a);
  const rim: Vec3 = [-y / level, x / level, 0];
  const cos = dot3(space, rim) / length3(space);
  const sin = Math.sqrt(Math.max(0, 1 - cos * cos));
  const element = unit2(sub2(head, foot));
  const left = left2(element);
  const edge = add2(scale2(element, cos), scale2(left, sin));
  const out = scale2(sub2(scale2(element, sin), scale2(left, cos)), (thicknessMm / 2) * Math.abs(z / level));
  return {
    a: { net: foot, at: sub2(foot, out), edge, element },
    b: { net: head, at: add2(head, out), edge, element },
  };
}

/** Where two straight lines meet; the middle of their starts where they are parallel. */
function meeting({ at: p, along: u }: Line, { at: q, along: v }: Line): Vec2 {
  const across = cross2(u, v);
  if (Math.abs(across) < SAME_ANGLE) return middle2(p, q);
  return add2(p, scale2(u, cross2(sub2(q, p), v) / across));
}

const edgeLine = ({ at, edge }: Moved): Line => ({ at, along: edge });
const seamLine = ({ net, element }: Moved): Line => ({ at: net, along: element });

/**
 * At a corner the elements fan out from one point. There the edges of the two flats are moved out and meet in a mitre,
 * or where that would be a spike are joined straight; where a seam lies in the corner, the edge meets the seam's own line.
 */
function mitred(moved: readonly Moved[], open: boolean): Vec2[] {
  const path = moved.map(({ at }) => at);
  const same = (i: number, j: number) =>
    distance2((moved[i] as Moved).net, (moved[j] as Moved).net) <= NO_LENGTH_MM;
  for (let first = 0; first < moved.length; first++) {
    let last = first;
    while (last + 1 < moved.length && same(first, last + 1)) last += 1;
    if (last === first) continue;
    const [p, q] = [moved[first] as Moved, moved[last] as Moved];
    const corner = meeting(
      first === 0 ? seamLine(p) : edgeLine(p),
      last === moved.length - 1 && !open ? seamLine(q) : edgeLine(q),
    );
    const most = MITRE * Math.max(distance2(p.net, p.at), distance2(q.net, q.at));
    const spike = distance2(p.net, corner) > most;
    for (let i = first; i <= last; i++)
      path[i] = spike ? between2(p.at, q.at, (i - first) / (last - first)) : corner;
    first = last;
  }
  return path;
}

/**
 * The path begun on its seam's line: cut off there where it begins beyond it, else run on straight to it.
 * Undefined where it stays beyond it all along: an edge that runs nearly along its seam and curves away.
 */
function begunOnSeam(path: readonly Vec2[], start: Moved, side: 1 | -1): Vec2[] | undefined {
  const inside = (p: Vec2) => side * cross2(start.element, sub2(p, start.net));
  const first = path.findIndex((p) => inside(p) > 0);
  if (first < 0) return undefined;
  const [here, before] = [path[first] as Vec2, path[first - 1]];
  if (!before) return [meeting(seamLine(start), { at: here, along: start.edge }), ...path.slice(1)];
  const on = between2(before, here, inside(before) / (inside(before) - inside(here)));
  // As many points as before, so that each still stands for its station.
  return path.map((p, i) => (i < first ? between2(on, here, i / first) : p));
}

/**
 * The developed ends moved outwards by the allowance for dressing level; an end that is a point stays.
 *
 * @param order plate thickness [mm]; open where the strip runs on past seam 2, as for a lap
 * @returns undefined where an end with its allowance would not come back to its seam
 */
export function withTrim(
  stations: readonly Station[],
  flat: Ends,
  { thicknessMm, open }: { readonly thicknessMm: number; readonly open: boolean },
): Ends | undefined {
  const out = flat.a.map((foot, i) => movedOut(stations[i] as Station, foot, flat.b[i] as Vec2, thicknessMm));
  const end = (of: "a" | "b"): readonly Vec2[] | undefined => {
    const moved = out.map((one) => one[of]);
    const [start, finish] = [moved[0], moved.at(-1)];
    if (!start || !finish || isPoint(flat[of])) return flat[of];
    const begun = begunOnSeam(mitred(moved, open), start, 1);
    return open ? begun : begun && begunOnSeam(begun.toReversed(), finish, -1)?.toReversed();
  };
  const [a, b] = [end("a"), end("b")];
  return a && b && { a, b };
}
