/** A point or direction on the sheet or in plan. [mm or -] */
export type Vec2 = readonly [number, number];
/** A point or direction in space. [mm or -] */
export type Vec3 = readonly [number, number, number];

export const add2 = (p: Vec2, q: Vec2): Vec2 => [p[0] + q[0], p[1] + q[1]];
export const sub2 = (p: Vec2, q: Vec2): Vec2 => [p[0] - q[0], p[1] - q[1]];
export const scale2 = (p: Vec2, k: number): Vec2 => [k * p[0], k * p[1]];
export const dot2 = (p: Vec2, q: Vec2): number => p[0] * q[0] + p[1] * q[1];
/** Positive where q lies to the left of p. */
export const cross2 = (p: Vec2, q: Vec2): number => p[0] * q[1] - p[1] * q[0];
// Math.hypot is several times slower in today's engines, and no length here comes near overflow.
export const length2 = (p: Vec2): number => Math.sqrt(p[0] * p[0] + p[1] * p[1]);
// Asked of every point of an outline, so that no difference is made only to be thrown away.
export function distance2(p: Vec2, q: Vec2): number {
  const x = p[0] - q[0];
  const y = p[1] - q[1];
  return Math.sqrt(x * x + y * y);
}
/** The point at a share of the way from p to q. */
export const between2 = (p: Vec2, q: Vec2, share: number): Vec2 => [
  p[0] + share * (q[0] - p[0]),
  p[1] + share * (q[1] - p[1]),
];
export const middle2 = (p: Vec2, q: Vec2): Vec2 => [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2];
/** Quarter turn to the left. */
export const left2 = (p: Vec2): Vec2 => [-p[1], p[0]];
export const unit2 = (p: Vec2): Vec2 => scale2(p, 1 / length2(p));
/** Direction of an angle counter-clockwise from +x. [rad] */
export const direction = (angleRad: number): Vec2 => [Math.cos(angleRad), Math.sin(angleRad)];

export const add3 = (p: Vec3, q: Vec3): Vec3 => [p[0] + q[0], p[1] + q[1], p[2] + q[2]];
export const scale3 = (p: Vec3, k: number): Vec3 => [k * p[0], k * p[1], k * p[2]];
export const sub3 = (p: Vec3, q: Vec3): Vec3 => [p[0] - q[0], p[1] - q[1], p[2] - q[2]];
export const dot3 = (p: Vec3, q: Vec3): number => p[0] * q[0] + p[1] * q[1] + p[2] * q[2];
export const cross3 = (p: Vec3, q: Vec3): Vec3 => [
  p[1] * q[2] - p[2] * q[1],
  p[2] * q[0] - p[0] * q[2],
  p[0] * q[1] - p[1] * q[0],
];
export const length3 = (p: Vec3): number => Math.sqrt(p[0] * p[0] + p[1] * p[1] + p[2] * p[2]);
export function distance3(p: Vec3, q: Vec3): number {
  const x = p[0] - q[0];
  const y = p[1] - q[1];
  const z = p[2] - q[2];
  return Math.sqrt(x * x + y * y + z * z);
}
export const middle3 = (p: Vec3, q: Vec3): Vec3 => [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2, (p[2] + q[2]) / 2];

/**
 * The other leg of a right triangle; 0 where the leg given is as long as its hypotenuse.
 * @example otherLeg(5, 4) // → 3
 */
export const otherLeg = (hypotenuse: number, leg: number): number =>
  Math.sqrt(Math.max(0, (hypotenuse - leg) * (hypotenuse + leg)));
