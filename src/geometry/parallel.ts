import type { Rim, Side, Support } from "./rim.ts";
import type { Skin } from "./skin.ts";
import { direction } from "./vector.ts";

/** Distances along the outward normal from the surface each end is drawn on to the surface wanted. [mm] */
export interface Offsets {
  readonly a: number;
  readonly b: number;
}

/** The exact parallel surface at one normal angle. */
interface Parallel {
  readonly a: Support;
  readonly b: Support;
}

/**
 * The parallel surface of a smooth skin, at one normal angle. The tangent plane moves along its own normal, so the
 * lean of the wall solves H sin β − D cos β = δ with D = h_A − h_B as drawn and δ = d_A − d_B:
 *
 *   β = atan2(D, H) + asin(δ/√(H² + D²)),   h_new = h + d/cos β
 *
 * and the derivatives follow from differentiating that equation twice.
 */
function parallelAt(drawn: Skin, offsets: Offsets, theta: number, side: Side): Parallel {
  const a = drawn.a.support(theta, side);
  const b = drawn.b.support(theta, side);
  const height = drawn.heightMm;
  const delta = offsets.a - offsets.b;
  const d = a.h - b.h;
  const dPrime = a.dh - b.dh;
  const dSecond = a.rho - a.h - (b.rho - b.h);
  const beta = Math.atan2(d, height) + Math.asin(delta / Math.sqrt(height * height + d * d));
  const [sin, cos] = [Math.sin(beta), Math.cos(beta)];
  const k = height - delta * sin;
  const dBeta = (dPrime * cos * cos) / k;
  const slope = (sin * dPrime) / k;
  const dSlope = (cos * dBeta * dPrime + sin * dSecond) / k + (sin * dPrime * delta * cos * dBeta) / (k * k);
  return { a: moved(a, offsets.a, { cos, slope, dSlope }), b: moved(b, offsets.b, { cos, slope, dSlope }) };
}

const moved = (
  end: Support,
  by: number,
  { cos, slope, dSlope }: { readonly cos: number; readonly slope: number; readonly dSlope: number },
): Support => ({
  h: end.h + by / cos,
  dh: end.dh + by * slope,
  rho: end.rho + by / cos + by * dSlope,
});

/** Does a parallel surface exist at all: is the wall thinner than the skin is high, all round? */
export function hasParallel(drawn: Skin, offsets: Offsets, thetas: readonly number[]): boolean {
  const delta = offsets.a - offsets.b;
  return thetas.every((theta) => {
    const d = drawn.a.support(theta, 1).h - drawn.b.support(theta, 1).h;
    const root = Math.hypot(drawn.heightMm, d);
    if (Math.abs(delta) >= root) return false;
    return Math.abs(Math.atan2(d, drawn.heightMm) + Math.asin(delta / root)) < Math.PI / 2;
  });
}

function parallelRim(breaks: readonly number[], support: Rim["support"]): Rim {
  return {
    breaks,
    support,
    point(theta, side) {
      const { h, dh } = support(theta, side);
      const [x, y] = direction(theta);
      return [h * x - dh * y, h * y + dh * x];
    },
  };
}

/**
 * The skin parallel to a drawn smooth skin, cut by the same end planes: again developable, with parallel elements.
 * Only for ends without corners; see `hasParallel` for whether it exists.
 *
 * @param offsets outward distances of the new surface from the drawn one at each end [mm]
 */
export function parallelSkin(drawn: Skin, offsets: Offsets): Skin {
  if (offsets.a === 0 && offsets.b === 0) return drawn;
  // Both ends, their points and the lean between them are asked for at one angle after the other: work each out once.
  let last = { theta: NaN, side: 1 as Side, at: undefined as Parallel | undefined };
  const at = (theta: number, side: Side): Parallel => {
    if (last.at === undefined || last.theta !== theta || last.side !== side)
      last = { theta, side, at: parallelAt(drawn, offsets, theta, side) };
    return last.at as Parallel;
  };
  return {
    ...drawn,
    a: parallelRim(drawn.a.breaks, (theta, side) => at(theta, side).a),
    b: parallelRim(drawn.b.breaks, (theta, side) => at(theta, side).b),
  };
}
