import { expect, it } from "vitest";
import { cornersLack } from "../../src/forming/cornersLack.ts";
import { coneCase, reducer } from "./cases.ts";

const cone = (taper: number) => ({
  largeRadiusMm: 500,
  smallRadiusMm: 500 - taper,
  heightMm: 300,
  thicknessMm: 10,
});

it("tells how much less a tape finds: from the outside in the end's plane to the corner of the square cut", () => {
  const item = coneCase(cone(300));
  // In the end's plane the outside lies t/(2 cos α) out from the middle; the square cut's corner only (t/2) cos α.
  const cos = Math.SQRT1_2;
  const lessMm = 2 * (5 / cos - 5 * cos);
  expect(cornersLack(item)).toContain(
    `${lessMm.toPrecision(3)} mm less across, ${(Math.PI * lessMm).toPrecision(3)} mm less round`,
  );
  expect(cornersLack(item)).toContain("lies 5 mm short of the end’s plane along the wall");
});

it("says nothing where no corner lacks, or nobody could read it", () => {
  expect(cornersLack(coneCase(cone(300), { trimAllowance: true }))).toBe("");
  expect(cornersLack(coneCase(cone(300), { edges: "square" }))).toBe("");
  expect(cornersLack(coneCase(cone(0)))).toBe("");
  expect(cornersLack(coneCase({ ...reducer, smallRadiusMm: 440 }))).toBe("");
});
