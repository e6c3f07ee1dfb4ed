import { describe, expect, it } from "vitest";
import { distance2, type Vec2 } from "../../src/geometry/vector.ts";
import { cutPatterns } from "../../src/output/contour.ts";
import { fullSizePdf, MOST_SHEETS, type WhichSheets } from "../../src/output/pdf/fullSize.ts";
import { markingPoints } from "../../src/output/pdf/markingPoints.ts";
import { tilePaper, type TilePaperId } from "../../src/output/pdf/tilePaper.ts";
import type { Blank, Report } from "../../src/report/report.ts";
import { named, reportOf } from "../parts.ts";
import { fonts } from "./fonts.ts";
import { edgePoints, nameOf, toOutline } from "./glue.ts";
import { type PdfPage, readPdf } from "./readPdf.ts";

const date = "D:20260131120000+00'00'";
/** As near as a printed point lies to the exact one. [mm] */
const POINT_MM = 0.02;
/** Arms of a cross, end to end. [mm] */
const CROSS_MM = 8;

const cone = (more: object = {}) =>
  reportOf(
    named({
      shape: "right-cone",
      thickness: 4,
      largeEnd: { diameter: 1205, measured: "outside" },
      smallEnd: { diameter: 605, measured: "outside" },
      height: 400,
      ...more,
    } as never),
  );
const oblique = () =>
  reportOf(
    named({
      shape: "eccentric-cone",
      thickness: 3,
      largeEnd: { diameter: 600, measured: "inside" },
      smallEnd: { diameter: 300, measured: "inside", offset: [60, 40] },
      height: 400,
    }),
  );
/** On the brake, in two halves. */
const square = () =>
  reportOf(
    named({
      shape: "square-to-round",
      thickness: 3,
      rectangularEnd: { length: 700, width: 600, measured: "inside" },
      roundEnd: { diameter: 500, measured: "inside" },
      height: 400,
      pieces: 2,
    }),
  );

const write = (report: Report, sheets: WhichSheets, paper: TilePaperId = "a4") => {
  const [{ blank, count } = { blank: undefined, count: 0 }] = cutPatterns(report);
  return fullSizePdf(report, blank!, { paper: tilePaper(paper), fonts, date, count, sheets });
};
async function pagesOf(report: Report, paper?: TilePaperId): Promise<readonly PdfPage[]> {
  const done = write(report, "points", paper);
  if (done.kind === "refused") throw new Error(done.problem);
  return (await readPdf(done.bytes)).pages;
}
const wordsOf = ({ texts }: PdfPage): string => texts.map(({ text }) => text).join(" ");

/** Corners, and ends of the brake's lines or of the marking table's, as far as they lie on the edge; each once. */
function expected(report: Report, blank: Blank): Vec2[] {
  const plan = report.forming.plans.find(({ machine }) => machine === report.forming.machine)?.brake;
  const ends = plan
    ? plan.lines.filter(({ piece }) => piece === blank.piece).flatMap(({ from, to }) => [from, to])
    : report.hand.rows.filter(({ piece }) => piece === blank.piece).flatMap(({ a, b }) => [a, b]);
  const corners = blank.edges
    .filter(({ lengthMm }) => lengthMm > 0)
    .map(({ start }) => blank.outline[start]!);
  return [...ends, ...corners]
    .filter((p) => toOutline(p, blank.outline) < POINT_MM)
    .reduce<Vec2[]>((all, p) => (all.some((q) => distance2(p, q) < POINT_MM) ? all : [...all, p]), []);
}

/** Centres of the crosses that show on a page: where two arms of one length cross in the middle of both. */
function crossesOn(page: PdfPage): Vec2[] {
  const arms = page.paths
    .flatMap(({ runs, clip }) => (clip ? runs.map((run) => ({ run, clip })) : []))
    .filter(({ run: [p, q, ...more] }) => more.length === 0 && Math.abs(distance2(p!, q!) - CROSS_MM) < 1e-3)
    .map(({ run: [p, q], clip }) => ({
      at: [(p![0] + q![0]) / 2, (p![1] + q![1]) / 2] as const,
      dir: [q![0] - p![0], q![1] - p![1]] as const,
      clip,
    }))
    .filter(({ at: [x, y], clip }) => x > clip.left && x < clip.right && y > clip.bottom && y < clip.top);
  return arms.flatMap(({ at, dir }, i) =>
    arms.some(
      (other, k) =>
        k > i &&
        distance2(other.at, at) < 1e-3 &&
        Math.abs(other.dir[0] * dir[0] + other.dir[1] * dir[1]) < 1e-2,
    )
      ? [at]
      : [],
  );
}

/** Which of the points a page's crosses stand on: they lie to each other, and to the printed edge, as those do. */
function matched(page: PdfPage, points: readonly Vec2[], outline: readonly Vec2[]): number[] | undefined {
  const [crosses, edge] = [crossesOn(page), edgePoints(page)];
  const [first] = crosses;
  if (!first || edge.length === 0) return undefined;
  for (const p of points) {
    const placed = ([x, y]: Vec2): Vec2 => [x + p[0] - first[0], y + p[1] - first[1]];
    const found = crosses.map((at) => points.findIndex((q) => distance2(placed(at), q) < POINT_MM));
    if (found.includes(-1)) continue;
    if (edge.every((at, i) => i % 5 !== 0 || toOutline(placed(at), outline) < POINT_MM)) return found;
  }
  return undefined;
}

/** Rows of the list of points: lettering of one height is one row. */
function listed(pages: readonly PdfPage[]): string[][] {
  const list = pages.filter((page) => wordsOf(page).includes("Marking points In "));
  return list.flatMap(({ texts }) => {
    const heights = [...new Set(texts.map(({ at }) => at[1].toFixed(1)))];
    return heights
      .map((height) => texts.filter(({ at }) => at[1].toFixed(1) === height))
      .map((row) => row.toSorted((p, q) => p.at[0] - q.at[0]).map(({ text }) => text))
      .filter((row) => row.length === 6 && row[0] !== "Point");
  });
}

it("tells the direction of a cone's edge square to the line from the centre of its arcs", () => {
  for (const report of [cone(), cone({ seam: { at: 0, joint: "butt", gap: 4 } })]) {
    const [{ blank } = { blank: undefined }] = cutPatterns(report);
    // Lines 3 and 9 of twelve meet in the centre.
    const [p, q] = [report.hand.rows[2]!, report.hand.rows[8]!];
    const [u, v] = [p, q].map(({ a, b }): Vec2 => [b[0] - a[0], b[1] - a[1]]) as [Vec2, Vec2];
    const reach = ((q.a[0] - p.a[0]) * v[1] - (q.a[1] - p.a[1]) * v[0]) / (u[0] * v[1] - u[1] * v[0]);
    const centre: Vec2 = [p.a[0] + reach * u[0], p.a[1] + reach * u[1]];
    const points = markingPoints(report, blank!);
    expect(points.length).toBeGreaterThan(22);
    for (const { at, tangent, name } of points) {
      const [x, y] = [
        (at[0] - centre[0]) / distance2(at, centre),
        (at[1] - centre[1]) / distance2(at, centre),
      ];
      expect(Math.abs(tangent![0] * x + tangent![1] * y), name).toBeLessThan(0.001);
    }
  }
});

describe("sheets with marking points alone, read by another library", () => {
  it.each([
    ["a cone on A4", () => cone(), "a4"],
    ["a cone with a gap on Letter", () => cone({ seam: { at: 0, joint: "butt", gap: 4 } }), "letter"],
    [
      "a narrow cone, turned",
      () =>
        reportOf(
          named({
            shape: "right-cone",
            thickness: 6,
            largeEnd: { diameter: 1700, measured: "outside" },
            smallEnd: { diameter: 620, measured: "outside" },
            halfAngle: 15,
          }),
        ),
      "a4",
    ],
    ["an eccentric cone on A3", oblique, "a3"],
    ["bend lines of half a square-to-round", square, "a4"],
  ] as const)(
    "%s: every point stands where it belongs, on the sheet that the list names",
    async (name, of, paper) => {
      const report = of();
      const [{ blank } = { blank: undefined }] = cutPatterns(report);
      const pages = await pagesOf(report, paper);
      const map = wordsOf(pages[0]!);
      const turned = /pattern is turned ([\d.]+)° (counter-)?clockwise/.exec(map);
      expect(turned !== null).toBe(name.endsWith(", turned"));
      const turn = turned ? (blank!.box.turnDeg * Math.PI) / 180 : 0;
      const rotate = ([x, y]: Vec2): Vec2 => [
        x * Math.cos(turn) - y * Math.sin(turn),
        x * Math.sin(turn) + y * Math.cos(turn),
      ];
      const points = expected(report, blank!);
      const sheets = pages.filter(({ texts }) => texts.some(({ text }) => /^Sheet [A-Z]+\d+, /.test(text)));
      const [lying, outline] = [points.map(rotate), blank!.outline.map(rotate)];
      const holds = new Map(sheets.map((page) => [nameOf(page), matched(page, lying, outline)]));
      // No sheet without a point, and no point without a sheet.
      for (const [name, found] of holds) expect(found?.length ?? 0, name).toBeGreaterThan(0);
      expect(new Set([...holds.values()].flat())).toEqual(new Set(points.keys()));

      const rows = listed(pages);
      expect(rows.length).toBe(points.length);
      for (const [name = "", x, y, , , sheet = ""] of rows) {
        const i = points.findIndex((p) => p[0].toFixed(1) === x && p[1].toFixed(1) === y);
        expect(holds.get(sheet), name).toContain(i);
      }
      // From each to the next in the list, and from the last to the first.
      rows.forEach(([, x, y, next, far], i) => {
        const [name = "", u, v] = rows[(i + 1) % rows.length]!;
        expect(name.startsWith(next!), name).toBe(true);
        expect(Math.abs(Math.hypot(Number(x) - Number(u), Number(y) - Number(v)) - Number(far))).toBeLessThan(
          0.2,
        );
      });

      const [, printed, high, wide, left] =
        /(\d+) sheets of .*?, (\d+) rows of (\d+); (\d+) that would hold no/.exec(map)!;
      expect(Number(printed)).toBe(sheets.length);
      expect(Number(printed) + Number(left)).toBe(Number(high) * Number(wide));
      const whole = write(report, "edges", paper);
      if (whole.kind === "written") expect(sheets.length).toBeLessThan(whole.sheets);
    },
  );

  it("writes x, y and the distance beside a point that has room", async () => {
    const report = cone();
    const pages = await pagesOf(report);
    const words = pages.slice(2).map(wordsOf).join(" ");
    const { a } = report.hand.rows[3]!;
    const far = report.hand.rows[3]!.next!.flat.aMm;
    expect(words).toContain("4 large end");
    expect(words).toContain(`x ${a[0].toFixed(1)}, y ${a[1].toFixed(1)}`);
    expect(words).toMatch(new RegExp(`to [35]: ${Number(far.toFixed(1))}(?: |$)`));
  });
});

it("is among what helps where the whole takes too many sheets, with as many as it then takes", () => {
  const report = cone({
    largeEnd: { diameter: 2005, measured: "outside" },
    smallEnd: { diameter: 900, measured: "outside" },
  });
  const refused = write(report, "all");
  if (refused.kind !== "refused") throw new Error(`${refused.sheets} sheets`);
  const said = Number(/marking point \((\d+)\)/.exec(refused.remedy)?.[1]);
  expect(said).toBeLessThanOrEqual(MOST_SHEETS);
  const done = write(report, "points");
  expect(done.kind === "written" && done.sheets).toBe(said);
});
