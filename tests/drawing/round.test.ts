import { expect, it } from "vitest";
import { roundDrawing } from "../../src/drawing/round.ts";
import { layOut } from "../../src/report/layOut.ts";
import { roundOf } from "../../src/report/round.ts";
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
const seen = (share: number, tiltDeg: number) =>
  roundDrawing(pieces, {
    share,
    sight: { turnRad: 0.3, tiltRad: (tiltDeg * Math.PI) / 180 },
    thicknessMm: 3,
  });
const faces = (share: number, tiltDeg: number) =>
  new Set(
    seen(share, tiltDeg)
      .facets.filter(({ face }) => face !== "edge")
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
