import { leanAt, type Skin } from "../../src/geometry/skin.ts";
import { isFlat, type Station } from "../../src/geometry/station.ts";
import type { FlatStrip } from "../../src/geometry/strip.ts";
import { sub3, type Vec2 } from "../../src/geometry/vector.ts";

/** State of the walk round: direction of the edges on the sheet, and the point of end A. */
type State = readonly [number, number, number];

/**
 * The exact development by another road: the developed edges turn by ∫ sin β dθ (the geodesic curvature of a rim on
 * its skin, which bending keeps; do Carmo, Differential Geometry of Curves and Surfaces, §4-4, from memory) and run on
 * by ∫ ρ dθ. Integrated by Runge–Kutta between stations, it has no triangles and no extrapolation.
 */
export function exactDevelopment(skin: Skin, stations: readonly Station[], stepsBetween = 8): FlatStrip {
  const rate = (theta: number, [psi]: State): State => {
    const rho = skin.a.support(theta, 1).rho;
    return [-Math.sin(leanAt(skin, theta, 1).beta), rho * Math.cos(psi), rho * Math.sin(psi)];
  };
  const add = (s: State, k: State, by: number): State => [
    s[0] + by * k[0],
    s[1] + by * k[1],
    s[2] + by * k[2],
  ];
  const advance = (s: State, theta: number, step: number): State => {
    const k1 = rate(theta, s);
    const k2 = rate(theta + step / 2, add(s, k1, step / 2));
    const k3 = rate(theta + step / 2, add(s, k2, step / 2));
    const k4 = rate(theta + step, add(s, k3, step));
    return add(add(add(add(s, k1, step / 6), k2, step / 3), k3, step / 3), k4, step / 6);
  };
  /** The element on the sheet: its parts along the edge and up the plate, turned with the edge. */
  const element = ({ a, b, normal }: Station, [psi]: State): Vec2 => {
    const level = Math.hypot(normal[0], normal[1]);
    const t = [-normal[1] / level, normal[0] / level, 0] as const;
    const e = sub3(b, a);
    const along = e[0] * t[0] + e[1] * t[1];
    const up = Math.sqrt(Math.max(0, e[0] ** 2 + e[1] ** 2 + e[2] ** 2 - along ** 2));
    // Along runs to the left where the plate lies inside face up; up is a quarter turn to the right of it.
    return [along * Math.cos(psi) + up * Math.sin(psi), along * Math.sin(psi) - up * Math.cos(psi)];
  };
  const first = stations[0]!;
  const start = element(first, [0, 0, 0]);
  let state: State = [Math.PI / 2 - Math.atan2(start[1], start[0]), 0, 0]; // the first element stands upright
  const a: Vec2[] = [[0, 0]];
  const b: Vec2[] = [element(first, state)];
  for (let i = 1; i < stations.length; i++) {
    const [p, q] = [stations[i - 1]!, stations[i]!];
    if (isFlat(p, q)) {
      const side = Math.hypot(q.a[0] - p.a[0], q.a[1] - p.a[1]);
      state = [state[0], state[1] + side * Math.cos(state[0]), state[2] + side * Math.sin(state[0])];
    } else {
      const step = (q.theta - p.theta) / stepsBetween;
      for (let k = 0; k < stepsBetween; k++) state = advance(state, p.theta + k * step, step);
    }
    a.push([state[1], state[2]]);
    const e = element(q, state);
    b.push([state[1] + e[0], state[2] + e[1]]);
  }
  return { a, b };
}
