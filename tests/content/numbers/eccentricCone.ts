import { rad, type Row } from "./row.ts";

const { PI, acos, cos, hypot, sin } = Math;

const toApex = (degrees: number) => hypot(250 * cos(rad(degrees)) - 110, 250 * sin(rad(degrees)));
const element = (degrees: number) => hypot(toApex(degrees), 480) / 2;
const point = (radius: number, degrees: number, x: number) =>
  [x + radius * cos(rad(degrees)), radius * sin(rad(degrees))] as const;
function diagonal(from: number, to: number): number {
  const [a, b] = [point(250, from, 0), point(125, to, 55)];
  return hypot(b[0] - a[0], b[1] - a[1], 240);
}
/** Across the corners of the whole sector of n equal parts, each a triangle with its tip at the apex. */
function acrossSeams(parts: number): number {
  let turn = 0;
  for (let i = 0; i < parts; i++) {
    const [p, q] = [(360 * i) / parts, (360 * (i + 1)) / parts];
    const [a, b, c] = [2 * element(p), 2 * element(q), 500 * sin(PI / parts)];
    turn += acos((a * a + b * b - c * c) / (2 * a * b));
  }
  return 2 * 500 * sin(turn / 2);
}
/** Middle radius square to the element where the lean does not change along the rim. */
const squareRadius = (plan: number) => (250 * hypot(plan, 240)) / 240;
const apexRows = [0, 30, 60, 90, 120, 150, 180].flatMap((at): Row[] => [
  [`| ${at}° | #`, toApex(at)],
  [`| ${at}° | ${toApex(at).toFixed(1)} | #`, hypot(toApex(at), 480)],
  [`| ${at}° | ${toApex(at).toFixed(1)} | ${hypot(toApex(at), 480).toFixed(1)} | #`, element(at)],
]);

/** The eccentric cone of the page: middle 500 to 250, offset 55, 240 high. */
export const eccentricCone: Row[] = [
  ["250 − 125 − 55 = #", 250 - 125 - 55],
  ["√(70² + 240²) = #", hypot(70, 240)],
  ["it covers 180, and the line is #", hypot(180, 240)],
  ["lies twice as high, at #", 2 * 240],
  ["twice as far over, at #", 2 * 55],
  ...apexRows,
  ["one twelfth of the large circle, #", 500 * sin(PI / 12)],
  ["between neighbours there should measure #", 250 * sin(PI / 12)],
  ["at the large edge are # apart with twelve divisions", acrossSeams(12)],
  ["on the exact pattern they are #", acrossSeams(20_000)],
  ["to 30° on the small end it is #", diagonal(0, 30)],
  ["of our example grows from #", squareRadius(70)],
  ["from 260 on the steep side to #", squareRadius(180)],
  ["In our example it is # times: one setting", squareRadius(180) / squareRadius(70)],
  ["here the lines differ by #", 300 - 250],
  ["lose 1.1 % of the girth, about #", 1000 * (PI - 12 * sin(PI / 12))],
  ["Twenty-four lose #", 1000 * (PI - 24 * sin(PI / 24))],
  ["Each millimetre in diameter is #", PI],
];
