import { expect, it } from "vitest";
import { NARROW, SHEET } from "../../src/drawing/paper.ts";
import { patternDrawing } from "../../src/drawing/pattern.ts";
import { readBinder } from "../../src/site/binder/binder.ts";
import { named, reportOf } from "../parts.ts";

const INCH = 25.4;
const twoPieces = named({
  shape: "eccentric-cone",
  thickness: 4.7625,
  largeEnd: { diameter: 42 * INCH, measured: "inside" },
  smallEnd: { diameter: 20.5 * INCH, measured: "inside", offset: [6 * INCH, 0] },
  height: 32 * INCH,
  pieces: 2,
});
const reports = [
  reportOf({ ...twoPieces, units: "in", title: "Two pieces in inches" }),
  ...readBinder().parts.map(({ report }) => report),
];

/** So many lines stand without a number on the sheet and on narrow paper: between their ends and the dimensions no leader has room. */
const CROWDED: Readonly<Record<string, readonly [number, number]>> = {
  "Sand trap cone": [2, 5],
};

it.each(
  reports.flatMap((report) =>
    [SHEET, NARROW].map((paper) => ({ report, paper, title: report.part.title, on: paper.name })),
  ),
)("$title on $on: a line that is drawn has its number at one end at least", ({ report, paper }) => {
  const most = CROWDED[report.part.title]?.[paper === SHEET ? 0 : 1] ?? 0;
  for (const blank of report.blanks.filter(({ sameAs }) => sameAs === null)) {
    const { lines, labels } = patternDrawing(report, { paper, blank });
    const told = new Set(labels.flatMap(({ role, elements }) => (role === "number" ? (elements ?? []) : [])));
    const drawn = lines.filter(({ shown }) => shown === "line");
    expect(drawn.length).toBeGreaterThan(1);
    expect(drawn.filter(({ elements }) => !elements.some((one) => told.has(one)))).toHaveLength(most);
  }
});

it("leaves no gap in the numbers of a small end of seven lines: what has no room stands on a leader", () => {
  const [report] = reports;
  const [blank] = report!.blanks;
  const { labels } = patternDrawing(report!, { paper: SHEET, blank: blank! });
  const numbers = labels.filter(({ role }) => role === "number").map(({ text }) => text);
  expect(numbers.toSorted()).toEqual([1, 1, 2, 2, 3, 3, 4, 4, 5, 5, 6, 6, 7, 7].map(String));
});

it.each([72, 96])("of %i divisions numbers evenly spaced lines, and none between", (divisions) => {
  const report = reportOf({ ...twoPieces, divisions });
  for (const paper of [SHEET, NARROW]) {
    const { labels } = patternDrawing(report, { paper, blank: report.blanks[0]! });
    const told = labels.filter(({ role }) => role === "number").map(({ text }) => Number(text));
    const last = divisions / 2 + 1;
    const between = [...new Set(told)].filter((one) => one !== 1 && one !== last).toSorted((a, b) => a - b);
    const every = (between[0] ?? 1) - 1;
    expect([4, 6, 8, 12]).toContain(every);
    // None is left out, so that lines can be counted from one to the next.
    expect(between).toEqual(between.map((_, i) => 1 + every * (i + 1)));
    expect(last - (between.at(-1) ?? 0)).toBeLessThan(2 * every);
  }
});
