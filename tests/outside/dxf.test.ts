import { type Entity, parseString, toPolylines } from "dxf";
import DxfParser, { type ILineEntity, type IPolylineEntity, type ITextEntity } from "dxf-parser";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Vec2 } from "../../src/geometry/vector.ts";
import { cutPatterns } from "../../src/output/contour.ts";
import { printDxf } from "../../src/output/dxf.ts";
import { printPlateDxf } from "../../src/output/plateDxf.ts";
import type { Blank, Report } from "../../src/report/report.ts";
import { readBinder } from "../../src/site/binder/binder.ts";
import { layJob } from "../../src/site/job/layJob.ts";
import { anyPart, runs } from "../arbitraries.ts";
import { placed } from "../nesting/judge.ts";
import { reportOf } from "../parts.ts";

// Two readers of other hands: dxf-parser 1.1.2 and dxf 5.3.1, each with its own idea of what a file says.

/** What a file promises: within this of the exact pattern. [mm] */
const NEAR_MM = 0.02;
/** Eight decimals of a file are read back. */
const SAME = 1e-7;
const MM_PER_INCH = 25.4;

interface Vertex {
  readonly x: number;
  readonly y: number;
  readonly bulge: number;
}
interface Closed {
  readonly layer: string;
  readonly closed: boolean;
  readonly vertices: readonly Vertex[];
}
interface Read {
  readonly units: number | undefined;
  readonly layers: readonly string[];
  readonly contours: readonly Closed[];
  readonly lines: readonly { readonly layer: string; readonly ends: readonly Vec2[] }[];
  readonly texts: readonly { readonly layer: string; readonly words: string }[];
}
type Point = { readonly x: number; readonly y: number; readonly bulge?: number };
const vertex = ({ x, y, bulge = 0 }: Point): Vertex => ({ x, y, bulge });
const xy = ({ x, y }: Point): Vec2 => [x, y];

function readFirst(text: string): Read {
  const { entities, header, tables } = new DxfParser().parseSync(text)!;
  const of = <T>(type: string) => entities.filter((one) => one.type === type) as unknown as T[];
  return {
    units: header["$INSUNITS"] as number,
    layers: Object.keys(tables.layer.layers),
    contours: of<IPolylineEntity>("POLYLINE").map(({ layer, shape, vertices }) => ({
      layer,
      closed: shape,
      vertices: vertices.map((one) => vertex(one as Point)),
    })),
    lines: of<ILineEntity>("LINE").map(({ layer, vertices }) => ({ layer, ends: vertices.map(xy) })),
    texts: of<ITextEntity>("TEXT").map(({ layer, text: words }) => ({ layer, words })),
  };
}

function readSecond(text: string): Read {
  const { entities, header, tables } = parseString(text);
  const of = (type: string): Entity[] => entities.filter((one) => one.type === type);
  return {
    units: header.insUnits,
    layers: Object.keys(tables.layers),
    contours: of("POLYLINE").map(({ layer, closed = false, vertices = [] }) => ({
      layer,
      closed,
      vertices: vertices.map(vertex),
    })),
    lines: of("LINE").map(({ layer, start, end }) => ({ layer, ends: [xy(start!), xy(end!)] })),
    texts: of("TEXT").map(({ layer, string = "" }) => ({ layer, words: string })),
  };
}

/** Both readers' answer, which has to be the same to the last decimal that is written. */
function readTwice(text: string): Read {
  const [first, second] = [readFirst(text), readSecond(text)];
  expect(second).toEqual(first);
  for (const { closed, vertices } of first.contours) {
    expect(closed).toBe(true);
    expect(vertices.length).toBeGreaterThan(2);
  }
  for (const { layer } of [...first.contours, ...first.lines, ...first.texts])
    expect(first.layers).toContain(layer);
  return first;
}

const pairs = (vertices: readonly Vertex[]) =>
  vertices.map((v, i): [Vertex, Vertex] => [v, vertices[(i + 1) % vertices.length]!]);

/** Length of a piece: DXF reference, a bulge is the tangent of a quarter of the included angle. */
function pieceLength([v, next]: readonly [Vertex, Vertex]): number {
  const chord = Math.hypot(next.x - v.x, next.y - v.y);
  const angle = 4 * Math.atan(Math.abs(v.bulge));
  return angle === 0 ? chord : (chord * angle) / (2 * Math.sin(angle / 2));
}
const lengthOf = (vertices: readonly Vertex[]): number =>
  pairs(vertices).reduce((sum, one) => sum + pieceLength(one), 0);

/** Area by the shoelace formula, and a segment of a circle for each bulge: plus where it swells outwards. */
const areaOf = (vertices: readonly Vertex[]): number =>
  pairs(vertices).reduce((sum, [v, next]) => {
    const angle = 4 * Math.atan(Math.abs(v.bulge));
    const radius = Math.hypot(next.x - v.x, next.y - v.y) / (2 * Math.sin(angle / 2));
    const segment = angle === 0 ? 0 : (Math.sign(v.bulge) * radius ** 2 * (angle - Math.sin(angle))) / 2;
    return sum + (v.x * next.y - next.x * v.y) / 2 + segment;
  }, 0);

/** Farthest that a point lies from a closed line. [mm] */
const strays = (points: readonly Vec2[], outline: readonly Vec2[]): number =>
  Math.max(
    ...points.map((p) =>
      Math.min(
        ...outline.map((a, i) => {
          const b = outline[(i + 1) % outline.length]!;
          const [ux, uy] = [b[0] - a[0], b[1] - a[1]];
          const long = ux * ux + uy * uy;
          const t =
            long === 0 ? 0 : Math.min(1, Math.max(0, ((p[0] - a[0]) * ux + (p[1] - a[1]) * uy) / long));
          return Math.hypot(p[0] - a[0] - t * ux, p[1] - a[1] - t * uy);
        }),
      ),
    ),
  );

const scaled = (vertices: readonly Vertex[], unit: number): Vertex[] =>
  vertices.map(({ x, y, bulge }) => ({ x: unit * x, y: unit * y, bulge }));

/** One contour against the blank that it is cut from: whole length, each edge's length, area, and the way that it takes. */
function sameAsReport(vertices: readonly Vertex[], blank: Blank): void {
  expect(Math.abs(lengthOf(vertices) - blank.cutLengthMm)).toBeLessThan(NEAR_MM);
  // Off by no more than a strip of that width along the whole cut.
  expect(Math.abs(areaOf(vertices) - blank.areaMm2)).toBeLessThan(NEAR_MM * blank.cutLengthMm);
  expect(areaOf(vertices)).toBeGreaterThan(0);
}

/** From corner to corner the contour is as long as the report says of each edge. */
function sameEdges(vertices: readonly Vertex[], { edges, outline }: Blank): void {
  const corner = ([x, y]: Vec2) => vertices.findIndex((v) => Math.hypot(v.x - x, v.y - y) < SAME);
  for (const [i, { start, lengthMm }] of edges.entries()) {
    const from = corner(outline[start]!);
    const to = corner(outline[edges[(i + 1) % edges.length]!.start]!);
    expect(from).toBeGreaterThanOrEqual(0);
    const count = (to - from + vertices.length) % vertices.length;
    const along = Array.from({ length: count }, (_, k) => pairs(vertices)[(from + k) % vertices.length]!);
    const long = along.reduce((sum, one) => sum + pieceLength(one), 0);
    expect(Math.abs(long - lengthMm)).toBeLessThan(NEAR_MM);
  }
}

/** The second reader turns bulges into points by itself: these lie where the outline runs. */
function drawnTrue(text: string, unit: number, outlines: readonly (readonly Vec2[])[]): void {
  const drawing = parseString(text);
  const cut = toPolylines({ ...drawing, entities: drawing.entities.filter(({ layer }) => layer === "CUT") });
  expect(cut.polylines).toHaveLength(outlines.length);
  for (const [i, { vertices }] of cut.polylines.entries()) {
    const points = vertices.map(([x, y]): Vec2 => [unit * x, unit * y]);
    // The outline's own chords lie within 0.01 mm of the exact edge.
    expect(strays(points, outlines[i]!)).toBeLessThan(NEAR_MM + 0.0001);
  }
}

function checkPart(report: Report, blank: Blank): void {
  for (const [units, unit, code] of [
    ["mm", 1, 4],
    ["in", MM_PER_INCH, 1],
  ] as const) {
    const text = printDxf(report, blank, units);
    const read = readTwice(text);
    expect(read.units).toBe(code);
    expect(read.contours.map(({ layer }) => layer)).toEqual(["CUT"]);
    const vertices = scaled(read.contours[0]!.vertices, unit);
    sameAsReport(vertices, blank);
    if (units === "mm") sameEdges(vertices, blank);
    drawnTrue(text, unit, [blank.outline]);
    const elements = read.lines.filter(({ layer }) => layer === "ELEMENT" || layer === "BEND");
    expect(elements.length).toBeGreaterThanOrEqual(blank.lines.length);
    for (const [i, { lengthMm }] of blank.lines.entries()) {
      const [from, to] = elements[i]!.ends as [Vec2, Vec2];
      const flat = unit * Math.hypot(to[0] - from[0], to[1] - from[1]);
      expect(Math.abs(flat - lengthMm)).toBeLessThan(NEAR_MM);
    }
    expect(read.texts.map(({ layer }) => layer)).toContain("MARK");
    expect(read.texts.map(({ words }) => words)).toContain(`UNITS ${units === "mm" ? "MM" : "INCHES"}`);
  }
}

describe("the demo job, opened by two readers", () => {
  const binder = readBinder();
  const patterns = binder.parts.flatMap(({ report }) =>
    cutPatterns(report).map(({ name, blank }) => ({ name, report, blank })),
  );
  it.each(patterns)(
    "$name is closed, on its layers, and measures as its report says",
    ({ report, blank }) => {
      checkPart(report, blank);
    },
  );

  const sheets = layJob(binder).flatMap(({ plates }) => plates.map(({ sheet }) => sheet));
  it.each(sheets)("$name holds its blanks, each measuring as its report says", (sheet) => {
    for (const units of ["mm", "in"] as const) {
      const unit = units === "mm" ? 1 : MM_PER_INCH;
      const text = printPlateDxf(sheet, units);
      const { contours } = readTwice(text);
      const cut = contours.filter(({ layer }) => layer === "CUT");
      expect(cut).toHaveLength(sheet.blanks.length);
      for (const [i, { blank }] of sheet.blanks.entries())
        sameAsReport(scaled(cut[i]!.vertices, unit), blank);
      drawnTrue(
        text,
        unit,
        sheet.blanks.map(({ blank, rotationDeg, at }) => placed(blank.outline, rotationDeg, at)),
      );
      const [plate, ...more] = contours.filter(({ layer }) => layer === "PLATE");
      expect(more).toEqual([]);
      expect(areaOf(scaled(plate!.vertices, unit))).toBeCloseTo(sheet.lengthMm * sheet.widthMm, 1);
    }
  });
});

it("any part at all comes back from both readers as it was written", () => {
  fc.assert(
    fc.property(anyPart, (part) => {
      const report = reportOf(part);
      for (const { blank } of cutPatterns(report)) checkPart(report, blank);
    }),
    runs(40),
  );
});
