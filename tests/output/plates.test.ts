import DxfParser, { type ILineEntity, type IPolylineEntity, type ITextEntity } from "dxf-parser";
import fc from "fast-check";
import { expect, it } from "vitest";
import type { Vec2 } from "../../src/geometry/vector.ts";
import { printPlateCsv } from "../../src/output/plateCsv.ts";
import { printPlateDxf } from "../../src/output/plateDxf.ts";
import type { PlateSheet } from "../../src/output/plateSheet.ts";
import { printPlateSvg } from "../../src/output/svg.ts";
import { anyPart, runs } from "../arbitraries.ts";
import { even } from "../even.ts";
import { placed } from "../nesting/judge.ts";
import { reportOf } from "../parts.ts";

/** As near as a file keeps to the outline: see the test of a single blank's file. [mm] */
const NEAR_MM = 0.0201;

const sheets = fc
  .record({
    part: anyPart,
    turn: even(0, 360),
    quarter: fc.integer({ min: 0, max: 4 }),
    x: even(0, 9000),
    y: even(0, 9000),
  })
  .map(({ part, turn, quarter, x, y }): PlateSheet => {
    const report = reportOf(part);
    return {
      name: "plate-1",
      title: "S235, 3 mm, plate 1",
      lengthMm: 12_000,
      widthMm: 9000,
      copies: 2,
      units: "mm",
      blanks: report.blanks.map((blank, i) => ({
        report,
        blank,
        number: 1,
        // Some at right angles, which are turned exactly.
        rotationDeg: quarter < 4 ? 90 * quarter : turn,
        at: [x + i, y] as Vec2,
      })),
    };
  });

/** Points along a contour of arcs and lines, by the DXF reference: bulge is the tangent of a quarter of the angle. */
function walk(vertices: readonly { x: number; y: number; bulge?: number }[]): Vec2[] {
  return vertices.flatMap((v, i) => {
    const next = vertices[(i + 1) % vertices.length]!;
    const angle = 4 * Math.atan(v.bulge ?? 0);
    const chord = Math.hypot(next.x - v.x, next.y - v.y);
    const steps = Math.max(1, Math.ceil(Math.abs(angle) * 40), Math.ceil(chord / 40));
    return Array.from({ length: steps }, (_, k): Vec2 => {
      const share = k / steps;
      if (!v.bulge) return [v.x + share * (next.x - v.x), v.y + share * (next.y - v.y)];
      const cot = 1 / Math.tan(angle / 2);
      const [cx, cy] = [(v.x + next.x - cot * (next.y - v.y)) / 2, (v.y + next.y + cot * (next.x - v.x)) / 2];
      const [s, c] = [Math.sin(share * angle), Math.cos(share * angle)];
      return [cx + c * (v.x - cx) - s * (v.y - cy), cy + s * (v.x - cx) + c * (v.y - cy)];
    });
  });
}

function strays(points: readonly Vec2[], outline: readonly Vec2[]): number {
  return Math.max(
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
}

it("DXF of a plate, read by another library, comes back to the outlines where they lie, within 0.02 mm", () => {
  fc.assert(
    fc.property(sheets, (sheet) => {
      const read = new DxfParser().parseSync(printPlateDxf(sheet))!;
      const on = (layer: string) => read.entities.filter((one) => one.layer === layer);
      const cut = on("CUT") as IPolylineEntity[];
      expect(cut).toHaveLength(sheet.blanks.length);
      for (const [i, { blank, rotationDeg, at }] of sheet.blanks.entries()) {
        const outline = placed(blank.outline, rotationDeg, at);
        expect(cut[i]!.shape).toBe(true);
        expect(strays(walk(cut[i]!.vertices), outline)).toBeLessThan(NEAR_MM);
      }
      const [edge] = on("PLATE") as IPolylineEntity[];
      expect(edge!.vertices.map(({ x, y }) => [x, y])).toEqual([
        [0, 0],
        [12_000, 0],
        [12_000, 9000],
        [0, 9000],
      ]);
      const lines = [...on("BEND"), ...on("ELEMENT")] as ILineEntity[];
      for (const { blank, rotationDeg, at } of sheet.blanks)
        for (const { from, to } of blank.lines) {
          const ends = placed([from, to], rotationDeg, at);
          const isThere = lines.some(({ vertices }) =>
            ends.every(([x, y], i) => Math.hypot(vertices[i]!.x - x, vertices[i]!.y - y) < 1e-5),
          );
          expect(isThere).toBe(true);
        }
      const marks = on("MARK") as ITextEntity[];
      const names = marks.filter(({ text }) => text.includes(" up"));
      expect(names).toHaveLength(sheet.blanks.length);
    }),
    runs(25),
  );
});

it("DXF in inches is a twenty-fifth of the size; SVG is as large as the plate; the list has each blank's place", () => {
  const [sheet] = fc.sample(sheets, { seed: 3, numRuns: 1 });
  const edge = (units: "mm" | "in") =>
    (
      new DxfParser()
        .parseSync(printPlateDxf(sheet!, units))!
        .entities.find(({ layer }) => layer === "PLATE") as IPolylineEntity
    ).vertices[2]!;
  expect(edge("in").x * 25.4).toBeCloseTo(edge("mm").x, 4);
  const svg = printPlateSvg(sheet!);
  expect(svg).toContain('width="12000mm" height="9000mm"');
  expect(svg.match(/class="cut"/g)).toHaveLength(sheet!.blanks.length);
  const [about, table] = printPlateCsv([sheet!], { units: "mm", hasInches: () => true }).split("\r\n\r\n");
  for (const word of ["x and y", "turned", "number", "origin", "units"])
    expect(about).toMatch(new RegExp(`^\ufeff?${word},`, "m"));
  const [head, ...rows] = table!.trimEnd().split("\r\n");
  expect(rows).toHaveLength(sheet!.blanks.length);
  const { at } = sheet!.blanks[0]!;
  expect(rows[0]).toContain(`,${at.map((mm) => Number(mm.toFixed(2))).join(",")},`);
  expect(head).toMatch(/,length in,width in,x in,y in$/);
  expect(rows[0]).toMatch(
    new RegExp(`,${[12_000, 9000, ...at].map((mm) => Number((mm / 25.4).toFixed(4))).join(",")}$`),
  );
  expect(printPlateCsv([sheet!], { units: "mm", hasInches: () => false })).not.toContain(" in,");
});
