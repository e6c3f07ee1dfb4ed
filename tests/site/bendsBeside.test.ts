import { expect, it } from "vitest";
import { chosenPlan } from "../../src/site/forming/plan.ts";
import { bendsBeside } from "../../src/site/words/bendsBeside.ts";
import { edgePaths, endsOf } from "../../src/drawing/pattern/edges.ts";
import { distance2, type Vec2 } from "../../src/geometry/vector.ts";
import { reports } from "./askedSums.ts";

const bent = reports.filter(([, report]) => chosenPlan(report)?.brake);

/** How far along an edge, from seam 1, the place of it lies that is nearest to a point. [mm] */
function along(points: readonly Vec2[], at: Vec2): number {
  let [sum, best, least] = [0, 0, Infinity];
  for (const [i, p] of points.entries()) {
    sum += i === 0 ? 0 : distance2(points[i - 1]!, p);
    if (distance2(p, at) < least) [best, least] = [sum, distance2(p, at)];
  }
  return best;
}

it.each(bent)(
  "%s: every bend line lies between the lines of the marking table that it names",
  (_, report) => {
    const { brake } = chosenPlan(report)!;
    const beside = bendsBeside(report, brake!);
    for (const blank of report.blanks.filter(({ sameAs }) => sameAs === null)) {
      const rows = report.hand.rows.filter(({ piece }) => piece === blank.piece);
      const ends = endsOf(edgePaths(blank));
      for (const line of brake!.lines.filter(({ piece }) => piece === blank.piece)) {
        const named = /^(\d+)(?:–(\d+))?$/.exec(beside.marking(line));
        expect(named, beside.marking(line)).not.toBeNull();
        const [from, to] = [Number(named![1]), Number(named![2] ?? named![1])];
        expect(to - from).toBe(named![2] === undefined ? 0 : 1);
        // By another road: how far round each end they lie. A point and a corner have many lines in one place.
        for (const [k, end] of ends.entries()) {
          if (!end) continue;
          const of = (at: Vec2) => along(end.points, at);
          const places = [rows[from - 1]!, rows[to - 1]!].map((row) => of(k === 0 ? row.a : row.b));
          const here = of(k === 0 ? line.from : line.to);
          // The cut edge may lack half a gap, and its points lie apart.
          const slack = 8;
          expect(here, `line ${line.number}`).toBeGreaterThan(Math.min(...places) - slack);
          expect(here, `line ${line.number}`).toBeLessThan(Math.max(...places) + slack);
        }
        // The other table says the same.
        const told = beside.bends(rows[from - 1]!);
        const numbers = [...told.matchAll(/(\d+)(?:–(\d+))?/g)].flatMap(([, first, last]) => {
          const start = Number(first);
          return Array.from({ length: Number(last ?? first) - start + 1 }, (_one, i) => start + i);
        });
        expect(numbers, told).toContain(line.number);
      }
      // None is told twice.
      const count = rows
        .flatMap((row) => [...beside.bends(row).matchAll(/(\d+)(?:–(\d+))?/g)])
        .reduce((sum, [, first, last]) => sum + Number(last ?? first) - Number(first) + 1, 0);
      expect(count).toBe(brake!.lines.filter(({ piece }) => piece === blank.piece).length);
    }
  },
);
