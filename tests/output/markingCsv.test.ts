import fc from "fast-check";
import { expect, it } from "vitest";
import { distance2, type Vec2 } from "../../src/geometry/vector.ts";
import { cutPatterns } from "../../src/output/contour.ts";
import { printCsv } from "../../src/output/csv.ts";
import { anyPart, runs } from "../arbitraries.ts";
import { named, reportOf } from "../parts.ts";

/** Blocks of a marking file: rows of cells, parted by empty lines. Cells with commas stand last or alone here. */
const blocksOf = (csv: string): string[][][] =>
  csv
    .replace(/^\uFEFF/, "")
    .trimEnd()
    .split("\r\n\r\n")
    .map((block) => block.split("\r\n").map((line) => line.split(",")));
const block = (csv: string, begin: string): string[][] =>
  blocksOf(csv).find(([[first] = [""]]) => first!.startsWith(begin)) ?? [];

const cone = {
  shape: "right-cone",
  thickness: 4,
  largeEnd: { diameter: 605, measured: "outside" },
  smallEnd: { diameter: 305, measured: "outside" },
  height: 200,
} as const;

it("every corner and tape check is of the cut edge, and lines off it are called the seam's", () => {
  fc.assert(
    fc.property(anyPart, (part) => {
      const report = reportOf(part);
      for (const { blank } of cutPatterns(report)) {
        const csv = printCsv(report, blank);
        const [, ...corners] = block(csv, "corner of the cut edge");
        const places = corners.map((row): Vec2 => [Number(row[1]), Number(row[2])]);
        for (const at of places)
          expect(Math.min(...blank.outline.map((p) => distance2(p, at)))).toBeLessThan(0.001);
        for (const { start } of blank.edges) {
          const there = blank.outline[start] as Vec2;
          expect(Math.min(...places.map((at) => distance2(at, there)))).toBeLessThan(0.001);
        }
        const [, ...checks] = block(csv, "tape check");
        const most = blank.edges.length;
        expect(checks).toHaveLength((most * (most - 1)) / 2);
        for (const [, from, to, long] of checks)
          expect(
            Math.abs(distance2(places[Number(from) - 1]!, places[Number(to) - 1]!) - Number(long)),
          ).toBeLessThan(0.003);
        const [, ...lines] = block(csv, "line");
        const what = lines.map((row) => row.at(-1));
        const { seam } = report.part;
        const off = "the seam's line and not the cut edge";
        if (seam?.gap) expect([what[0], what.at(-1)]).toEqual([off, off]);
        else if (seam?.joint !== "lap")
          expect([what[0], what.at(-1)]).toEqual(["cut edge of the seam", "cut edge of the seam"]);
        else expect([what[0], what.at(-1)].filter((one) => one === off)).toHaveLength(1);
      }
    }),
    runs(60),
  );
});

it("a cone's heading has radii, centre and sector angle that its corners lie on, and no gap in the angle", () => {
  const report = reportOf(named({ ...cone, pieces: 2 }));
  const csv = printCsv(report, report.blanks[0]!);
  const head = new Map(block(csv, "title").map(([name, value]) => [name!, value!]));
  const number = (name: string) => Number(head.get(name));
  // Slant of the wall 250 mm: rise 200 over a run of 150; large radius 300 / 0.6, less half the thickness square to the wall.
  expect([number("outer radius mm"), number("inner radius mm")]).toEqual([500, 250]);
  const centre: Vec2 = [number("centre of both x mm"), number("centre of both y mm")];
  const [, ...corners] = block(csv, "corner of the cut edge");
  const radii = corners.map((row) => distance2(centre, [Number(row[1]), Number(row[2])]));
  expect(radii.map((one) => Number(one.toFixed(2))).toSorted((p, q) => p - q)).toEqual([250, 250, 500, 500]);
  const large = corners
    .filter((_, i) => radii[i]! > 400)
    .map((row): Vec2 => [Number(row[1]), Number(row[2])]);
  const half = number("sector angle deg between the seam's lines") / 2;
  expect(distance2(large[0]!, large[1]!)).toBeCloseTo(2 * 500 * Math.sin((half * Math.PI) / 180), 2);
  expect(head.get("face up")).toBe("inside face up");
  expect(head.get("piece")).toBe("1 and 2 of 2: all of this form");
});

it("a gap takes as much off the corners as the lines lie outside them", () => {
  const report = reportOf(named({ ...cone, seam: { at: 90, joint: "butt", gap: 2 } }));
  const csv = printCsv(report, report.blanks[0]!);
  const [, ...lines] = block(csv, "line");
  const first: Vec2 = [Number(lines[0]![3]), Number(lines[0]![4])];
  const [, ...corners] = block(csv, "corner of the cut edge");
  const near = Math.min(...corners.map((row) => distance2(first, [Number(row[1]), Number(row[2])])));
  // Half the gap, taken off square to the seam's line; along the arc that is hardly more.
  expect(near).toBeGreaterThan(0.999);
  expect(near).toBeLessThan(1.01);
  expect(csv).toContain("lie outside the cut edge: do not cut by them");
});

it("a square end has its own corners in the list", () => {
  const report = reportOf(
    named({
      shape: "square-to-round",
      thickness: 2,
      rectangularEnd: { length: 500, width: 400, measured: "outside" },
      roundEnd: { diameter: 300, measured: "outside", offset: [0, 0] },
      height: 300,
    }),
  );
  const [, ...corners] = block(printCsv(report, report.blanks[0]!), "corner of the cut edge");
  expect(corners.filter((row) => row[3] === "on the rectangular end")).toHaveLength(4);
});

it("has what is taped or struck in thirty-seconds beside inches, and never a bare fraction that reads as a date", () => {
  const report = reportOf({ ...named(cone), units: "in" });
  const csv = printCsv(report, report.blanks[0]!, "in");
  const [names, ...checks] = block(csv, "tape check");
  expect(names!.at(-1)).toBe("to the nearest 1/32");
  expect(checks.length).toBeGreaterThan(5);
  const head = block(csv, "title").filter(([name]) => /^(outer|inner) radius in/.test(name!));
  expect(head.map((row) => row.at(-1))).toEqual([
    "to the nearest 1/32: 19-11/16 in",
    "to the nearest 1/32: 9-27/32 in",
  ]);
  for (const row of [...checks, ...head]) {
    const [decimals, fraction] = row.slice(-2);
    const [, whole, above, below] = /(?:^|: )(?:(\d+)-?)?(?:(\d+)\/(\d+))? in$/.exec(fraction!)!;
    const inches = Number(whole ?? 0) + (below === undefined ? 0 : Number(above) / Number(below));
    expect(Math.abs(inches - Number(decimals))).toBeLessThanOrEqual(1 / 64);
  }
  const cells = csv.split(/[\r\n,]+/);
  expect(cells.filter((cell) => /^\d+(-\d+)?\/\d+$/.test(cell))).toEqual([]);
  expect(printCsv(report, report.blanks[0]!)).not.toContain("1/32");
});

it("a cone's heading with an allowance for dressing has the radii that its cut corners lie on", () => {
  const report = reportOf(named({ ...cone, pieces: 2, trimAllowance: true }));
  const head = block(printCsv(report, report.blanks[0]!), "title");
  const number = (start: string) => Number(head.find(([name]) => name!.startsWith(start))![1]);
  const centre: Vec2 = [number("centre of both x"), number("centre of both y")];
  const [, ...corners] = block(printCsv(report, report.blanks[0]!), "corner of the cut edge");
  const radii = corners.map((row) => distance2(centre, [Number(row[1]), Number(row[2])]));
  const [outer, inner, trim] = ["outer radius", "inner radius", "trim allowance"].map(number);
  // Half the thickness times the tangent of the half angle, 3 to 4, further out and in than the finished edges.
  expect(trim).toBeCloseTo((cone.thickness / 2) * 0.75, 3);
  expect([outer, inner]).toEqual([500 + trim!, 250 - trim!]);
  for (const radius of radii)
    expect(Math.min(Math.abs(radius - outer!), Math.abs(radius - inner!))).toBeLessThan(0.01);
});
