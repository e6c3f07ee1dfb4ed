import { expect, it } from "vitest";
import { roundDrawing } from "../../src/drawing/round.ts";
import { layOut } from "../../src/report/layOut.ts";
import { roundOf } from "../../src/report/round.ts";
import type { Vec2 } from "../../src/geometry/vector.ts";
import { unrolledApart } from "../../src/drawing/setApart.ts";
import { catalogue, named } from "../parts.ts";

const cone = named({
  shape: "right-cone",
  thickness: 3,
  largeEnd: { diameter: 600, measured: "middle" },
  smallEnd: { diameter: 300, measured: "middle" },
  height: 400,
});
const made = layOut(cone, { catalogue });
if (made.kind === "refused") throw new Error("refused");
const pieces = roundOf(made);
/** Square to each of its sides, do two convex outlines stand apart along one of them? */
const standApart = (p: readonly Vec2[], q: readonly Vec2[]): boolean =>
  [p, q].some((one) =>
    one.some(([x1, y1], i) => {
      const [x2, y2] = one[(i + 1) % one.length]!;
      const along = (points: readonly Vec2[]) => points.map(([x, y]) => x * (y2 - y1) - y * (x2 - x1));
      const [a, b] = [along(p), along(q)];
      return Math.max(...a) <= Math.min(...b) + 1e-6 || Math.max(...b) <= Math.min(...a) + 1e-6;
    }),
  );

const seen = (share: number, tiltDeg: number) =>
  roundDrawing(pieces, {
    share,
    sight: { turnRad: 0.3, tiltRad: (tiltDeg * Math.PI) / 180 },
    thicknessMm: 3,
  });
const faces = (share: number, tiltDeg: number) =>
  new Set(
    seen(share, tiltDeg)
      .facets.filter(({ face }) => face === "inside" || face === "outside")
      .map(({ face }) => face),
  );

it("shows the outside of a cone that stands, its inside too from above, and the inside alone once it lies flat", () => {
  expect(faces(0, 0)).toEqual(new Set(["outside", "inside"]));
  expect(faces(1, 60)).toEqual(new Set(["inside"]));
  expect(faces(1, -60)).toEqual(new Set(["outside"]));
});

it("paints what is nearer over what is farther, and holds all of it", () => {
  const { facets, reachMm } = seen(0, 20);
  const first = facets.filter(({ face }) => face !== "edge")[0]!;
  // The farthest facet of a standing cone is one of its back, which shows its inside.
  expect(first.face).toBe("inside");
  for (const { points } of facets)
    for (const [x, y] of points) expect(Math.max(Math.abs(x), Math.abs(y))).toBeLessThanOrEqual(reachMm);
});

it("shades a round wall without a step between facets", () => {
  const outside = seen(0, 20).facets.filter(({ face }) => face === "outside");
  const lights = outside.map(({ light }) => light).toSorted((a, b) => a - b);
  const steps = lights.slice(1).map((light, i) => light - lights[i]!);
  expect(lights.at(-1)! - lights[0]!).toBeGreaterThan(0.3);
  // A facet turns by 5° at most, and with it the cosine to the light, half of which is its light.
  expect(Math.max(...steps)).toBeLessThanOrEqual(Math.sin((5 * Math.PI) / 180) / 2);
});

it("shows every numbered line, and the chosen one where it lies, seen or not", () => {
  const [piece] = pieces;
  expect(piece!.lines.length).toBe(13);
  // The lines of a right cone of twelve divisions stand 30° apart.
  const thetas = piece!.lines.map((i) => piece!.stations[i]!.theta);
  for (const [k, theta] of thetas.slice(1).entries()) expect(theta - thetas[k]!).toBeCloseTo(Math.PI / 6, 9);
  for (const share of [0, 0.3, 1])
    for (let line = 0; line < 13; line++) {
      const sight = { turnRad: 0.3, tiltRad: 0.4 };
      const { chosen, facets } = roundDrawing(pieces, {
        share,
        sight,
        thicknessMm: 3,
        chosen: { piece: 0, line },
      });
      // Its true length is that of the slant, so that it is seen at most so long.
      const [p, q] = chosen!;
      expect(Math.hypot(p![0] - q![0], p![1] - q![1])).toBeLessThanOrEqual(Math.hypot(150, 400) + 1e-6);
      expect(facets.filter(({ face }) => face === "chosen").length).toBe(1);
      expect(facets.filter(({ face }) => face === "element").length).toBe(11);
    }
  // From the front one that stands at the back has facets painted over it, one at the front has not.
  const order = (line: number) => {
    const { facets } = roundDrawing(pieces, {
      share: 0,
      sight: { turnRad: 0, tiltRad: 0.1 },
      thicknessMm: 3,
      chosen: { piece: 0, line },
    });
    return facets.findIndex(({ face }) => face === "chosen") / facets.length;
  };
  const front = thetas.findIndex((theta) => Math.sin(theta) < -0.99);
  const back = thetas.findIndex((theta) => Math.sin(theta) > 0.99);
  expect(order(front)).toBeGreaterThan(0.8);
  expect(order(back)).toBeLessThan(0.3);
});

it("draws the wall as thick as it is: the ring at an end seen from above is the plate's thickness wide", () => {
  const { facets } = roundDrawing(pieces, {
    share: 0,
    sight: { turnRad: 0, tiltRad: Math.PI / 2 },
    thicknessMm: 40,
  });
  const reaches = (kinds: readonly string[]) =>
    facets
      .filter(({ face }) => kinds.includes(face))
      .flatMap(({ points }) => points.map(([x]) => Math.abs(x)));
  // tan of the half angle is 150 / 400: from the middle of the wall half the thickness to either side, square to it.
  const aside = (40 / 2) * (400 / Math.hypot(150, 400));
  expect(Math.max(...reaches(["outside"]))).toBeCloseTo(300 + aside, 0);
  expect(Math.max(...reaches(["edge"]))).toBeCloseTo(300 + aside, 0);
});

it.each([
  [2, 600],
  [4, 600],
  [2, 900],
] as const)("lays %i flat pieces beside each other, none over another", (count, length) => {
  const hood = layOut(
    named({
      shape: "square-to-round",
      thickness: 3,
      rectangularEnd: { length, width: 400, measured: "middle" },
      roundEnd: { diameter: 350, measured: "middle" },
      height: 500,
      pieces: count,
    }),
    { catalogue },
  );
  if (hood.kind === "refused") throw new Error("refused");
  const hoodPieces = roundOf(hood);
  expect(hoodPieces).toHaveLength(count);
  const triangles = unrolledApart(hoodPieces, 1).map(({ a, b }) =>
    a.slice(1).flatMap((_, i) =>
      [
        [a[i]!, b[i]!, a[i + 1]!],
        [a[i + 1]!, b[i]!, b[i + 1]!],
      ].map((corners) => corners.map(([x, y]): Vec2 => [x, y])),
    ),
  );
  for (const [i, one] of triangles.entries())
    for (const other of triangles.slice(i + 1))
      for (const p of one) for (const q of other) expect(standApart(p, q)).toBe(true);
  // Rolled up they stand as they did.
  const stood = hoodPieces.flatMap(({ stations }) => stations.flatMap(({ a }) => a));
  unrolledApart(hoodPieces, 0)
    .flatMap(({ a }) => a.flat())
    .forEach((x, i) => expect(x).toBeCloseTo(stood[i]!, 6));
});
