import { expect, it } from "vitest";
import { cross3, dot3, length3, type Vec3 } from "../../src/geometry/vector.ts";
import { corner } from "../../src/tables/hopperCorner.ts";
import { named, reportOf } from "../parts.ts";
import { tableOf } from "./all.ts";
import { off } from "./arithmetic.ts";

const DEG = 180 / Math.PI;
const angle = (p: Vec3, q: Vec3): number => Math.acos(dot3(p, q) / length3(p) / length3(q)) * DEG;
const minus = (p: Vec3): Vec3 => [-p[0], -p[1], -p[2]];

/** The corner at the origin, wall 1 below the x axis and wall 2 below the y axis, both falling inwards. */
function byVectors(first: number, second: number) {
  const [cos1, sin1, cos2, sin2] = [first, second].flatMap((deg) => [
    Math.cos(deg / DEG),
    Math.sin(deg / DEG),
  ]) as [number, number, number, number];
  const [fall1, fall2]: [Vec3, Vec3] = [
    [0, cos1, -sin1],
    [cos2, 0, -sin2],
  ];
  const [edge1, edge2]: [Vec3, Vec3] = [
    [1, 0, 0],
    [0, 1, 0],
  ];
  // Normals out of the material, into the hopper; the valley lies in both walls.
  const [normal1, normal2] = [cross3(edge1, fall1), cross3(fall2, edge2)];
  const up = cross3(normal1, normal2);
  const valley = up[2] < 0 ? up : minus(up);
  const level: Vec3 = [valley[0], valley[1], 0];
  return [
    angle(valley, level),
    180 - angle(normal1, normal2),
    angle(normal1, normal2),
    angle(level, edge1),
    angle(valley, edge1),
    angle(valley, edge2),
  ];
}

it("every row comes out by vectors", () => {
  for (const row of tableOf("hopper-corner").rows) {
    const wanted = byVectors(Number(row[0]), Number(row[1]));
    wanted.forEach((value, i) =>
      expect(off(row[i + 2]!, value), `${row.join(" ")}: ${value}`).toBeLessThanOrEqual(1),
    );
  }
});

it("published: a square pyramid of 60° (B. Krasnow, 2008) has 63.43°, 50.77° and 104.48°", () => {
  const row = tableOf("hopper-corner").rows.find(([a, b]) => a === "60" && b === "60")!;
  expect([row[2], row[3], row[6]]).toEqual(["50.77", "104.48", "63.43"]);
});

it("hopper 28 by 36 to 6 by 6, 16 high (Math Central QQ.09.08: 46.85° and 55.49°): valley 40.70°, between the walls 112.80°", () => {
  const slopes = [(36 - 6) / 2, (28 - 6) / 2].map((run) => Math.atan(16 / run) * DEG) as [number, number];
  expect(off("46.85", slopes[0])).toBeLessThanOrEqual(1);
  expect(off("55.49", slopes[1])).toBeLessThanOrEqual(1);
  // The corner was computed beforehand from the published sizes.
  expect(corner(...slopes).valley).toBeCloseTo(40.700975897, 6);
  expect(corner(...slopes).between).toBeCloseTo(112.797313575, 6);
});

it("the valley is less steep than either wall", () => {
  for (const row of tableOf("hopper-corner").rows)
    expect(Number(row[2])).toBeLessThan(Math.min(Number(row[0]), Number(row[1])));
});

it("the bends of a square-to-round's corner add up to no less than the bend between its flats", () => {
  const { hand } = reportOf(
    named({
      shape: "square-to-round",
      thickness: 1,
      divisions: 48,
      rectangularEnd: { length: 1000, width: 800, measured: "middle" },
      roundEnd: { diameter: 500, measured: "middle" },
      height: 600,
    }),
  );
  const slopes = [1000, 800].map((side) => Math.atan(600 / ((side - 500) / 2)) * DEG) as [number, number];
  const bends = hand.rows.reduce((sum, { bendDeg }) => sum + bendDeg, 0) / 4;
  expect(bends).toBeGreaterThanOrEqual(corner(...slopes).bend);
  expect(bends).toBeLessThan(1.3 * corner(...slopes).bend);
});
