import { describe, expect, it } from "vitest";
import { bevelsOf } from "../../src/report/bevels.ts";
import type { Report } from "../../src/report/report.ts";
import { readBinder } from "../../src/site/binder/binder.ts";
import { bevelRows } from "../../src/site/forming/bevelRows.ts";
import { lotOf } from "../../src/site/forming/lot.ts";
import { chosenPlan } from "../../src/site/forming/plan.ts";
import { settingRows } from "../../src/site/forming/settingRows.ts";
import { blankNote, limitHead, limitWords, lotNote } from "../../src/site/forming/sheetWords.ts";
import { zoneMarksSaid } from "../../src/site/forming/zoneBegins.ts";
import { named, reportOf } from "../parts.ts";

const { parts } = readBinder();
const demo = (name: string) => parts.find(({ report }) => report.part.name === name)!.report;

/** 1100 to 800 over 700, the small end 250 over to plan angle 0°, where the seam is. */
const shift = demo("overflow-shift");

describe("the bevel of ends that lie level, line by line", () => {
  it("is half the thickness times what the wall leans by, at the face that it leans towards", () => {
    const bevels = bevelsOf(shift, 1);
    expect(bevels).toHaveLength(shift.hand.rows.length);
    for (const [i, { number, offMm, largeFace }] of bevels.entries()) {
      // tan β = (A − B)·n/H of both circles, (R − r − offset cos θ)/H.
      const lean = (550 - 400 - 250 * Math.cos((shift.hand.rows[i]!.planDeg * Math.PI) / 180)) / 700;
      expect(number).toBe(i + 1);
      expect(offMm).toBeCloseTo((4 / 2) * Math.abs(lean), 2);
      expect(largeFace).toBe(lean < 0 ? "outside" : "inside");
    }
    expect(new Set(bevels.map(({ largeFace }) => largeFace)).size).toBe(2);
  });

  it("stands under the picture of the blank, the least and the most that the step speaks of among it", () => {
    const [line, off, face] = bevelRows(shift, 1);
    expect(line!.cells).toHaveLength(13);
    expect(off!.cells[6]).toBe("1.14");
    expect(face!.cells.slice(0, 3)).toEqual(["out", "out", "in"]);
    const edges = chosenPlan(shift)!.steps.find(({ id }) => id === "edges")!;
    expect(edges.text).toContain("under the picture of the blank (up to 1.14 mm off along the wall)");
  });

  it("is not told line by line where one size serves all round, and where edges stay square", () => {
    expect(bevelRows(demo("gravel-bin-bottom"), 1)).toEqual([]);
    expect(bevelRows({ ...shift, part: { ...shift.part, edges: "square" } }, 1)).toEqual([]);
  });

  it("has the first and the last line of a blank of many", () => {
    const rows = bevelRows(
      reportOf(
        named({
          shape: "eccentric-cone",
          thickness: 4,
          largeEnd: { diameter: 1100, measured: "outside" },
          smallEnd: { diameter: 800, measured: "outside", offset: [250, 0] },
          height: 700,
          divisions: 48,
        }),
      ),
      1,
    );
    expect(rows[0]!.cells).toHaveLength(13);
    expect([rows[0]!.cells[0], rows[0]!.cells.at(-1)]).toEqual(["1", "49"]);
  });
});

it("says where zones begin, in lengths and among the numbered lines", () => {
  const { zones } = chosenPlan(shift)!.settings!;
  const said = zoneMarksSaid(shift, zones);
  // Lines are 30° apart from the seam at 0°; the zones begin at 125° and 235°.
  expect(said).toMatch(
    /^Zones begin, along the large and the small edge from seam 1: 1 at seam 1; 2 at 1194\.2 mm and 867 mm \(between lines 5 and 6\); 3 at 2246\.3 mm and 1631\.1 mm \(between lines 8 and 9\)\.$/,
  );
  expect(zoneMarksSaid(shift, [zones[0]!, { ...zones[1]!, fromDeg: 120 }])).toContain("(on line 5)");
  expect(zoneMarksSaid(shift, zones.slice(0, 1))).toBe("");
  expect(blankNote(shift, said)).toContain(said);
});

it("says in the table of settings which of them the part's trials overrule, and where", () => {
  const plan = chosenPlan(shift)!;
  const step = plan.steps.find(({ id }) => id === "first-raise")!;
  const labels = settingRows(plan.settings!, plan.steps).map(({ number, label }) => `${number} ${label}`);
  for (const zone of [1, 2, 3]) {
    expect(labels).toContain(`${zone} first pass, first trial: overruled, step ${step.number}`);
    // No trial lies in the window yet: the second pass goes by the plan.
    expect(labels).toContain(`${zone} second pass, closed`);
  }
  const untried = plan.steps.map(({ id, number }) => ({ id, number }));
  expect(settingRows(plan.settings!, untried).filter(({ label }) => label.includes("overruled"))).toEqual([]);
});

it("names the lap line of a lapped blank, and none of a butt one", () => {
  const lapped = reportOf(
    named({
      shape: "right-cone",
      thickness: 3,
      largeEnd: { diameter: 600, measured: "inside" },
      smallEnd: { diameter: 260, measured: "inside" },
      height: 560,
      seam: { at: 0, joint: "lap", lap: 25 },
    }),
  );
  expect(blankNote(lapped, "")).toContain(`Line ${lapped.hand.rows.length}, beside seam 2, is the lap line.`);
  expect(blankNote(shift, "")).not.toContain("lap line");
});

describe("the sheet of a lot", () => {
  const lotFor = (pieces: number, quantity: number) => {
    const report = demo("gravel-bin-bottom");
    const part = { ...report.part, pieces, quantity } as Report["part"];
    return lotOf({ ...report, part }, chosenPlan(report))!;
  };

  it("has a line for every blank, by the name that stands on it", () => {
    expect(lotFor(2, 1).names).toEqual(["piece 1", "piece 2"]);
    expect(lotFor(1, 3).names).toEqual(["1", "2", "3"]);
    expect(lotFor(3, 2).names).toEqual(["1.1", "1.2", "1.3", "2.1", "2.2", "2.3"]);
    const long = lotFor(2, 20);
    expect(long.names.at(-1)).toBe("12.2");
    expect(lotNote(long, "mm")).toContain(
      "16 more than there are lines: copy this sheet and go on from 13.1.",
    );
  });

  it("has both bearings of either pass, where the scales are", () => {
    const [first, second] = lotFor(2, 1).groups;
    for (const { columns } of [first!, second!])
      expect(columns.slice(0, 3)).toEqual(["drop end", "fixed end", "raise, large edge"]);
  });
});

describe("what is ticked in the inspection", () => {
  const row = {
    id: "diameter",
    what: "",
    nominalDeg: null,
    withinDeg: null,
    basis: "",
    readings: 1,
  } as const;

  it("is told from the least to the most that passes", () => {
    expect(limitWords({ ...row, nominalMm: 1700, withinMm: 8 }, "mm")).toEqual({
      range: "1692.0 to 1708.0",
      within: "± 8.0",
    });
    expect(limitWords({ ...row, nominalMm: 914.4, withinMm: 2 }, "in").range).toBe("35.921 to 36.079");
    expect(limitWords({ ...row, nominalMm: 0, withinMm: 16 }, "mm").range).toBe("at most 16.0");
  });

  it("is decided by somebody who is named, where there is no limit", () => {
    expect(limitWords({ ...row, nominalMm: 5340.7, withinMm: null }, "mm")).toEqual({
      range: "none given: the foreman decides",
      within: "",
    });
    expect(limitHead(null)).toBe("Limits, from the drawing");
    expect(limitHead("C")).toBe("Limits");
  });
});
