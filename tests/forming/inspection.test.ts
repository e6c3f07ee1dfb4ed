import { describe, expect, it } from "vitest";
import { evennessOf } from "../../src/forming/evenness.ts";
import { angularToleranceDeg, linearToleranceMm } from "../../src/forming/iso13920.ts";
import { named, reportOf } from "../parts.ts";
import { coneCase, reducer } from "./cases.ts";

// ISO 13920, permitted deviations for linear dimensions, from a reproduction of its table.
it.each([
  ["A", 30, 1],
  ["B", 31, 2],
  ["B", 400, 2],
  ["B", 401, 3],
  ["C", 1700, 8],
  ["D", 25_000, 40],
] as const)("class %s allows %d mm ± %d", (tolerance, nominal, limit) => {
  expect(linearToleranceMm(tolerance, nominal)).toBe(limit);
});

// ISO 13920, permitted deviations for angular dimensions, from the same reproduction; 400 and 1000 mm belong to the range below.
it.each([
  ["A", 400, 20],
  ["A", 401, 15],
  ["B", 100, 45],
  ["B", 1000, 30],
  ["B", 1001, 20],
  ["C", 400, 60],
  ["C", 2000, 30],
  ["D", 400, 90],
  ["D", 500, 75],
  ["D", 9000, 60],
] as const)(
  "class %s allows an angle with a shorter leg of %d mm ± %d minutes",
  (tolerance, leg, minutes) => {
    expect(angularToleranceDeg(tolerance, leg)).toBeCloseTo(minutes / 60, 12);
  },
);

it("has nothing to say below 2 mm", () => expect(linearToleranceMm("A", 1.9)).toBeNull());

const cone = named({
  shape: "right-cone",
  thickness: 3,
  largeEnd: { diameter: 600, measured: "inside" },
  smallEnd: { diameter: 260, measured: "inside" },
  height: 560,
  tolerance: "B",
});

describe("the inspection sheet", () => {
  const rows = (part = cone) => reportOf(part).forming.inspection!.rows;
  const find = (id: string, part = cone) => rows(part).filter((row) => row.id === id);

  it("has the sizes as drawn, with the limits of the class the part names", () => {
    expect(find("diameter")).toMatchObject([
      { nominalMm: 600, withinMm: 3, readings: 2 },
      { nominalMm: 260, withinMm: 2 },
    ]);
    expect(find("out-of-round").map(({ withinMm }) => withinMm)).toEqual([6, 4]);
    expect(find("height")).toMatchObject([{ nominalMm: 560, withinMm: 3, readings: 4 }]);
    expect(find("edge-offset")).toMatchObject([{ nominalMm: 0, withinMm: 1 }]);
  });

  it("measures a lapped seam by its lap, for its edges lie one above the other anyway", () => {
    const lapped = { ...cone, seam: { at: 0, joint: "lap", lap: 40 } } as typeof cone;
    // Class B, 30 to 120 mm.
    expect(find("lap", lapped)).toMatchObject([
      { nominalMm: 40, withinMm: 2, readings: 3, basis: "iso-13920" },
    ]);
    expect(find("edge-offset", lapped)).toEqual([]);
    // Across a lap the wall is there twice.
    for (const id of ["diameter", "out-of-round"] as const) {
      for (const { what } of find(id, lapped)) expect(what).toContain("clear of the laps");
      for (const { what } of find(id)) expect(what).not.toContain("lap");
    }
    expect(find("lap")).toEqual([]);
    const note = (part: typeof cone) => reportOf(part).forming.inspection!.note;
    expect(note(cone)).toContain("edge offset");
    expect(note(lapped)).not.toContain("edge offset");
  });

  it("has diagonals and templates that the closed form gives", () => {
    // Inside to inside, straight across: from one side of the large end to the other side of the small one.
    for (const { nominalMm } of find("tape")) expect(nominalMm).toBeCloseTo(Math.hypot(560, 300 + 130), 5);
    expect(find("tape")).toHaveLength(4);
    const cosine = 560 / Math.hypot(560, 300 - 130);
    // The wall is t/cos α thick in the end planes, so the girth outside is that of the inside diameter and twice as much.
    expect(find("girth")[0]!.nominalMm).toBeCloseTo(Math.PI * (600 + 6 / cosine), 5);
    const [large, small] = find("template").map(({ nominalMm }) => nominalMm);
    // Square to the element R − t/2, R that of the middle of the wall: (300 + t/2/cos α)/cos α.
    expect(large).toBeCloseTo((300 + 1.5 / cosine) / cosine - 1.5, 5);
    expect(small).toBeCloseTo((130 + 1.5 / cosine) / cosine - 1.5, 5);
  });

  it("gives no limits where the part names no class, and no size at a point", () => {
    const pointed = { ...cone, smallEnd: { diameter: 0 } } as typeof cone;
    delete pointed.tolerance;
    expect(rows(pointed).every(({ withinMm }) => withinMm === null)).toBe(true);
    // A standard that gives no limit has no part in a row; with a class its sizes rest on it.
    expect(rows(pointed).map(({ basis }) => basis)).not.toContain("iso-13920");
    expect(rows(pointed).find(({ id }) => id === "diameter")!.basis).toBe("as drawn");
    expect(find("diameter").map(({ basis }) => basis)).toEqual(["iso-13920", "iso-13920"]);
    expect(reportOf(pointed).forming.inspection!.note).toMatch(/names no tolerance class/);
    expect(find("diameter", pointed)).toHaveLength(1);
  });

  it("measures a rectangular end by its sides, and from its corners to the round end", () => {
    const hood = named({
      shape: "square-to-round",
      thickness: 2,
      rectangularEnd: { length: 600, width: 450, measured: "inside" },
      roundEnd: { diameter: 400, measured: "inside" },
      height: 350,
    });
    expect(find("side", hood).map(({ nominalMm }) => nominalMm)).toEqual([600, 450]);
    const far = Math.SQRT1_2 * (reportOf(hood).solid.b.inside[0]?.[0] ?? 0);
    expect(far).toBeGreaterThan(100);
    const across = Math.hypot(300 + far, 225 + far, 350);
    for (const { nominalMm } of find("tape", hood)) expect(nominalMm).toBeCloseTo(across, 4);
    // The drawing measures the round end inside; its corners by cos = −cos(slope 1) × cos(slope 2), the hopper corner.
    expect(find("template", hood).map(({ nominalMm }) => nominalMm)).toEqual([200]);
    expect(find("template", hood)[0]!.what).toMatch(/round end, held in the plane of that end/);
    expect(find("diagonal", hood)).toMatchObject([
      { nominalMm: expect.closeTo(750, 6) as number, readings: 2 },
    ]);
    const [one, ...more] = find("corner", hood);
    expect(more).toEqual([]);
    expect(one).toMatchObject({ readings: 4, withinDeg: 1, basis: "common practice, no source" });
    // The shorter side is 450 mm: class B, over 400 up to 1000 mm, allows 30 minutes.
    const limited = find("corner", { ...hood, tolerance: "B" });
    expect(limited).toMatchObject([{ withinDeg: 0.5, withinMm: null, basis: "iso-13920" }]);
    expect(find("side", hood).map(({ withinDeg }) => withinDeg)).toEqual([null, null]);
    expect(one!.what).toMatch(/^each corner, between its two flats, inside/);
    // As laid out by its inside, whose round end is 400 across.
    const slope = (side: number) => Math.atan2(350, (side - 400) / 2);
    const angle = Math.acos(-Math.cos(slope(600)) * Math.cos(slope(450)));
    const [inside] = find("corner", { ...hood, neutral: 0 });
    expect(inside!.nominalDeg).toBeCloseTo((angle * 180) / Math.PI, 6);
    expect(find("side", hood).map(({ nominalDeg }) => nominalDeg)).toEqual([null, null]);
  });

  it("names corners that are not alike, and no diagonal where both ends are round", () => {
    const aside = named({
      shape: "square-to-round",
      thickness: 2,
      rectangularEnd: { length: 600, width: 450, measured: "inside" },
      roundEnd: { diameter: 300, measured: "inside", offset: [80, 30] },
      height: 350,
      pieces: 2,
    });
    expect(find("corner", aside).map(({ what }) => what.split(",")[0])).toEqual([
      "corner 1 of piece 1",
      "corner 2 of piece 1",
      "corner 1 of piece 2",
      "corner 2 of piece 2",
    ]);
    expect(find("diagonal")).toEqual([]);
    expect(find("corner")).toEqual([]);
  });
});

describe("templates of a skin that is curved unevenly", () => {
  const leaning = (offset: number) =>
    reportOf(
      named({
        shape: "eccentric-cone",
        thickness: 4,
        largeEnd: { diameter: 900, measured: "outside" },
        smallEnd: { diameter: 400, measured: "outside", offset: [offset, 0] },
        height: 700,
      }),
    ).forming;
  const templates = ({ inspection }: ReturnType<typeof leaning>) =>
    inspection!.rows.filter(({ id }) => id === "template");

  it("are the means that its zones are bent to, which the closing goes by, with the true ones that they stand for", () => {
    const forming = leaning(300);
    const close = forming.plans[0]!.steps.find(({ id }) => id === "close")!;
    const rows = templates(forming);
    expect(rows.length).toBeGreaterThan(2);
    for (const { what, nominalMm } of rows) {
      expect(
        close.figures.some(({ value }) => Math.abs(value - nominalMm) < 1e-9),
        what,
      ).toBe(true);
      const [, tight, slack] = /, mean \(true ([\d.]+) mm to ([\d.]+) mm\)/.exec(what)!;
      expect(Number(tight)).toBeLessThan(nominalMm);
      expect(Number(slack)).toBeGreaterThan(nominalMm);
      // As far as the radii of one zone may differ.
      expect(Number(slack) / Number(tight)).toBeLessThan(1.27);
    }
    // The tightest and the slackest of the whole skin lie in some zone.
    const radii = forming.evenness!.samples.map(({ largeRadiusMm }) => largeRadiusMm - 2);
    const large = rows
      .filter(({ what }) => what.includes("large end"))
      .map(({ what }) => what)
      .join();
    for (const mm of [Math.min(...radii), Math.max(...radii)])
      expect(large).toContain(`${Number(mm.toFixed(1))} mm`);
    expect(forming.inspection!.note).toMatch(/templates of zones are means/);
    expect(forming.inspection!.note).toMatch(
      /foreman writes them in from the drawing\. \(The office can name the class in the part file, tolerance: A, B, C or D\.\)/,
    );
  });

  it("are those of four elements where it is bent line by line", () => {
    const forming = leaning(1100);
    expect(templates(forming).map(({ what }) => /plan \d+°/.exec(what)![0])).toContain("plan 90°");
    expect(forming.inspection!.note).not.toMatch(/zones are means/);
  });
});

describe("how unevenly it is curved", () => {
  const leaning = (offset: number) =>
    reportOf(
      named({
        shape: "eccentric-cone",
        thickness: 4,
        largeEnd: { diameter: 900, measured: "outside" },
        smallEnd: { diameter: 400, measured: "outside", offset: [offset, 0] },
        height: 700,
      }),
    ).forming.evenness!;

  it("follows R = ρ cos β/(cos²β + β′²) at both ends, all round", () => {
    const { samples, spread } = leaning(150);
    expect(samples).toHaveLength(72);
    // Worked apart from the code on the middle surface's own numbers at the ends of the axis of symmetry, where β′ = 0:
    // R = ρ/cos β, tan β = (450 − 200 ∓ 150)/700 for the outside, whose rims are circles.
    const lean = (cos: number) => Math.atan2(250 - 150 * cos, 700);
    const [steep, slack] = [Math.cos(lean(1)), Math.cos(lean(-1))];
    const at = (deg: number) => samples.find(({ planDeg }) => Math.abs(planDeg - deg) < 1e-6)!;
    // The offset lies towards 0°: there the wall is steepest and the radius least, but for half the wall.
    expect(at(0).largeRadiusMm / (450 / steep)).toBeCloseTo(1, 1);
    expect(at(180).largeRadiusMm / (450 / slack)).toBeCloseTo(1, 1);
    expect(spread.large).toBeGreaterThan(1.02);
  });

  it("recommends the roll, zones or the brake, the more uneven the further", () => {
    expect(leaning(20)).toMatchObject({ recommendation: "roll", zones: 1 });
    const [some, most] = [leaning(400), leaning(1100)];
    expect(some.recommendation).toBe("roll in zones");
    expect(some.reason).toMatch(new RegExp(`mark ${some.zones} zones`));
    expect(most.recommendation).toBe("brake");
    expect(most.spread.large).toBeGreaterThan(some.spread.large);
    expect(evennessOf(coneCase(reducer))).toBeNull();
  });

  it("sends a point to the brake", () => {
    const pointed = reportOf(
      named({
        shape: "eccentric-cone",
        thickness: 2,
        largeEnd: { diameter: 320, measured: "inside" },
        smallEnd: { diameter: 0, offset: [60, 25] },
        height: 380,
      }),
    ).forming.evenness!;
    expect(pointed).toMatchObject({ recommendation: "brake", zones: 0, spread: { small: null } });
  });
});
