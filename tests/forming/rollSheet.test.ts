import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { closureTable } from "../../src/forming/closure.ts";
import { formingOf } from "../../src/forming/forming.ts";
import type { FormingCase } from "../../src/forming/case.ts";
import type { PlateRoll } from "../../src/forming/machine.ts";
import type { NumberedStep } from "../../src/forming/sheet/step.ts";
import { anyCase, anyRoll, coneCase, coneless, reducer, roll, RUNS, shop } from "./cases.ts";

const machine = roll({
  slide: { origin: [230, -200], angle: 60, travel: 300 },
  bearings: [140, 160],
  dropEnd: "left",
  coneAttachment: { range: [60, 60], clearRoom: 200 },
});
const planOn = (item: FormingCase, one: PlateRoll = machine) => formingOf(item, shop([one])).plans[0]!;
const step = (steps: readonly NumberedStep[], id: string) => steps.find((one) => one.id === id)!;
const figure = (one: NumberedStep, label: string) =>
  one.figures.find((figure) => figure.label.startsWith(label))!.value;

describe("the work sheet of a right cone", () => {
  const item = coneCase(reducer, { quantity: 3 });
  const { steps, settings, batch } = planOn(item);

  it("goes through the phases in the order of the work, numbered from 1", () => {
    expect(steps.map(({ number }) => number)).toEqual(steps.map((_, i) => i + 1));
    expect([...new Set(steps.map(({ phase }) => phase))]).toEqual([
      "set-up",
      "first pass",
      "turning the job round",
      "second pass",
      "closing",
      "tack and re-round",
      "inspection",
    ]);
  });

  it("gives the gaps and templates of the closure table's window, and the cap", () => {
    const table = closureTable(item, settings!.flat.acrossMm);
    const row = (words: string) => table.find(({ mark }) => mark?.includes(words))!;
    const measure = step(steps, "first-measure");
    expect(figure(measure, "gap at the large end, widest")).toBe(row("start of").large!.insideGapMm);
    expect(figure(measure, "gap at the large end, narrowest")).toBe(row("end of").large!.insideGapMm);
    expect(figure(measure, "gap at the large end, never")).toBe(row("cap").large!.insideGapMm);
    expect(figure(measure, "gap at the small end, widest")).toBe(row("start of").small!.insideGapMm);
    const close = step(steps, "close");
    expect(figure(close, "template radius inside, large")).toBeCloseTo(
      row("closed").large!.insideSquareRadiusMm,
      9,
    );
    expect(figure(close, "template radius inside, small")).toBeCloseTo(
      row("closed").small!.insideSquareRadiusMm,
      9,
    );
  });

  it("gives this machine's settings in words and figures, the stop and the tilt", () => {
    const [trial, , , , finished] = settings!.zones[0]!.passes;
    const first = step(steps, "first-raise");
    expect(figure(first, "start at the large edge")).toBe(trial!.start!.largeMm);
    expect(figure(first, "tilt")).toBe(trial!.start!.tiltDeg);
    expect(first.text).toContain(`${Number(trial!.start!.largeMm.toFixed(1))} mm at the large edge`);
    expect(figure(step(steps, "second-raise"), "start at the small edge")).toBe(finished!.start!.smallMm);
    expect(figure(step(steps, "stop"), "stop from the drop end")).toBe(60);
    expect(figure(step(steps, "edges"), "large edge runs further")).toBeCloseTo(2 * Math.PI * 250, 9);
    expect(first.cautions[0]).toMatch(/only while the plate travels; never roll backwards at setting/);
  });

  it("tells what the far side of an open piece reaches, laid out in space", () => {
    // The piece k closed: its axis leans by a with sin a = sin α/k, its small rim is r/k; the far point of the rim. k is
    // that of the first trial, 0.85 of the 0.6 of the bend with which this cone's window begins.
    const stop = step(steps, "stop");
    const { cone } = item;
    const flat = Math.sin(cone!.halfAngleRad);
    const k = Math.hypot(flat, 0.85 * 0.6 * Math.cos(cone!.halfAngleRad));
    const a = Math.asin(Math.sin(cone!.halfAngleRad) / k);
    const far = [2 * (200 / k) * Math.sin(a), 2 * (200 / k) * Math.cos(a)] as const;
    expect(figure(stop, "reach past the stop while open")).toBeCloseTo(far[0], 9);
    expect(figure(stop, "height of that place")).toBeCloseTo(far[1], 9);
    expect(stop.cautions.join(" ")).toMatch(/look first whether the yoke is as high as that/);
  });

  it("names the room at the fixed end where the shop gives it, and else says to look", () => {
    const stopOn = (more: Partial<PlateRoll>) => step(planOn(item, { ...machine, ...more }).steps, "stop");
    const given = (room: number) =>
      stopOn({ coneAttachment: { range: [60, 60], clearRoom: 900, clearRoomFixedEnd: room } });
    const unknown = step(steps, "stop");
    expect(unknown.text).toContain("look before you begin");
    expect(unknown.text).toContain("needs a stop at the other end of the rolls too");
    const roomy = given(800);
    expect(roomy.text).toContain("at the fixed end of the rolls, where the clear room is 800 mm");
    expect(roomy.text).not.toContain("look before you begin");
    expect(roomy.cautions.join(" ")).not.toContain("look first whether");
    const tight = given(250);
    expect(tight.cautions.join(" ")).toContain("must not strike the yoke");
    expect(tight.cautions.join(" ")).toContain(
      "the clear room at the fixed end is 250 mm: look first whether",
    );
    // A roll that bends both edges from one end needs no second stop.
    expect(stopOn({ arrangement: "four-roll" }).text).not.toContain("second pass");
  });

  it("keeps the lot's first passes together before the stop is moved", () => {
    expect(batch[0]).toContain("3 blanks");
    expect(step(steps, "unload").text).toMatch(/all 3 blanks of the lot before the stop is moved/);
    expect(planOn(coneCase(reducer)).batch).toEqual([]);
  });
});

it("asks no stop and no tilt of a pipe, and one raise", () => {
  const pipe = coneCase({ ...reducer, smallRadiusMm: 450 });
  const { steps } = planOn(pipe);
  expect(step(steps, "stop")).toBeUndefined();
  expect(JSON.stringify(steps)).not.toMatch(/tilt|small edge/);
  expect(
    step(steps, "first-raise")
      .figures.map(({ label }) => label)
      .slice(0, 3),
  ).toEqual(["raise to start with", "low", "high"]);
  expect(figure(step(steps, "first-measure"), "gap at the ends, widest")).toBeGreaterThan(0);
});

it("goes by templates, zone by zone, where the curvature is uneven", () => {
  const curvature = Array.from({ length: 72 }, (_, i) => ({
    planDeg: 5 * i,
    largeRadiusMm: 500 + 150 * Math.cos((i * Math.PI) / 36),
    smallRadiusMm: 250 + 75 * Math.cos((i * Math.PI) / 36),
    slantMm: 600,
  }));
  const item = { ...coneless(coneCase(reducer)), shape: "eccentric-cone" as const, curvature };
  const { steps, settings } = planOn(item);
  const zones = settings!.zones.length;
  expect(zones).toBeGreaterThan(2);
  expect(step(steps, "first-raise").figures.filter(({ label }) => label.includes("large edge"))).toHaveLength(
    2 * zones,
  );
  expect(step(steps, "edges").text).toMatch(new RegExp(`Mark the ${zones} zones by a line across the blank`));
  // Templates of both ends of every zone, how far the edge that led stands outside and falls short at both ends, and the raise for a gap that is left.
  expect(step(steps, "close").figures).toHaveLength(2 * zones + 5);
  expect(step(steps, "close").figures.at(-1)!.label).toMatch(
    /^raise for every 10 mm that it falls further short/,
  );
  expect(step(steps, "first-measure").text).toMatch(
    /60 % to 77 % of the final bend(, the two radii of each box)?; never above 83 %/,
  );
  // So curved that one of its zones is too short to be corrected by itself: that is said, and no setting named.
  expect(step(steps, "first-correct").text).toMatch(
    /^(Curve more open|Give what came out in every zone|No setting is corrected by trials here: zone \d is only)/,
  );
});

describe("without settings", () => {
  it.each(["pyramid", "double-pinch", "four-roll"] as const)(
    "a %s has its own short sequence",
    (arrangement) => {
      const { steps } = planOn(coneCase(reducer), { ...machine, arrangement });
      expect(steps.map(({ id }) => id)).toEqual([
        "edges",
        ...(arrangement === "pyramid" ? ["pre-bend"] : []),
        "stop",
        "align",
        "by-template",
        "close",
        "tack",
        "re-round",
        "inspect",
      ]);
      expect(step(steps, "by-template").text).toMatch(/No settings are given for this arrangement/);
      expect(figure(step(steps, "by-template"), "template radius inside, large")).toBeGreaterThan(400);
      expect(step(steps, "close").text).toMatch(
        /Inside templates, square to an element line: R [\d.]+ mm and/,
      );
      // It has no bending roll that stands still, no first and second pass, and one moment of rolling.
      const words = steps.map(({ text, cautions }) => [text, ...cautions].join(" ")).join(" ");
      expect(words).not.toMatch(
        /groove|first pass|second pass|first trial|never roll backwards|turned? round/i,
      );
      if (arrangement === "pyramid") expect(words).not.toMatch(/pinch(?!ed| roll's)/i);
      expect(words).toContain("gloves off before they turn");
      expect([...new Set(steps.map(({ phase }) => phase))]).toEqual([
        "set-up",
        "bending",
        "closing",
        "tack and re-round",
        "inspection",
      ]);
    },
  );

  it.each(["pyramid", "double-pinch", "four-roll"] as const)(
    "a lot on a %s is told in its own words, the first blank by template",
    (arrangement) => {
      const { batch } = planOn(coneCase(reducer, { quantity: 3 }), { ...machine, arrangement });
      expect(batch.join(" ")).toMatch(/The first alone, by template: write down what the scales showed/);
      expect(batch.join(" ")).not.toMatch(/second passes|move the stop/);
    },
  );

  it("the sequence of a pinch roll still has its gaps, and says that no setting can be given", () => {
    const [plan] = formingOf(coneCase(reducer)).plans;
    expect(step(plan!.steps, "first-raise").text).toMatch(/no settings: no shop file was given/);
    expect(figure(step(plan!.steps, "first-measure"), "gap at the large end, widest")).toBeGreaterThan(0);
    expect(step(plan!.steps, "first-correct")).toBeUndefined();
  });
});

it("is written for any part on any roll that takes it, without an empty sentence or a number that is none", () => {
  fc.assert(
    fc.property(anyCase, anyRoll, (item, one) => {
      for (const { steps, batch } of [
        ...formingOf(item, shop([one])).plans,
        ...formingOf(item).plans,
        ...formingOf(
          item,
          shop([{ ...machine, workingWidth: 20_000, rating: { thickness: 200, yieldMPa: 2000 } }]),
        ).plans,
      ]) {
        const words = [
          ...batch,
          ...steps.flatMap(({ text, cautions, title, toNote }) => [
            text,
            title,
            ...cautions,
            ...toNote.map(({ label, planned = 0 }) => `${label} ${planned}`),
          ]),
        ];
        for (const text of words) expect(text).not.toMatch(/NaN|Infinity|undefined|null|^$|-0 /);
        for (const { value, label } of steps.flatMap(({ figures }) => figures))
          expect(Number.isFinite(value), label).toBe(true);
      }
    }),
    RUNS,
  );
});
