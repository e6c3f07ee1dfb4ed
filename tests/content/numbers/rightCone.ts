import { rad, type Row } from "./row.ts";

const { PI, asin, hypot, sin, sqrt } = Math;

/** Larger real root of v³ − (3 + f)v² + 4 = 0 by Newton from the right; the radius under load. [mm] */
function loadedRadius(free: number, thickness: number, yieldMPa: number): number {
  const y = (2 * yieldMPa) / sqrt(3);
  const e = 210_000 / (1 - 0.3 ** 2);
  const f = (e * thickness) / (y * free);
  let v = 3 + f;
  for (let i = 0; i < 50; i++) v -= (v ** 3 - (3 + f) * v ** 2 + 4) / (3 * v ** 2 - 2 * (3 + f) * v);
  return (e * thickness) / (y * v);
}

const share = (closed: number) => sqrt(closed ** 2 - 0.6 ** 2) / 0.8;
const closedAt = (bend: number) => sqrt(0.6 ** 2 + (bend * 0.8) ** 2);

/** The right cone of the page: middle 600 to 300, 200 high, slant 250. */
export const rightCone: Row[] = [
  ["the wall shows 4 / 0.8 = #", 4 / 0.8],
  ["= √(200² + 150²) = #", hypot(200, 150)],
  ["s · R / (R − r) = 250 · 300 / 150 = #", (250 * 300) / 150],
  ["360° · 150 / 250 = #", (360 * 150) / 250],
  ["an arc of 216° at radius 500 is #", rad(216) * 500],
  ["Set the dividers to #", 2 * 500 * sin(rad(9))],
  ["Check corner to corner: #", 2 * 500 * sin(rad(108))],
  ["across the ends of the large edge, #", 2 * 250 * sin(rad(108))],
  ["along the large edge: #", PI * 600],
  ["Ours, at 216°, is # %", (100 * 216) / 360],
  ["at 65 % it has only # %", 100 * share(0.65)],
  ["lies between # and", 100 * closedAt(0.6)],
  ["between 77 and # % closed", 100 * closedAt(0.75)],
  ["the radius is r / cos α: #", 300 / 0.8],
  ["375 at the large end, #", 150 / 0.8],
  ["both edges # mm too long", PI * 5],
  ["A twelfth of the circle of 600 has a chord of #", 600 * sin(PI / 12)],
  ["Stepped on the pattern it loses #", rad(216) * 500 - 12 * 2 * asin((600 * sin(PI / 12)) / 1000) * 500],
  ["twelve chords come out # % short", 100 * (1 - (12 / PI) * sin(PI / 12))],
  ["% short: # mm on a diameter of 1000", 1000 * (PI - 12 * sin(PI / 12))],
  ["Twenty-four lose #", 1000 * (PI - 24 * sin(PI / 24))],
  ["Dressing our cone level takes #", 2 * 0.75],
  // Round figures, which the page calls "about".
  ["S235 of 4 mm has to be bent to about #", Math.round(loadedRadius(375, 4, 235) / 10) * 10],
  ["and to about #", Math.round(loadedRadius(375, 4, 1.4 * 235) / 10) * 10],
];
