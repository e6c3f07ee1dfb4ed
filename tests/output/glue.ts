import { expect } from "vitest";
import { distance2, type Vec2 } from "../../src/geometry/vector.ts";
import type { PdfPage } from "./readPdf.ts";

/** Half the width of a scribed line: what may lie between a line on one sheet and the same on the next. [mm] */
export const JOIN_MM = 0.05;
const [EDGE_WIDE, MARK_WIDE] = [0.35, 0.13];

/** Centres of the match marks: where a lying and an upright arm of the same length cross. */
function crosses(page: PdfPage): Vec2[] {
  return page.paths
    .filter(
      ({ widthMm, clip, runs: all }) =>
        Math.abs(widthMm - MARK_WIDE) < 0.001 && clip === null && all.length > 1,
    )
    .flatMap(({ runs: all }) =>
      all
        .filter(([p, q, ...more]) => more.length === 0 && Math.abs(p![1] - q![1]) < 1e-3)
        .map(([p, q]): Vec2 => [(p![0] + q![0]) / 2, p![1]]),
    );
}

/** What shows of the edge on a page, as points close together. */
export function edgePoints(page: PdfPage): Vec2[] {
  return page.paths
    .filter(({ widthMm }) => Math.abs(widthMm - EDGE_WIDE) < 0.001)
    .flatMap(({ runs: all, clip }) =>
      all.flatMap((run) =>
        run
          .slice(1)
          .flatMap((q, i) => {
            const p = run[i]!;
            const many = Math.ceil(distance2(p, q) / 2);
            return Array.from({ length: many + 1 }, (_, k): Vec2 => [
              p[0] + ((q[0] - p[0]) * k) / many,
              p[1] + ((q[1] - p[1]) * k) / many,
            ]);
          })
          .filter(([x, y]) => clip && x >= clip.left && x <= clip.right && y >= clip.bottom && y <= clip.top),
      ),
    );
}

const toLine = (at: Vec2, p: Vec2, q: Vec2): number => {
  const long = distance2(p, q);
  if (long === 0) return distance2(at, p);
  const k = ((at[0] - p[0]) * (q[0] - p[0]) + (at[1] - p[1]) * (q[1] - p[1])) / long ** 2;
  const share = Math.min(1, Math.max(0, k));
  return Math.hypot(at[0] - p[0] - share * (q[0] - p[0]), at[1] - p[1] - share * (q[1] - p[1]));
};
export const toOutline = (at: Vec2, outline: readonly Vec2[]): number =>
  Math.min(...outline.map((p, i) => toLine(at, p, outline[(i + 1) % outline.length]!)));

/** The name that stands large at a sheet's foot, and what is said of its neighbours. */
export const nameOf = (page: PdfPage) =>
  /Sheet ([A-Z]+\d+), /.exec(page.texts.map(({ text }) => text).join("\n"))![1]!;

const sameRow = (a: string, b: string) => a.replace(/\d+/, "") === b.replace(/\d+/, "");

/** How the sheet that is laid on another lies to it, by three match marks that both have on their common line. */
function between(sheet: PdfPage, other: PdfPage, besides: boolean): Vec2 {
  const way = besides ? 0 : 1;
  const outermost = (page: PdfPage, most: boolean) => {
    const all = crosses(page);
    const end = (most ? Math.max : Math.min)(...all.map((p) => p[way]));
    return all.filter((p) => Math.abs(p[way] - end) < 0.01).sort((p, q) => p[1 - way]! - q[1 - way]!);
  };
  const [mine, its] = [outermost(sheet, besides), outermost(other, !besides)];
  expect([mine.length, its.length]).toEqual([3, 3]);
  const shift: Vec2 = [mine[0]![0] - its[0]![0], mine[0]![1] - its[0]![1]];
  mine.forEach((p, i) =>
    expect(distance2([its[i]![0] + shift[0], its[i]![1] + shift[1]], p)).toBeLessThan(JOIN_MM),
  );
  return shift;
}

/** The edge as it shows on all sheets of a file, glued together by their match marks from the first one on. */
export function glued(pages: readonly PdfPage[]): Vec2[] {
  const sheets = pages.slice(1);
  expect(sheets.length).toBeGreaterThan(1);
  /** Where each sheet's lower left corner comes to lie, from the first one on. */
  const placed = new Map<string, Vec2>([[nameOf(sheets[0]!), [0, 0]]]);
  for (let round = 0; round < sheets.length; round++)
    for (const sheet of sheets)
      for (const { text } of sheet.texts) {
        const name = /^([A-Z]+\d+) is laid to this line$/.exec(text)?.[1];
        if (name === undefined) continue;
        const other = sheets.find((one) => nameOf(one) === name)!;
        const shift = between(sheet, other, sameRow(nameOf(sheet), name));
        const [here, there] = [placed.get(nameOf(sheet)), placed.get(name)];
        if (here && there)
          expect(distance2([here[0] + shift[0], here[1] + shift[1]], there)).toBeLessThan(JOIN_MM);
        else if (here) placed.set(name, [here[0] + shift[0], here[1] + shift[1]]);
        else if (there) placed.set(nameOf(sheet), [there[0] - shift[0], there[1] - shift[1]]);
      }
  expect(placed.size).toBe(sheets.length);
  return sheets.flatMap((sheet) => {
    const [dx, dy] = placed.get(nameOf(sheet))!;
    return edgePoints(sheet).map(([x, y]): Vec2 => [x + dx, y + dy]);
  });
}
