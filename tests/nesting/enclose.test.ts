import fc from "fast-check";
import { expect, it } from "vitest";
import { ENCLOSE_GUARD_MM, ENCLOSE_MM } from "../../src/geometry/tolerance.ts";
import { enclose } from "../../src/nesting/enclose.ts";
import { contourOf, cutPatterns } from "../../src/output/contour.ts";
import { anyPart, runs } from "../arbitraries.ts";
import { reportOf } from "../parts.ts";
import { area, distanceApart, sharedArea } from "./judge.ts";

it("holds the whole blank with room to spare, and lies hardly further out, with few corners", () => {
  fc.assert(
    fc.property(anyPart, (part) => {
      for (const { blank } of cutPatterns(reportOf(part))) {
        const round = enclose(contourOf(blank));
        // The judge rounds to 0.001 mm.
        const rounding = 0.001 * blank.cutLengthMm;
        expect(sharedArea(blank.outline, round)).toBeGreaterThan(area(blank.outline) - rounding);
        // The contour keeps to the outline within 0.01 mm.
        expect(distanceApart(blank.outline, round, 5)).toBeGreaterThan(ENCLOSE_GUARD_MM - 0.011);
        // What few corners cost beyond that is a share of the plate that nobody could save.
        const most = (ENCLOSE_MM + 2 * ENCLOSE_GUARD_MM) * blank.cutLengthMm + 0.004 * area(blank.outline);
        expect(area(round) - area(blank.outline)).toBeLessThan(most);
        expect(round.length).toBeLessThan(90);
      }
    }),
    runs(40),
  );
});
