import DxfParser, { type ILineEntity, type IPolylineEntity, type ITextEntity } from "dxf-parser";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { circleOf, fitArcs } from "../../src/geometry/arcFit.ts";
import { distance2, type Vec2 } from "../../src/geometry/vector.ts";
import { contourOf, cutPatterns } from "../../src/output/contour.ts";
import { printCsv } from "../../src/output/csv.ts";
import { printDxf } from "../../src/output/dxf.ts";
import { uprightNumber } from "../../src/output/uprightNumber.ts";
import { printSvg } from "../../src/output/svg.ts";
import type { Blank, Report } from "../../src/report/report.ts";
import { anyPart, runs } from "../arbitraries.ts";
import { even } from "../even.ts";
import { named, reportOf } from "../parts.ts";

/** As near as a file keeps to the outline: 0.01 mm of the fit, the outline's own 0.01 mm, and the roundings. [mm] */
const NEAR_MM = 0.0201;

/** Distance from a point to a piece of a contour, worked out apart from the code under test. [mm] */
function away(p: Vec2, from: Vec2, to: Vec2, bulge: number): number {
  const chord = distance2(from, to);
  if (Math.abs(bulge) < 1e-12) {
    if (chord === 0) return distance2(p, from);
    const s = ((p[0] - from[0]) * (to[0] - from[0]) + (p[1] - from[1]) * (to[1] - from[1])) / chord ** 2;
    const k = Math.min(1, Math.max(0, s));
    return Math.hypot(p[0] - from[0] - k * (to[0] - from[0]), p[1] - from[1] - k * (to[1] - from[1]));
  }
  // DXF reference: bulge is the tangent of a quarter of the included angle, positive counter-clockwise.
  const angle = 4 * Math.atan(bulge);
  const radius = chord / (2 * Math.sin(Math.abs(angle) / 2));
  const half =
    Math.sqrt(Math.max(0, radius ** 2 - (chord / 2) ** 2)) *
    Math.sign(Math.PI - Math.abs(angle)) *
    Math.sign(bulge);
  const [ux, uy] = [(to[0] - from[0]) / chord, (to[1] - from[1]) / chord];
  const centre: Vec2 = [(from[0] + to[0]) / 2 - uy * half, (from[1] + to[1]) / 2 + ux * half];
  const about = (q: Vec2) => Math.atan2(q[1] - centre[1], q[0] - centre[0]);
  const turn =
    ((((about(p) - about(from)) * Math.sign(bulge)) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
  if (turn <= Math.abs(angle)) return Math.abs(distance2(p, centre) - radius);
  return Math.min(distance2(p, from), distance2(p, to));
}

const farthest = (outline: readonly Vec2[], vertices: readonly { x: number; y: number; bulge: number }[]) =>
  Math.max(
    ...outline.map((p) =>
      Math.min(
        ...vertices.map((v, i) => {
          const next = vertices[(i + 1) % vertices.length]!;
          return away(p, [v.x, v.y], [next.x, next.y], v.bulge);
        }),
      ),
    ),
  );

/** Points along a contour, corners left out: where the torch goes between them. */
function onContour(vertices: readonly { x: number; y: number; bulge: number }[]): Vec2[] {
  return vertices.flatMap((v, i) => {
    const next = vertices[(i + 1) % vertices.length]!;
    const chord: Vec2 = [next.x - v.x, next.y - v.y];
    return [0.1, 0.3, 0.5, 0.7, 0.9].map((share): Vec2 => {
      if (v.bulge === 0) return [v.x + share * chord[0], v.y + share * chord[1]];
      // Turned about the centre by a share of the angle, from the first end.
      const angle = 4 * Math.atan(v.bulge);
      const k = 1 / Math.tan(angle / 2);
      const c: Vec2 = [(v.x + next.x - k * chord[1]) / 2, (v.y + next.y + k * chord[0]) / 2];
      const [s, co] = [Math.sin(share * angle), Math.cos(share * angle)];
      const [x, y] = [v.x - c[0], v.y - c[1]];
      return [c[0] + co * x - s * y, c[1] + s * x + co * y];
    });
  });
}

/** How far the contour strays from the outline between its corners. [mm] */
const strays = (outline: readonly Vec2[], vertices: readonly { x: number; y: number; bulge: number }[]) =>
  farthest(
    onContour(vertices),
    outline.map(([x, y]) => ({ x, y, bulge: 0 })),
  );

function cutOf(dxf: string) {
  const read = new DxfParser().parseSync(dxf)!;
  const cut = read.entities.find(({ layer }) => layer === "CUT") as IPolylineEntity;
  return {
    read,
    cut,
    vertices: cut.vertices.map(({ x, y, bulge }) => ({ x, y, bulge: (bulge as number | undefined) ?? 0 })),
  };
}

describe("fitting arcs", () => {
  it("takes one arc for an arc, of any turn up to nearly all of it, whichever way round", () => {
    fc.assert(
      fc.property(even(5, 5000), even(0.2, 5.5), even(0, 6), even(0, 1), (radius, turn, start, way) => {
        const sign = way < 0.5 ? 1 : -1;
        // As close as an outline has them: chords no more than 0.0075 mm off their arc.
        const steps = Math.ceil(turn / (2 * Math.acos(1 - 0.0075 / radius)));
        const points = Array.from({ length: steps + 1 }, (_, i): Vec2 => {
          const at = start + (sign * turn * i) / steps;
          return [radius * Math.cos(at), radius * Math.sin(at)];
        });
        const [piece, ...more] = fitArcs(points, 0.01);
        // A flat arc may be told by a straight line within the tolerance.
        if (piece!.bulge === 0) {
          expect(radius * (1 - Math.cos(turn / 2))).toBeLessThan(0.02);
          return;
        }
        expect(more).toEqual([]);
        expect(circleOf(points[0]!, piece!).radius).toBeCloseTo(radius, 3);
        expect(Math.sign(piece!.bulge)).toBe(sign);
      }),
      runs(100),
    );
  });

  it("draws no arc through corners that happen to lie on one, nor one that bulges beside a straight side", () => {
    const hood: Vec2[] = [
      [0, 0],
      [300, 0],
      [420, 160],
      [330, 400],
    ];
    expect(fitArcs(hood, 0.01).map(({ bulge }) => bulge)).toEqual([0, 0, 0]);
    const [side, ...curve] = fitArcs(
      [...[[0, 0] as Vec2, [1000, 0] as Vec2], [1001, 0.5], [1001.8, 1.3]],
      0.01,
    );
    expect(side).toEqual({ to: [1000, 0], bulge: 0 });
    expect(curve.length).toBeGreaterThan(0);
  });

  it("keeps corners, and takes one line for many points in a line", () => {
    const points: Vec2[] = [0, 1, 2, 5, 9, 10]
      .map((x): Vec2 => [x, 0])
      .concat([
        [10, 3],
        [10, 8],
      ]);
    expect(fitArcs(points, 0.01)).toEqual([
      { to: [10, 0], bulge: 0 },
      { to: [10, 8], bulge: 0 },
    ]);
  });
});

/** The table of a CSV whose heading begins so; nothing where there is none. */
const blockOf = (csv: string, begin: string): string =>
  csv.split("\r\n\r\n").find((one) => one.startsWith(begin)) ?? "";

type Hit = NonNullable<Report["forming"]["plans"][number]["brake"]>["lines"][number];

/** The lines of the plan of the machine that the part is made on, where that is a brake. */
const hitsOn = ({ forming }: Report, { piece }: Blank): Hit[] | undefined =>
  forming.plans
    .find(({ machine }) => machine === forming.machine)
    ?.brake?.lines.filter((one) => one.piece === piece);

/** A line of a file is a hit's: it begins at one end of it, lies along it, and stops as far short as the plan has it. */
function sameHit(hit: Hit, wide: Vec2, stop: Vec2): void {
  const ends = [hit.from, hit.to];
  expect(Math.min(...ends.map((end) => distance2(end, wide)))).toBeLessThan(1e-5);
  expect(away(stop, ends[0]!, ends[1]!, 0)).toBeLessThan(1e-5);
  // As long on the pattern as in space, to what developing keeps to.
  const whole = distance2(ends[0]!, ends[1]!);
  expect(
    Math.abs(distance2(wide, stop) - (whole * (hit.lengthMm - hit.stopsShortMm)) / hit.lengthMm),
  ).toBeLessThan(1e-4);
}

describe("every part's cutting files", () => {
  const each = (check: (report: Report, blank: Blank) => void, count: number) =>
    fc.assert(
      fc.property(anyPart, (part) => {
        const report = reportOf(part);
        for (const { blank } of cutPatterns(report)) check(report, blank);
      }),
      runs(count),
    );

  it("DXF, read by another library, comes back to the outline within 0.02 mm, closed, with lines on their layers", () => {
    each((report, blank) => {
      const { read, cut, vertices } = cutOf(printDxf(report, blank));
      expect(cut.shape).toBe(true);
      expect(farthest(blank.outline as Vec2[], vertices)).toBeLessThan(NEAR_MM);
      expect(strays(blank.outline as Vec2[], vertices)).toBeLessThan(NEAR_MM);
      const lines = read.entities.filter((one): one is ILineEntity => one.type === "LINE");
      const hits = hitsOn(report, blank);
      expect(lines.length).toBe(blank.lines.length + (hits?.length ?? 0));
      for (const [i, { kind, from }] of blank.lines.entries()) {
        expect(lines[i]!.layer).toBe(kind === "bend" && !hits ? "BEND" : "ELEMENT");
        expect(lines[i]!.vertices[0]!.x).toBeCloseTo(from[0], 5);
      }
      const bends = lines.slice(blank.lines.length);
      const marks = read.entities.filter(
        (one): one is ITextEntity => one.type === "TEXT" && one.layer === "MARK",
      );
      expect(marks).toHaveLength(1 + (hits?.length ?? 0));
      for (const [i, hit] of (hits ?? []).entries()) {
        expect(bends[i]!.layer).toBe("BEND");
        sameHit(hit, ...(bends[i]!.vertices.map(({ x, y }): Vec2 => [x, y]) as [Vec2, Vec2]));
        // Its number stands beside it: nearer than a capital and a half to the line, off it by at least a third.
        const text = marks[i]!;
        expect(text.text).toBe(uprightNumber(hit.number));
        const off = away([text.endPoint.x, text.endPoint.y], hit.from, hit.to, 0);
        expect(off).toBeGreaterThan(0.3 * text.textHeight);
        expect(off).toBeLessThan(1.5 * text.textHeight);
      }
      expect(read.header["$INSUNITS"]).toBe(4);
      // Few pieces: a tenth of the points that the outline has, and some corners.
      expect(vertices.length).toBeLessThan(blank.outline.length / 10 + 60);
    }, 60);
  });

  it("SVG and CSV have the same hits with the same numbers, and none where no brake bends the part", () => {
    each((report, blank) => {
      const hits = hitsOn(report, blank) ?? [];
      const svg = printSvg(report, blank);
      const numbers = [...svg.matchAll(/class="bend-number"[^>]*>([\d.]+)</g)].map(([, said]) => said);
      expect(numbers).toEqual(hits.map(({ number }) => uprightNumber(number)));
      if (hits.length > 0) {
        const path = /id="bend"[^>]* d="([^"]+)"/.exec(svg)![1]!;
        const drawn = [...path.matchAll(/M([-\d.e]+) ([-\d.e]+)L([-\d.e]+) ([-\d.e]+)/g)].map((one) => {
          const [x, y, u, v] = one.slice(1).map(Number) as [number, number, number, number];
          return [
            [x, blank.asDrawn.yMm - y],
            [u, blank.asDrawn.yMm - v],
          ] as [Vec2, Vec2];
        });
        expect(drawn).toHaveLength(hits.length);
        for (const [i, hit] of hits.entries()) sameHit(hit, ...drawn[i]!);
      }
      const rows = blockOf(printCsv(report, blank), "bend line,").trimEnd().split("\r\n").slice(1);
      expect(rows).toHaveLength(hits.length);
      for (const [i, hit] of hits.entries()) {
        const cells = rows[i]!.split(",").map(Number);
        for (const [at, value] of [
          [0, hit.number],
          [1, hit.order],
          [10, hit.alongMm.a],
          [11, hit.alongMm.b],
          [12, hit.lengthMm],
          [13, hit.stopsShortMm],
        ] as const)
          expect(Math.abs(cells[at]! - value)).toBeLessThan(0.0006);
      }
    }, 40);
  });

  it("SVG is as large as the blank in millimetres, and its path comes back to the outline within 0.02 mm", () => {
    each((report, blank) => {
      const svg = printSvg(report, blank);
      const [, width, height] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg)!;
      expect(Number(width)).toBeCloseTo(blank.asDrawn.xMm, 5);
      expect(Number(height)).toBeCloseTo(blank.asDrawn.yMm, 5);
      const path = /id="cut" d="([^"]+)"/.exec(svg)![1]!;
      const up = (y: string) => blank.asDrawn.yMm - Number(y);
      const vertices: { x: number; y: number; bulge: number }[] = [];
      for (const [, kind, rest] of path.matchAll(/([MLA])([^MLAZ]*)/g)) {
        const numbers = rest!.trim().split(/\s+/);
        const [x, y] = [Number(numbers.at(-2)), up(numbers.at(-1)!)];
        const before = vertices.at(-1);
        if (kind === "A" && before) {
          const [radius, , , large, sweep] = numbers.map(Number) as [number, number, number, number, number];
          // SVG 2, elliptical arcs: of two centres the flags choose; its sweep is clockwise where y is turned over.
          const half = Math.asin(Math.min(1, Math.hypot(x - before.x, y - before.y) / (2 * radius)));
          const angle = large === 1 ? 2 * (Math.PI - half) : 2 * half;
          before.bulge = (sweep === 0 ? 1 : -1) * Math.tan(angle / 4);
        }
        vertices.push({ x, y, bulge: 0 });
      }
      expect(farthest(blank.outline as Vec2[], vertices)).toBeLessThan(NEAR_MM + 0.001);
      expect(strays(blank.outline as Vec2[], vertices)).toBeLessThan(NEAR_MM + 0.001);
    }, 40);
  });

  it("CSV has the points of the marking table, on the outline where no gap is cut off", () => {
    each((report, blank) => {
      const rows = blockOf(printCsv(report, blank), "line,").trimEnd().split("\r\n").slice(1);
      const own = report.hand.rows.filter(({ piece }) => piece === blank.piece);
      expect(rows.filter((row) => row !== "").length).toBe(own.length);
      for (const [i, row] of own.entries()) {
        const cells = rows[i]!.split(",").map(Number);
        for (const [at, value] of [
          [3, row.a[0]],
          [4, row.a[1]],
          [6, row.b[0]],
          [7, row.b[1]],
          [9, row.trueMm],
        ] as const)
          expect(Math.abs(cells[at]! - value)).toBeLessThan(0.0006);
      }
      const girths = rows.map((row) => Number(row.split(",")[5]));
      const { seam, trimAllowance } = report.part;
      if (!seam?.gap && !seam?.lap && trimAllowance !== true) {
        const end = blank.edges.find(({ name }) => ["large end", "rectangular end"].includes(name))!;
        // Chords within 0.01 mm of an arc are shorter than it; a long edge has many of them.
        expect(girths[0]).toBeLessThan(0.01);
        expect(Math.abs(girths.at(-1)! / end.lengthMm - 1)).toBeLessThan(0.001);
      }
      for (let i = 1; i < girths.length; i++)
        expect(girths[i]!).toBeGreaterThanOrEqual(girths[i - 1]! - 0.002);
    }, 60);
  });
});

describe("a plain cone", () => {
  const report = reportOf(
    named({
      shape: "right-cone",
      thickness: 4,
      largeEnd: { diameter: 605, measured: "outside" },
      smallEnd: { diameter: 305, measured: "outside" },
      height: 200,
    }),
  );
  const blank = report.blanks[0]!;

  it("is cut by two arcs and two lines, of the radii that the report has", () => {
    const { start, pieces } = contourOf(blank);
    expect(pieces.length).toBe(4);
    const radii = pieces.flatMap((piece, i) =>
      piece.bulge === 0 ? [] : [circleOf(i === 0 ? start : pieces[i - 1]!.to, piece).radius],
    );
    expect(radii.toSorted((p, q) => q - p).map((one) => Number(one.toFixed(2)))).toEqual([500, 250]);
  });

  it("in inches has the same form, a twenty-fifth of the size", () => {
    const { read, vertices } = cutOf(printDxf(report, blank, "in"));
    expect(read.header["$INSUNITS"]).toBe(1);
    const mm = vertices.map(({ x, y, bulge }) => ({ x: 25.4 * x, y: 25.4 * y, bulge }));
    expect(farthest(blank.outline as Vec2[], mm)).toBeLessThan(NEAR_MM);
    const texts = read.entities.filter((one): one is ITextEntity => one.type === "TEXT");
    expect(texts.map(({ text }) => text)).toContain("UNITS INCHES");
  });

  it("is the same byte for byte, ASCII alone in DXF, and hostile words stay words", () => {
    const odd = { ...report, part: { ...report.part, title: 'Ø½° <b>&"\n0\nEOF ÄÖ €' } };
    const dxf = printDxf(odd, blank);
    expect(dxf).toBe(printDxf(odd, blank));
    expect(dxf).toMatch(/^[\x20-\x7e\r\n]*$/);
    expect(new DxfParser().parseSync(dxf)!.entities.length).toBeGreaterThan(3);
    expect(printSvg(odd, blank)).toContain("&lt;b&gt;&amp;&quot;");
  });
});
