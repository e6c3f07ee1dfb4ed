import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { mm, runs, share } from "../arbitraries.ts";
import { named, reportOf } from "../parts.ts";

describe("parts at the edge of being one", () => {
  it("a straight pipe is laid out as a rectangle with no radii", () => {
    const ends = { diameter: 500, measured: "middle" as const };
    const pipe = reportOf(
      named({ shape: "right-cone", thickness: 5, largeEnd: ends, smallEnd: ends, height: 800 }),
    );
    expect(pipe.cone).toEqual({
      halfAngleDeg: 0,
      slantMm: 800,
      outerRadiusMm: null,
      innerRadiusMm: null,
      sectorDeg: 0,
    });
    const [blank] = pipe.blanks;
    expect(blank!.box.lengthMm).toBeCloseTo(500 * Math.PI, 3);
    expect(blank!.box.widthMm).toBeCloseTo(800, 6);
    expect(pipe.notes.join(" ")).toContain("straight pipe");
  });

  it("an eccentric cone without offset is the right cone, and one with equal ends a pipe", () => {
    fc.assert(
      fc.property(mm(100, 3000), mm(100, 3000), mm(50, 4000), share, (small, extra, height, t) => {
        const sizes = {
          thickness: 1 + (small / 20) * t,
          largeEnd: { diameter: small + extra, measured: "outside" as const },
          height,
        };
        const end = { diameter: small, measured: "outside" as const };
        const right = reportOf(named({ shape: "right-cone", ...sizes, smallEnd: end }));
        const eccentric = reportOf(
          named({ shape: "eccentric-cone", ...sizes, smallEnd: { ...end, offset: [0, 0] }, seam: { at: 0 } }),
        );
        expect(eccentric.blanks).toEqual(right.blanks);
        expect(eccentric.shape).toEqual(right.shape);
      }),
      runs(40),
    );
  });

  it("to a point: the closed form's sector, inside, outside and middle each from its own tip", () => {
    for (const measured of ["inside", "middle", "outside"] as const) {
      const [t, radius, height] = [12, 450, 600];
      const cone = reportOf(
        named({
          shape: "right-cone",
          thickness: t,
          largeEnd: { diameter: 2 * radius, measured },
          smallEnd: { diameter: 0 },
          height,
        }),
      );
      const alpha = Math.atan(radius / height);
      const move = { inside: t / 2, middle: 0, outside: -t / 2 }[measured];
      const middle = radius + move / Math.cos(alpha);
      expect(cone.cone?.outerRadiusMm).toBeCloseTo(middle / Math.sin(alpha), 5);
      expect(cone.cone?.innerRadiusMm).toBe(0);
      expect(cone.blanks[0]!.edges.map(({ name }) => name)).toEqual(["seam 1", "seam 2", "large end"]);
      expect(cone.blanks[0]!.areaMm2).toBeCloseTo((Math.PI * middle * middle) / Math.sin(alpha), 2);
    }
  });

  it("an oblique cone to a point is the right one where the point lies on the axis", () => {
    const sizes = { thickness: 8, largeEnd: { diameter: 700, measured: "outside" as const }, height: 500 };
    const right = reportOf(named({ shape: "right-cone", ...sizes, smallEnd: { diameter: 0 } }));
    const oblique = reportOf(
      named({
        shape: "eccentric-cone",
        ...sizes,
        smallEnd: { diameter: 0, offset: [0, 0] },
        seam: { at: 0 },
      }),
    );
    expect(oblique.accuracy.wallMm).toBeLessThan(1e-9);
    expect(oblique.blanks[0]!.areaMm2).toBeCloseTo(right.blanks[0]!.areaMm2, 3);
    expect(oblique.shape.contentsMm3 / right.shape.contentsMm3).toBeCloseTo(1, 9);
  });

  it("says how far an oblique tip is from exact, and it is the more the thicker the wall", () => {
    const part = (thickness: number) =>
      reportOf(
        named({
          shape: "eccentric-cone",
          thickness,
          largeEnd: { diameter: 900, measured: "outside" },
          smallEnd: { diameter: 0, offset: [300, 0] },
          height: 700,
        }),
      );
    const [thin, thick] = [part(2).accuracy.wallMm, part(12).accuracy.wallMm];
    expect(thin).toBeGreaterThan(0.01);
    expect(thick / thin).toBeCloseTo(6, 1);
  });

  it("nearly a full disc and nearly nothing are laid out and remarked on", () => {
    const cone = (halfAngle: number) =>
      reportOf(
        named({
          shape: "right-cone",
          thickness: 2,
          largeEnd: { diameter: 1000, measured: "middle" },
          smallEnd: { diameter: 900, measured: "middle" },
          halfAngle,
        }),
      );
    expect(cone(88).cone?.sectorDeg).toBeGreaterThan(359);
    expect(cone(88).notes.join(" ")).toContain("nearly a full disc");
    expect(cone(0.5).notes.join(" ")).toContain("nearly straight");
  });

  it("trimmed edges gain (t/2) tan β square to the edge at each end", () => {
    const part = (trimAllowance: boolean) =>
      reportOf(
        named({
          shape: "right-cone",
          thickness: 12,
          largeEnd: { diameter: 900, measured: "middle" },
          smallEnd: { diameter: 400, measured: "middle" },
          halfAngle: 30,
          trimAllowance,
        }),
      );
    const seam = (allow: boolean) => part(allow).blanks[0]!.edges[0]!.lengthMm;
    expect(seam(true) - seam(false)).toBeCloseTo(2 * 6 * Math.tan(Math.PI / 6), 5); // 3.46 mm at each end
  });

  it("a gap takes half its width off each seam edge, parallel", () => {
    const part = (gap: number) =>
      reportOf(
        named({
          shape: "right-cone",
          thickness: 4,
          largeEnd: { diameter: 900, measured: "middle" },
          smallEnd: { diameter: 0 },
          height: 700,
          seam: { gap },
        }),
      );
    const { cone, blanks } = part(6);
    const half = (cone!.sectorDeg * Math.PI) / 360;
    const apex = blanks[0]!.outline[1]!;
    // Both edges move 3 mm square to themselves, so the tip moves 3/sin(half the sector) along the middle line.
    const foot = part(0).blanks[0]!.outline[1]!;
    expect(foot[1] - apex[1]).toBeCloseTo(3 / Math.sin(half), 1);
  });

  it("a lap adds a strip as wide as asked, parallel to seam 2", () => {
    const part = (seam: object) =>
      reportOf(
        named({
          shape: "eccentric-cone",
          thickness: 2,
          largeEnd: { diameter: 900, measured: "middle" },
          smallEnd: { diameter: 400, measured: "middle", offset: [100, 60] },
          height: 700,
          seam,
        }),
      );
    const [plain, lapped] = [part({}), part({ joint: "lap", lap: 30 })];
    const seam = plain.blanks[0]!.edges.find(({ name }) => name === "seam 2")!.lengthMm;
    const gained = lapped.blanks[0]!.areaMm2 - plain.blanks[0]!.areaMm2;
    expect(gained / (30 * seam)).toBeCloseTo(1, 2);
  });
});
