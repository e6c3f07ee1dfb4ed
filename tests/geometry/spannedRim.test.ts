import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { acrossSpansMm, rimEnd } from "../../src/geometry/spannedRim.ts";
import { acrossLedMm } from "../../src/geometry/straightLead.ts";
import { even } from "../even.ts";

const TURN = 2 * Math.PI;

describe("a rim bent stretch by stretch", () => {
  it("is as wide as the closed form says of a cone's arc with a straight lead", () => {
    fc.assert(
      fc.property(
        even(100, 3000),
        even(0.35, 0.9),
        even(0, 0.3),
        even(0.01, 0.3),
        even(0, 5),
        fc.constantFrom(1, 2, 3),
        (radiusMm, closed, sine, lead, nearerMm, pieces) => {
          const levelMm = radiusMm / closed;
          const wholeMm = (TURN * radiusMm) / pieces;
          const leadMm = lead * wholeMm;
          const end = { levelMm, sine: sine / closed, sweepRad: (TURN * closed) / pieces, leadMm };
          const led = acrossLedMm(end, nearerMm);
          const spans = [
            { arcMm: wholeMm - leadMm, levelMm },
            { arcMm: leadMm, levelMm: Infinity },
          ];
          const reachMm = sine === 0 ? Infinity : radiusMm / sine;
          expect(Math.abs(acrossSpansMm({ reachMm, spans }, nearerMm) - led)).toBeLessThan(1e-6 * radiusMm);
        },
      ),
      { numRuns: 300 },
    );
  });

  it("closes where it is the rim of a whole cone, cut into any stretches", () => {
    fc.assert(
      fc.property(even(100, 3000), even(0.02, 1.4), even(0.1, 0.9), (radiusMm, halfAngleRad, share) => {
        const wholeMm = TURN * radiusMm;
        const spans = [share, 1 - share].map((of) => ({ arcMm: of * wholeMm, levelMm: radiusMm }));
        const rim = { reachMm: radiusMm / Math.sin(halfAngleRad), spans };
        expect(acrossSpansMm(rim, 0)).toBeLessThan(1e-9 * radiusMm);
        expect(Math.abs(rimEnd(rim).outsideMm)).toBeLessThan(1e-9 * radiusMm);
        // One stretch alone is an arc of that radius.
        const arc = { ...rim, spans: [spans[0]!] };
        const chord = 2 * radiusMm * Math.sin(share * Math.PI);
        expect(acrossSpansMm(arc, 0)).toBeCloseTo(chord, 6);
      }),
      { numRuns: 300 },
    );
  });

  it("ends outside and short of its beginning where its last stretch is bent less, as laid down in the plane", () => {
    fc.assert(
      fc.property(even(100, 2000), even(0.05, 0.9), even(0.3, 0.95), (radiusMm, turn, share) => {
        const [stripMm, gentleMm] = [turn * radiusMm, radiusMm / share];
        const spans = [
          { arcMm: TURN * radiusMm - stripMm, levelMm: radiusMm },
          { arcMm: stripMm, levelMm: gentleMm },
        ];
        const { outsideMm, pastMm } = rimEnd({ reachMm: Infinity, spans });
        // A pipe's rim about its middle: the strip begins at -turn, along the tangent there.
        const [along, off] = [gentleMm * Math.sin(turn * share), gentleMm * (1 - Math.cos(turn * share))];
        const [x, y] = [
          radiusMm * Math.cos(turn) + along * Math.sin(turn) - off * Math.cos(turn),
          -radiusMm * Math.sin(turn) + along * Math.cos(turn) + off * Math.sin(turn),
        ];
        expect(Math.abs(outsideMm - (Math.hypot(x, y) - radiusMm))).toBeLessThan(1e-4 * radiusMm);
        expect(Math.abs(pastMm - radiusMm * Math.atan2(y, x))).toBeLessThan(1e-4 * radiusMm);
        expect(outsideMm).toBeGreaterThan(0);
        expect(pastMm).toBeLessThan(0);
      }),
      { numRuns: 300 },
    );
  });
});
