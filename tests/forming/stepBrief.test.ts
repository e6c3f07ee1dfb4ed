import { describe, expect, it } from "vitest";
import { formingOf } from "../../src/forming/forming.ts";
import type { FormingCase } from "../../src/forming/case.ts";
import type { NumberedStep } from "../../src/forming/sheet/step.ts";
import { firstPassShares } from "../../src/forming/firstPass.ts";
import { meanHalfAngleRad } from "../../src/forming/skin.ts";
import { sayIn } from "../../src/forming/say.ts";
import { coneCase, coneless, reducer, roll, shop } from "./cases.ts";

const machine = roll({
  slide: { origin: [230, -200], angle: 60, travel: 300 },
  bearings: [140, 160],
  dropEnd: "left",
  coneAttachment: { range: [60, 60], clearRoom: 200 },
});
const planOn = (item: FormingCase) => formingOf(item, shop([machine])).plans[0]!;
const step = (steps: readonly NumberedStep[], id: string) => steps.find((one) => one.id === id)!;
const say = sayIn("mm");

/** Half the slant, tilt, bands and the model's own middle stand in the settings table; all else is worked by. */
const IN_THE_TABLE =
  /half the slant|^tilt|bearing beyond|, low$|, high$|by the model|height of that place|needs by itself/;

/** As fine as a roll is set. */
const sum = (end: string, mm: number) => ({
  label: `${end}, set`,
  unit: "mm",
  planned: tenth(mm),
  onto: "reading at 0",
});
const tenth = (mm: number) => Math.round(mm * 10) / 10;

describe("the few words beside the machine", () => {
  const { steps, settings } = planOn(coneCase(reducer));

  it("hold every number that the full steps work by", () => {
    const worked = steps.flatMap(({ id, brief, figures }) =>
      figures.filter(({ label }) => !IN_THE_TABLE.test(label)).map((one) => ({ id, brief, ...one })),
    );
    expect(worked.length).toBeGreaterThan(15);
    for (const { id, brief, value, unit, label } of worked)
      expect(brief, `${id}: ${label}`).toContain(unit === "kg" ? say.mass(value) : say.length(value));
  });

  it("tell a newcomer which face, which end, what to measure, and what comes first", () => {
    const words = (id: string) => `${step(steps, id).brief} ${step(steps, id).beware ?? ""}`;
    expect(words("align")).toMatch(/inside up, small edge tight on the stop; seam edge 1 ahead.*support/s);
    expect(words("pinch")).toMatch(/Gloves off; hands and sleeves clear of the nip; try the stop buttons/);
    expect(words("first-raise")).toMatch(/^Plate moving, in small steps/);
    expect(words("second-raise")).toMatch(/^Plate moving, in small steps/);
    expect(words("first-measure")).toMatch(/Release, support, measure straight across, inside corners/);
    expect(words("first-correct")).toMatch(/lower first/);
    expect(words("unload")).toMatch(/Bending roll down, pinch open, lift out/);
  });

  it("say what hurts where the full step does", () => {
    const silent = steps.filter(({ cautions, beware }) => cautions.length > 0 && beware === undefined);
    // What these warn of holds all the time, and stands above the steps.
    expect(silent.map(({ id }) => id)).toEqual(["first-raise", "first-correct", "second-raise"]);
  });

  it("have what is planned beside the line for what was really set, at edges and bearings", () => {
    for (const [id, pass] of [
      ["first-raise", "trial"],
      ["second-raise", "finished"],
    ] as const) {
      const start = settings!.zones[0]!.passes.find((one) => one.id === pass)!.start!;
      expect(step(steps, id).toNote).toEqual([
        // The small edge lies towards the drop end until the job is turned round.
        ...(id === "first-raise"
          ? [sum("drop end", start.smallBearingMm!), sum("fixed end", start.largeBearingMm!)]
          : [sum("drop end", start.largeBearingMm!), sum("fixed end", start.smallBearingMm!)]),
        { label: "raise, large edge, set", unit: "mm", planned: tenth(start.largeMm) },
      ]);
    }
    expect(step(steps, "stop").toNote[0]!.planned).toBe(60);
    expect(step(steps, "turn").toNote[0]!.planned).toBe(60);
  });

  it("say which bearing is which in both passes, for turning the job round swaps them", () => {
    expect(step(steps, "first-raise").brief).toMatch(/small edge's \(drop end\).*large edge's \(fixed end\)/);
    expect(step(steps, "second-raise").brief).toMatch(
      /small edge's \(fixed end\).*large edge's \(drop end\)/,
    );
    expect(step(steps, "turn").brief).toContain("small edge's bearing at the fixed end");
    expect(step(steps, "zero").brief).toMatch(/the tilt \([\d.]+°, small end higher\) follows from/);
  });

  it("say how much is dressed off which face", () => {
    const off = (6 / 2) * Math.tan(coneCase(reducer).leanRad);
    expect(step(steps, "edges").brief).toContain(
      `${say.length(off)} off the inside of the large end, the outside of the small`,
    );
    const allowed = planOn(coneCase(reducer, { trimAllowance: true }));
    expect(step(allowed.steps, "edges").brief).toContain(`${say.length(2 * off)} off the inside`);
  });

  it("plan nothing where the roll's geometry is not known", () => {
    const [plan] = formingOf(coneCase(reducer)).plans;
    expect(step(plan!.steps, "first-raise").toNote).toEqual([
      { label: "raise, large edge, set", unit: "mm" },
      { label: "raise, small edge, set", unit: "mm" },
    ]);
  });
});

it("has a sum for both bearings of every zone, the other way round in the second pass, and those zones' settings and templates in words", () => {
  const curvature = Array.from({ length: 72 }, (_, i) => ({
    planDeg: 5 * i,
    largeRadiusMm: 500 + 150 * Math.cos((i * Math.PI) / 36),
    smallRadiusMm: 250 + 75 * Math.cos((i * Math.PI) / 36),
    slantMm: 600,
  }));
  const item = { ...coneless(coneCase(reducer)), shape: "eccentric-cone", curvature };
  const { steps, settings } = planOn(item);
  const zones = settings!.zones;
  expect(zones.length).toBeGreaterThan(2);
  const raise = step(steps, "first-raise");
  // The skin is the same on both sides of its seam, and so are its zones: two of a kind share a line.
  const half = Math.ceil(zones.length / 2);
  const second = step(steps, "second-raise");
  expect(raise.toNote).toHaveLength(3 * half);
  expect(second.toNote).toHaveLength(3 * half);
  for (const [i, { passes }] of zones.slice(0, half).entries()) {
    const at = (id: string) => passes.find((pass) => pass.id === id)!.start!;
    const name = i === half - 1 ? `zone ${i + 1}` : `zones ${i + 1} and ${zones.length - i}`;
    const row = (drop: number, fixed: number, large: number) => [
      { label: `${name}, drop end, set`, unit: "mm", planned: tenth(drop), onto: "reading at 0" },
      { label: "fixed end, set", unit: "mm", planned: tenth(fixed), onto: "reading at 0" },
      { label: "large edge, set", unit: "mm", planned: tenth(large) },
    ];
    const [trial, finished] = [at("trial"), at("finished")];
    expect(raise.toNote.slice(3 * i, 3 * i + 3)).toEqual(
      row(trial.smallBearingMm!, trial.largeBearingMm!, trial.largeMm),
    );
    expect(second.toNote.slice(3 * i, 3 * i + 3)).toEqual(
      row(finished.largeBearingMm!, finished.smallBearingMm!, finished.largeMm),
    );
    expect(step(steps, "close").brief).toContain(`${name}: R `);
  }
  expect(step(steps, "first-through").brief).toContain(
    "plate running, both bearings by turns a little at a time, one up, the other down",
  );

  // The window of every zone and end, by the shares that the words name, to judge what was measured by.
  const { window } = { window: firstPassShares(meanHalfAngleRad(item)) };
  const boxes = step(steps, "first-measure").toNote;
  expect(boxes).toHaveLength(2 * zones.length);
  zones.forEach(({ largeRadiusMm, smallRadiusMm }, i) => {
    const inside = (middle: number, share: number) =>
      say.tape(middle / share - item.thicknessMm / 2).replace(" mm", "");
    for (const [j, end, middle] of [
      [0, "large", largeRadiusMm],
      [1, "small", smallRadiusMm],
    ] as const)
      expect(boxes[2 * i + j]!.label).toBe(
        `zone ${i + 1} ${end} end R ${inside(middle, window.from)} to ${inside(middle, window.to)}`,
      );
  });
});

it("notes no gap left of a piece that stays open", () => {
  const labels = (pieces: number) =>
    step(planOn(coneCase(reducer, { pieces })).steps, "close").toNote.map(({ label }) => label);
  expect(labels(1)).toContain("gap left, large end");
  expect(labels(2)).toEqual(["raise at the end, set", "template, tight or open"]);
});
