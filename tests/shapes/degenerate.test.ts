import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { distance2 } from "../../src/geometry/vector.ts";
import { mm, runs, share } from "../arbitraries.ts";
import { boxesAtAngles, uprightBox } from "../../src/geometry/polygon.ts";
import { develop } from "../../src/report/develop.ts";
import { catalogue, named, reportOf } from "../parts.ts";

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
          height: height + extra / 4,
        };
        const end = { diameter: small, measured: "outside" as const };
        const right = reportOf(named({ shape: "right-cone", ...sizes, smallEnd: end }));
        const eccentric = reportOf(
          named({ shape: "eccentric-cone", ...sizes, smallEnd: { ...end, offset: [0, 0] }, seam: { at: 0 } }),
        );
        // Two roads to the same radii: equal but for the last digits, and so perhaps for the last decimal.
        const [p, q] = [eccentric.blanks[0]!, right.blanks[0]!];
        expect(p.outline).toHaveLength(q.outline.length);
        p.outline.forEach((point, i) => expect(distance2(point, q.outline[i]!)).toBeLessThan(1e-5));
        expect(p.massKg).toBeCloseTo(q.massKg, 5);
        expect(eccentric.shape.contentsMm3 / right.shape.contentsMm3).toBeCloseTo(1, 9);
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

  it("square edges: every face's rims stand where the corners of the plate are, and all within the overall height", () => {
    const [t, height] = [20, 600];
    const { solid, cone, shape } = reportOf(
      named({
        shape: "right-cone",
        thickness: t,
        largeEnd: { diameter: 900, measured: "outside" },
        smallEnd: { diameter: 400, measured: "inside" },
        height,
        edges: "square",
      }),
    );
    const lift = t * Math.sin((cone!.halfAngleDeg * Math.PI) / 180);
    const level = (face: "inside" | "middle" | "outside", end: "a" | "b") => solid[end][face][0]![2];
    expect(level("inside", "a")).toBe(0);
    expect(level("middle", "a")).toBeCloseTo(lift / 2, 5);
    expect(level("outside", "a")).toBeCloseTo(lift, 5);
    expect(level("outside", "b")).toBeCloseTo(height, 5);
    expect(level("inside", "b")).toBeCloseTo(height - lift, 5);
    expect(solid.a.outside[0]![0]).toBeCloseTo(450, 5);
    expect(solid.b.inside[0]![0]).toBeCloseTo(200, 5);
    const corner = (end: "a" | "b") => [solid[end].outside[0]!, solid[end].inside[0]!] as const;
    for (const end of ["a", "b"] as const) {
      const [outer, inner] = corner(end);
      expect(Math.hypot(outer[0] - inner[0], outer[2] - inner[2])).toBeCloseTo(t, 5); // the edge is the plate's thickness
    }
    expect(shape.heightMm).toBe(height);
  });

  it("square-to-round: the outside rectangle is brought inside by t/cos β of each flat, the circle to its middle", () => {
    const [t, height] = [10, 500];
    const report = reportOf(
      named({
        shape: "square-to-round",
        thickness: t,
        rectangularEnd: { length: 600, width: 400, measured: "outside" },
        roundEnd: { diameter: 300, measured: "inside" },
        height,
      }),
    );
    const slope = (half: number) => Math.hypot(1, (half - 150) / height); // 1/cos β of a flat
    const [length, width] = [600 - 2 * t * slope(300), 400 - 2 * t * slope(200)];
    expect(report.shape.rims.a).toBeCloseTo(2 * (length + width), 4);
    // 1/cos β round the turn, β from the sizes as given: in each corner h of the rectangle is the corner's own.
    const steps = 200_000;
    let sum = 0;
    let most = 0;
    const moves: number[] = [];
    for (let i = 0; i < steps; i++) {
      const theta = ((i + 0.5) / steps) * 2 * Math.PI;
      const h = 300 * Math.abs(Math.cos(theta)) + 200 * Math.abs(Math.sin(theta));
      moves.push(Math.hypot(1, (h - 150) / height));
      sum += moves[i]!;
    }
    const mean = sum / steps;
    for (const move of moves) most = Math.max(most, (t / 2) * Math.abs(move - mean));
    expect(report.shape.rims.b).toBeCloseTo(2 * Math.PI * (150 + (t / 2) * mean), 4);
    expect(report.accuracy.wallMm).toBeCloseTo(most, 3);
  });

  it("an oblique tip lies where it is said to: within that distance of every parallel tangent plane", () => {
    const [t, radius, offset, height] = [12, 450, 300, 700];
    const { solid, accuracy } = reportOf(
      named({
        shape: "eccentric-cone",
        thickness: t,
        largeEnd: { diameter: 2 * radius, measured: "outside" },
        smallEnd: { diameter: 0, offset: [offset, 0] },
        height,
      }),
    );
    const tip = solid.b.middle[0]!;
    let worst = 0;
    for (let deg = 0; deg < 360; deg++) {
      const [c, s] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
      const slope = (radius - offset * c) / height; // tan β of the drawn outside
      const k = Math.hypot(1, slope);
      const drawn = (offset * c + slope * height) / k;
      const here = (tip[0] * c + tip[1] * s + slope * tip[2]) / k;
      worst = Math.max(worst, Math.abs(here - (drawn - t / 2)));
    }
    expect(worst).toBeCloseTo(accuracy.wallMm, 3);
    expect(worst).toBeLessThan(0.3);
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

  it("a lap on the flat of a square-to-round begins in the middle of its side", () => {
    const part = (seam: object) =>
      reportOf(
        named({
          shape: "square-to-round",
          thickness: 2,
          rectangularEnd: { length: 600, width: 400, measured: "inside" },
          roundEnd: { diameter: 300, measured: "middle" },
          height: 500,
          seam,
        }),
      );
    const [plain, lapped] = [part({}).blanks[0]!, part({ joint: "lap", lap: 25 }).blanks[0]!];
    const length = (blank: typeof plain, name: string) =>
      blank.edges.find((edge) => edge.name === name)!.lengthMm;
    // The flat goes on level beyond its middle line, and at the round end the next corner curves away from its tip.
    expect(length(lapped, "rectangular end") - length(plain, "rectangular end")).toBeCloseTo(25, 1);
    expect(length(lapped, "seam 1")).toBeCloseTo(length(plain, "seam 1"), 6);
    expect((lapped.areaMm2 - plain.areaMm2) / (25 * length(plain, "seam 2"))).toBeCloseTo(1, 2);
    const line = lapped.lines.at(-1)!;
    expect(line.lengthMm).toBeCloseTo(length(plain, "seam 2"), 5);
  });
});

describe("a blank at other angles", () => {
  it("fits a plate that its smallest rectangle does not fit", () => {
    const part = named({
      shape: "right-cone",
      thickness: 4,
      largeEnd: { diameter: 1371.6, measured: "outside" },
      smallEnd: { diameter: 203.2, measured: "outside" },
      halfAngle: 25,
      pieces: 2,
    });
    const { blanks } = reportOf(part);
    const { box, outline } = blanks[0]!;
    const [plateLong, plateShort] = [3048, 1524];
    expect(box.widthMm).toBeGreaterThan(plateShort); // 120 × 60 in is too narrow for the smallest rectangle
    const boxes = boxesAtAngles(outline);
    expect(boxes.some(({ lengthMm, widthMm }) => lengthMm <= plateLong && widthMm <= plateShort)).toBe(true);
    for (const one of boxes)
      expect(one.lengthMm * one.widthMm).toBeGreaterThan(box.lengthMm * box.widthMm - 0.01);
    // Turned by what is said, the outline fills just the box that is said.
    for (const { lengthMm, widthMm, turnRad } of boxes) {
      const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)];
      const { xMm, yMm } = uprightBox(outline.map(([x, y]) => [x * cos - y * sin, x * sin + y * cos]));
      expect(xMm).toBeCloseTo(lengthMm, 6);
      expect(yMm).toBeCloseTo(widthMm, 6);
    }
    const shop = {
      name: "s",
      units: "mm" as const,
      machines: [],
      stock: [{ material: "s235", thickness: 4, length: plateLong, width: plateShort }],
    };
    const developed = develop(part, { catalogue, shop });
    const check =
      developed.kind === "report" && developed.report.forming.checks.find(({ id }) => id === "stock-plate");
    expect(check).toMatchObject({ verdict: "pass" });
  });
});
