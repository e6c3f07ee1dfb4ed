import fc from "fast-check";
import { expect, it } from "vitest";
import { layOut } from "../../src/report/layOut.ts";
import { leastWidths, tightestSquares } from "../../src/report/skinExtremes.ts";
import { anyPart, runs } from "../arbitraries.ts";
import { catalogue } from "../parts.ts";

it("one direction says of a right cone what all round say, and of no other part is it asked so", () => {
  let alike = 0;
  fc.assert(
    fc.property(anyPart, (part) => {
      const made = layOut(part, { catalogue });
      if (made.kind === "refused" || !made.layout.cone) return;
      alike += 1;
      const { inside } = made.layout.faces;
      const stations = made.laid.flatMap(({ flat }) => flat.development.stations);
      const [one, all] = [leastWidths(inside, true), leastWidths(inside, false)];
      expect(one.large).toBeCloseTo(all.large, 8);
      expect(one.small).toBeCloseTo(all.small, 8);
      const { skin } = made.layout;
      const [square, squares] = [
        tightestSquares(skin, stations, true),
        tightestSquares(skin, stations, false),
      ];
      expect(square.large).toBeCloseTo(squares.large, 8);
      expect(square.small).toBeCloseTo(squares.small, 8);
    }),
    runs(100),
  );
  expect(alike).toBeGreaterThan(20);
});
