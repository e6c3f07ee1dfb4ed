import { describe, expect, it } from "vitest";
import { byHand } from "../../src/forming/byHand.ts";
import type { FormingCase } from "../../src/forming/case.ts";
import { closedOfGap } from "../../src/forming/closedOfGap.ts";
import { straightLeadMm } from "../../src/forming/rollSettings.ts";
import { closureTable, endRolled } from "../../src/forming/closure.ts";
import { closureSetting } from "../../src/forming/closureSetting.ts";
import { formingOf } from "../../src/forming/forming.ts";
import type { PlateRoll } from "../../src/forming/machine.ts";
import { sectionOf } from "../../src/forming/rollSetting.ts";
import { sayIn } from "../../src/forming/say.ts";
import { raisesByTable } from "../../src/forming/sheet/raisesByTable.ts";
import { type NumberedStep, numbered, type PlanStep, stepNamed } from "../../src/forming/sheet/step.ts";
import { plateOf } from "../../src/forming/springback.ts";
import { trialFit } from "../../src/forming/trialFit.ts";
import { coneCase, reducer, roll, shop } from "./cases.ts";

const machine = roll({
  slide: { origin: [230, -200], angle: 60, travel: 300 },
  bearings: [140, 160],
  dropEnd: "left",
  coneAttachment: { range: [60, 60], clearRoom: 200 },
});
const planOn = (item: FormingCase, one: PlateRoll = machine) => formingOf(item, shop([one])).plans[0]!;
const step = (steps: readonly NumberedStep[], id: string) => steps.find((one) => one.id === id)!;
const textOf = (item: FormingCase, id: string, one: PlateRoll = machine) =>
  step(planOn(item, one).steps, id).text;
const labels = (item: FormingCase, id: string, one: PlateRoll = machine) =>
  step(planOn(item, one).steps, id).toNote.map(({ label }) => label);
const say = sayIn("mm");
const cone = coneCase(reducer);
const pipe = coneCase({ ...reducer, smallRadiusMm: 450 });

describe("one step points at another by its number", () => {
  const one = (id: string, text: string): PlanStep => ({
    id,
    text,
    phase: "set-up",
    title: id,
    figures: [],
    cautions: [],
    toNote: [],
    basis: "derived here",
  });

  it("whatever stands before it", () => {
    const steps = numbered([null, one("first", `as in ${stepNamed("last-one")}`), one("last-one", "")]);
    expect(steps[0]!.text).toBe("as in step 2");
  });

  it("and never at one that is not there", () => {
    expect(() => numbered([one("first", stepNamed("gone"))])).toThrow(/“gone”/);
  });
});

it("says within which travel the raise is on: as far as the bending roll stands from the pinch, in both passes", () => {
  const { steps, settings } = planOn(cone);
  const arm = settings!.flat.acrossMm;
  const gone = `has gone ${say.tape(arm)}`;
  expect(step(steps, "first-raise").text).toContain(
    `Chalk the large edge at the pinch: all of it on before the chalk ${gone}, if the manual lets you, or a longer end stays open.`,
  );
  expect(step(steps, "second-raise").text).toContain(`again before chalk at the pinch ${gone}.`);
  for (const id of ["first-raise", "second-raise"])
    expect(step(steps, id).figures).toContainEqual(
      expect.objectContaining({
        label: "whole raise on before the plate has gone",
        value: arm,
        basis: "derived here",
      }),
    );
  // The straight lead is the same length.
  expect(step(steps, "first-through").text).toContain(`stays straight for about ${say.tape(arm)}`);
});

it("says once how a piece lies when it is measured, and points there", () => {
  const { steps } = planOn(cone);
  const { number, text } = step(steps, "first-measure");
  expect(text).toMatch(
    /bending roll lowered, run back until its seam edges are level, held, rolls off, pinch open\..*In doubt stand it on its large end/,
  );
  expect(step(steps, "first-correct").text).toContain(`measure as in step ${number}.`);
  expect(step(steps, "close").text).toContain(`Judge it released, as in step ${number}.`);
  // A pipe needs no stop, and has no large end to stand on.
  const straight = planOn(pipe).steps;
  expect(step(straight, "first-measure").number).toBe(number - 1);
  expect(step(straight, "close").text).toContain(`as in step ${number - 1}.`);
  expect(step(straight, "first-measure").text).toContain("In doubt stand it on end on a level floor");
});

it("has a line for both bearings of every further raise, where the scales are there", () => {
  const row = (which: string) => [
    `${which}: scale, drop end`,
    "fixed end",
    "raise, large edge",
    "gap after it",
  ];
  expect(labels(cone, "first-correct")).toEqual([...row("2nd"), ...row("3rd")]);
  expect(labels(cone, "close").slice(0, 2)).toEqual([
    "scale at the end, drop end",
    "scale at the end, fixed end",
  ]);
  const bare = { ...machine };
  delete bare.bearings;
  expect(labels(cone, "first-correct", bare)).toEqual(
    ["2nd", "3rd"].flatMap((which) => [`${which} raise, large edge`, "gap after it"]),
  );
  expect(labels(pipe, "first-correct")).toEqual(
    ["2nd", "3rd"].flatMap((which) => [`${which} raise`, "gap after it"]),
  );
});

it("says by how much the large edge runs further, and not that an edge is so long", () => {
  const furtherMm = cone.rimsMm.large - cone.rimsMm.small;
  expect(textOf(cone, "edges")).toContain(
    `Smooth the small edge, which the stop holds back: in one pass the large one runs ${say.length(furtherMm)} further.`,
  );
});

it("takes a piece off sideways only where the top roll goes between its edges, and puts it back as it is", () => {
  const steeper = coneCase({ ...reducer, smallRadiusMm: 405 });
  const found = [0, 0];
  for (let topDiameter = 400; topDiameter < 600; topDiameter += 10) {
    const onTop = { ...machine, rolls: { ...machine.rolls, topDiameter } };
    const leadMm = planOn(steeper, onTop).settings!.flat.acrossMm;
    const cap = closureTable(steeper, leadMm).find(({ mark }) => mark?.startsWith("cap"))!;
    const goesBetween = Math.min(cap.large!.insideGapMm, cap.small!.insideGapMm) > topDiameter;
    found[Number(goesBetween)]!++;
    expect(textOf(steeper, "unload", onTop)).toMatch(
      goesBetween
        ? /by the manual: sideways, the top roll .* further apart; or over the drop end/
        : /by the manual: over the drop end, yoke open: the seam edges may stand nearer/,
    );
  }
  expect(Math.min(...found)).toBeGreaterThan(3);
  expect(textOf(cone, "turn")).toContain("back round the top roll bent as it is (never flattened)");
});

describe("a part in pieces", () => {
  const halves = coneCase(reducer, { pieces: 2 });

  it("says that a piece stays open, and how far apart its edges then stand", () => {
    // Half a level ring: its inside corners stand a diameter apart, less the wall in the plane of its end.
    const wall = reducer.thicknessMm / Math.cos(halves.cone!.halfAngleRad);
    const [large, small] = [900 - wall, 400 - wall];
    expect(textOf(halves, "close")).toContain(
      "A piece, one of 2, stays open: roll until the templates fit at both ends. Judge",
    );
    // One more time through, before it is as it is to be.
    expect(textOf(halves, "last-edge")).toContain(
      `Templates now fit up to it; its seam edges then stand ${say.tape(large)} at the large end, ${say.tape(small)} at the small end`,
    );
    const [first, second] = step(planOn(halves).steps, "last-edge").toNote;
    expect(first!.planned).toBeCloseTo(large, 6);
    expect(second!.planned).toBeCloseTo(small, 6);
  });

  it("is named piece by piece", () => {
    const named = (pieces: number, quantity: number) =>
      planOn(coneCase(reducer, { pieces, quantity })).batch[0];
    expect(named(2, 1)).toBe("2 blanks for one part, its halves: mark them piece 1 to piece 2.");
    expect(named(3, 4)).toBe(
      "12 blanks, 3 for each of 4 parts, its 3 pieces: mark them part and piece, 1.1 to 4.3.",
    );
    expect(named(1, 4)).toBe("4 blanks, one a part: mark them 1 to 4.");
  });
});

it("says how many raises by the table reach the window, which a roll that follows the model bears out", () => {
  const asked = { item: cone, roll: machine, say };
  const table = byHand(asked);
  const { settings, steps } = planOn(cone);
  const start = settings!.zones[0]!.passes.find(({ id }) => id === "trial")!.start!;
  const { halfAngleRad, largeRadiusMm } = cone.cone!;
  const radiusMm = (450 + 200) / 2;
  /** The gap that a setting of the large edge leaves at the first trial's tilt, by halving. */
  const gapAt = (largeMm: number) => {
    const middleMm = largeMm + (start.middleMm - start.largeMm);
    let [open, tight] = [Math.sin(halfAngleRad) + 1e-6, 1];
    for (let i = 0; i < 60; i++) {
      const closed = (open + tight) / 2;
      const answer = closureSetting(sectionOf(machine)!, plateOf(cone), { radiusMm, halfAngleRad, closed });
      if (answer.kind === "setting" && answer.bestMm < middleMm) open = closed;
      else tight = closed;
    }
    return endRolled(cone, cone.cone!, {
      radiusMm: largeRadiusMm,
      closed: tight,
      leadMm: straightLeadMm(asked),
    }).insideGapMm;
  };
  const window = table.at(-2)!;
  let [largeMm, raises] = [start.largeMm, 0];
  for (; gapAt(largeMm) > window.fromMm!; raises++) {
    const gapMm = gapAt(largeMm);
    largeMm += Math.floor(10 * table.find(({ toMm }) => gapMm > toMm!)!.moreMm) / 10;
  }
  expect(raises).toBeGreaterThan(1);
  expect(raisesByTable(asked)).toBe(raises);
  expect(step(steps, "first-correct").text).toContain(
    "It is careful: by the model, from the plan's start, the 2nd raise still falls short of the window, the 3rd reaches it. Still wider after a third raise",
  );
});

describe("a lapped seam", () => {
  const lap = 25;
  const leadMm = 140;
  const lapped = coneCase(reducer, { seamLapMm: lap });
  const gapAt = (item: FormingCase) => (closed: number) =>
    endRolled(item, item.cone!, { radiusMm: 450, closed, leadMm }).insideGapMm;

  it("is closed, tacked and brought round in its own words", () => {
    const close = textOf(lapped, "close");
    expect(close).toMatch(
      /^Close until the templates fit\. The seam edges then lap by 25 mm: seam edge 1 inside, up to the lap line\. Stop before the lap comes between the rolls/,
    );
    expect(close).toContain("for every 10 mm of lap lacking at the large end");
    expect(close).toContain("Edges further past each other than the lap");
    expect(textOf(lapped, "tack")).toMatch(
      /^Draw the seam edges over each other by 25 mm and clamp them tight on each other: seam edge 1 inside/,
    );
    expect(textOf(lapped, "re-round")).toMatch(
      /to and fro between both sides of the lap, which never goes between the rolls/,
    );
    expect(labels(lapped, "close").slice(-2)).toEqual(["lap, large end", "lap, small end"]);
    const words = JSON.stringify(["close", "tack", "re-round"].map((id) => step(planOn(lapped).steps, id)));
    expect(words).not.toMatch(/weld gap|feeler|flush|meet|gap left|gap too much/);
    expect(textOf(cone, "close")).not.toMatch(/\blap\b/);
  });

  it("stands nearer by the lap than a butt seam while it is open, and is read back so", () => {
    for (const closed of [0.5, 0.7, 0.8]) {
      const nearer = lap * Math.cos(Math.PI * (1 - closed));
      const gapMm = gapAt(lapped)(closed);
      expect(gapMm).toBeCloseTo(gapAt(cone)(closed) - nearer, 9);
      expect(closedOfGap(lapped, lapped.cone!, { gapMm, leadMm })).toBeCloseTo(closed, 9);
    }
  });

  it("is another part to trials than a butt one", () => {
    expect(trialFit(lapped, machine).shape).not.toBe(trialFit(cone, machine).shape);
  });
});
