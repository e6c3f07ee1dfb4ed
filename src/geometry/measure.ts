import { TURN, wrap } from "./angle.ts";
import { integrate } from "./quadrature.ts";
import type { Rim, Side } from "./rim.ts";
import { leanAt, type Skin, turningRate } from "./skin.ts";
import { breaksBetween, type Span } from "./station.ts";
import { SAME_ANGLE } from "./tolerance.ts";

const WHOLE: Span = { from: 0, to: TURN };

/** Integrates a function of the skin over smooth stretches only, since it may jump at breaks. */
function overSmooth(skin: Skin, span: Span, f: (theta: number) => number): number {
  const inside = breaksBetween(skin, span.from, span.to);
  const ends = [span.from, ...inside.filter((t) => t > span.from && t < span.to), span.to].sort(
    (p, q) => p - q,
  );
  let sum = 0;
  for (let i = 1; i < ends.length; i++) {
    const [left, right] = [ends[i - 1] as number, ends[i] as number];
    if (right - left > SAME_ANGLE) sum += integrate(f, left, right);
  }
  return sum;
}

/** Length of the straight side that a rim has at a break. [mm] */
function sideAt(rim: Rim, theta: number): number {
  return rim.support(theta, 1).dh - rim.support(theta, -1).dh;
}

/** Adds something for every flat within the span; a flat at the start or the end counts half, for the seam divides it. */
function overFlats(skin: Skin, span: Span, f: (theta: number) => number): number {
  const found = breaksBetween(skin, span.from, span.to).sort((p, q) => p - q);
  let sum = 0;
  found.forEach((theta, i) => {
    if (i > 0 && theta - (found[i - 1] as number) < SAME_ANGLE) return; // both ends break here: one flat
    const atEnd = Math.abs(theta - span.from) < SAME_ANGLE || Math.abs(theta - span.to) < SAME_ANGLE;
    sum += f(wrap(theta)) * (atEnd ? 0.5 : 1);
  });
  return sum;
}

/** Length of one end's rim over a span: ∫ρ dθ and the straight sides. [mm] */
export function rimLength(skin: Skin, end: "a" | "b", span: Span = WHOLE): number {
  const rim = skin[end];
  const arcs = overSmooth(skin, span, (theta) => rim.support(theta, 1).rho);
  return arcs + overFlats(skin, span, (theta) => sideAt(rim, theta));
}

/** Girth of a closed rim by Cauchy's formula, ∮ h dθ: the same length found without its radii. [mm] */
export function girth(skin: Skin, end: "a" | "b"): number {
  return overSmooth(skin, WHOLE, (theta) => skin[end].support(theta, 1).h);
}

/** Area of the skin over a span: ∫ ½(ρ_A + ρ_B) H/cos β dθ and the flats. [mm²] */
export function skinArea(skin: Skin, span: Span = WHOLE): number {
  const { a, b, heightMm } = skin;
  const slope = (theta: number, side: Side) => heightMm / Math.cos(leanAt(skin, theta, side).beta);
  const curved = overSmooth(skin, span, (theta) => {
    const width = (a.support(theta, 1).rho + b.support(theta, 1).rho) / 2;
    return width * slope(theta, 1);
  });
  return (
    curved + overFlats(skin, span, (theta) => ((sideAt(a, theta) + sideAt(b, theta)) / 2) * slope(theta, 1))
  );
}

/** Turning of the tangent plane over a span: length of its normal's curve on the unit sphere. [rad] */
export function turning(skin: Skin, span: Span = WHOLE): number {
  return overSmooth(skin, span, (theta) => turningRate(skin, theta, 1));
}

/** Angle by which the developed edges turn over a span, ∫ sin β dθ: for a right cone its sector angle. [rad] */
export function edgeTurning(skin: Skin, span: Span = WHOLE): number {
  return overSmooth(skin, span, (theta) => Math.sin(leanAt(skin, theta, 1).beta));
}

/** Mixed area of two convex ends, ½∮ (h_A h_B − h_A′ h_B′) dθ; of an end with itself its area. [mm²] */
function mixedArea(skin: Skin, p: Rim, q: Rim): number {
  return overSmooth(skin, WHOLE, (theta) => {
    const [s, t] = [p.support(theta, 1), q.support(theta, 1)];
    return (s.h * t.h - s.dh * t.dh) / 2;
  });
}

/**
 * Volume within the skin and its end planes. A level section is the blend of both ends, so its area is a square
 * polynomial of the height: V = H/3 (A_A + A_AB + A_B) with the mixed area A_AB. [mm³]
 * Derived here.
 */
export function volume(skin: Skin): number {
  const { a, b, heightMm } = skin;
  return (heightMm / 3) * (mixedArea(skin, a, a) + mixedArea(skin, a, b) + mixedArea(skin, b, b));
}

/** To each degree. */
const LOOKS = 360;

const anglesOf = (count: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => (i * TURN) / count);
const TO_EACH_DEGREE = anglesOf(LOOKS);

/** Normal angles all round, for questions that are answered by looking everywhere. [rad] */
export const allRound = (count = LOOKS): readonly number[] =>
  count === LOOKS ? TO_EACH_DEGREE : anglesOf(count);

/** Every question about one skin's lean is answered by the same look round it. */
const leans = new WeakMap<Skin, { readonly least: number; readonly greatest: number }>();

/** Extremes of the lean all round, at breaks as well. [rad] */
export function leanRange(skin: Skin): { readonly least: number; readonly greatest: number } {
  const known = leans.get(skin);
  if (known) return known;
  // A wall leans the more the further its ends reach past each other: only the extremes become angles.
  let [least, greatest] = [Infinity, -Infinity];
  const look = (theta: number): void => {
    const reach = skin.a.support(theta, 1).h - skin.b.support(theta, 1).h;
    least = Math.min(least, reach);
    greatest = Math.max(greatest, reach);
  };
  for (let i = 0; i < LOOKS; i++) look((i * TURN) / LOOKS);
  skin.a.breaks.forEach(look);
  skin.b.breaks.forEach(look);
  const found = {
    least: Math.atan2(least, skin.heightMm),
    greatest: Math.atan2(greatest, skin.heightMm),
  };
  leans.set(skin, found);
  return found;
}
