import { deg, rad, type Row } from "./row.ts";

const { PI, acos, cos, hypot, sin, sqrt } = Math;

const cornerPlan = (degrees: number) => hypot(200 - 110 * cos(rad(degrees)), 200 - 110 * sin(rad(degrees)));
const cornerLine = (degrees: number) => hypot(cornerPlan(degrees), 120);
/** Direction of the skin at plan angle θ in a corner: tan β = (h_A − h_B)/H. */
function skinNormal(degrees: number): readonly [number, number, number] {
  const theta = rad(degrees);
  const lean = Math.atan2(200 * (cos(theta) + sin(theta)) - 110, 120);
  return [cos(lean) * cos(theta), cos(lean) * sin(theta), sin(lean)];
}
function turned(from: number, to: number): number {
  const steps = 2000;
  let sum = 0;
  for (let i = 0; i < steps; i++) {
    const a = skinNormal(from + ((to - from) * i) / steps);
    const b = skinNormal(from + ((to - from) * (i + 1)) / steps);
    sum += hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]);
  }
  return deg(sum);
}
/** Seven lines 15° apart; each takes the turning between the middles of the zones beside it. */
const bends = [0, 15, 30, 45, 60, 75, 90].map((at) => turned(Math.max(0, at - 7.5), Math.min(90, at + 7.5)));
const listed = bends.map((bend) => bend.toFixed(1));
/** Angle between the two borders of a corner on the pattern, in so many parts. */
function cornerAngle(parts: number): number {
  const chord = 220 * sin(PI / (4 * parts));
  let sum = 0;
  for (let i = 0; i < parts; i++) {
    const [a, b] = [cornerLine((90 * i) / parts), cornerLine((90 * (i + 1)) / parts)];
    sum += acos((a * a + b * b - chord * chord) / (2 * a * b));
  }
  return sum;
}
/** M to D: past the corner angle and the slopes of half a flat and a whole flat, all round C. */
const beside = acos(200 / 250);
const aroundC = (parts: number) => beside + cornerAngle(parts) + beside;
const mToD = (parts: number) => sqrt(200 ** 2 + 400 ** 2 - 2 * 200 * 400 * cos(aroundC(parts)));
function mToN(parts: number): number {
  const turn = PI - aroundC(parts);
  return 400 + 2 * 200 * cos(turn);
}

/** The square-to-round of the page: 400 square, 220 round, 120 high. */
export const squareToRound: Row[] = [
  ["in plan 200 − 110 = #", 200 - 110],
  ["√(90² + 120²) = #", hypot(90, 120)],
  ["√(150² + 200²) = #", hypot(150, 200)],
  ["30° further on: #", cornerPlan(30)],
  ["30° further on: 178.9 in plan, #", cornerLine(30)],
  ["At 45° the line is only #", cornerLine(45)],
  ["2 · 110 · sin 15° = #", 220 * sin(rad(15))],
  ["the plan distances #", cornerPlan(0)],
  ["(a corner to 0°) and #", cornerPlan(30)],
  ["M to D and N to C are equal, #", mToD(3)],
  ["M to N is #", mToN(3)],
  ["M to N is 545; it is #", mToN(400)],
  ["The whole corner turns through #", turned(0, 90)],
  ...listed.map((_, i): Row => [
    `it is shared as ${listed.slice(0, i).join(", ")}${i === 0 ? "" : i === 6 ? " and " : ", "}#`,
    bends[i]!,
  ]),
  ["The spacing is #", (220 * PI) / 24],
  ["with an opening of 16 that is #", 16 / 2],
  ["half a degree on each of seven lines is #", 7 * 0.5],
  ["1.1 % short in straight steps: #", 220 * (PI - 12 * sin(PI / 12))],
  ["in straight steps: 7.9 here, #", 1000 * (PI - 12 * sin(PI / 12))],
];
