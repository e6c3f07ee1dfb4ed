import { describe, expect, it } from "vitest";
import { closureTable } from "../../src/forming/closure.ts";
import { formingOf } from "../../src/forming/forming.ts";
import { sayIn } from "../../src/forming/say.ts";
import { trialModel } from "../../src/forming/trialModel.ts";
import { correctTrials } from "../../src/forming/trials.ts";
import type { TrialSeen } from "../../src/forming/trialSeen.ts";
import { byHandRows } from "../../src/site/forming/byHandWords.ts";
import { coneCase, coneless, reducer, roll, shop } from "./cases.ts";

const say = sayIn("mm");
const machine = roll({
  slide: { origin: [230, -200], angle: 60, travel: 300 },
  bearings: [140, 160],
});
const item = coneCase(reducer);
const stepsAfter = (seen?: readonly TrialSeen[], name = machine.name, of = item) =>
  formingOf(of, shop([machine]), seen && { machine: name, seen }).plans[0]!.steps;
const step = (steps: ReturnType<typeof stepsAfter>, id: string) => steps.find((one) => one.id === id)!;

function correction(seen: readonly TrialSeen[], of = item) {
  const answer = correctTrials({ item: of, roll: machine, say }, seen);
  if (answer.kind === "none") throw new Error(answer.why);
  return answer.correction;
}

/** Boxes hold tenths of a millimetre: a roll is set no closer. */
const tenth = (mm: number) => Math.round(mm * 10) / 10;
const upwards = (a: number, b: number) => a - b;

describe("a sheet with trials kept beside its part", () => {
  const seen = [{ settingMm: 30, gapMm: 1500 }];

  it("starts from what they say, in its words, its figures and its boxes", () => {
    const { set, nextMm } = correction(seen);
    const raise = step(stepsAfter(seen), "first-raise");
    expect(raise.text).toMatch(
      /^By this part's own trials, which overrule the plan's start[^:]* and were made on an earlier blank: raise to .* at the large edge and .* at the small edge .*\. Last set 30 mm, came out gap 1500 mm: 58 % closed, wanted 66 % to 80 %\. Go in steps of 5 mm or less.* Set what the boxes here have for the scales\.$/,
    );
    // The gap to expect is the one that lies in the middle of the window, where the setting aims.
    const expected = Number(/expect a gap near (\d+) mm at the large end/.exec(raise.text)![1]);
    expect(correction([...seen, { settingMm: nextMm!, gapMm: expected }])).toMatchObject({ kind: "done" });
    expect(raise.toNote.map(({ planned }) => planned!).sort(upwards)).toEqual(
      [set!.largeMm, set!.smallBearingMm!, set!.largeBearingMm!].map(tenth).sort(upwards),
    );
    expect(raise.figures[0]).toMatchObject({
      label: "by this part's own trials, large edge",
      value: nextMm,
    });
    // The rest of the sheet is as it was.
    const others = (steps: ReturnType<typeof stepsAfter>) => steps.filter(({ id }) => id !== "first-raise");
    expect(others(stepsAfter(seen))).toEqual(others(stepsAfter()));
  });

  it("keeps the setting of a trial in the window, and says where the second pass starts", () => {
    const { window } = correction(seen);
    const done = [{ settingMm: 41, closed: window.to - 0.01 }];
    const raise = step(stepsAfter(done), "first-raise");
    expect(raise.text).toMatch(
      /^By this part's own trials, which overrule the plan's start[^:]* and were made on an earlier blank: raise to 41 mm at the large edge .*; expect a gap near \d+ mm at the large end\. Last set 41 mm, came out closed 79 %: 79 % closed, within 66 % to 80 %\./,
    );
    // The next blank's first pass is not done, and its second pass has a step of its own.
    expect(raise.text).not.toMatch(/pass is done|[Ss]econd pass|this blank/);
    expect(raise.toNote.map(({ planned }) => planned)).toContain(41);
    const second = step(stepsAfter(done), "second-raise");
    const { secondPass } = correction(done);
    expect(second.text).toMatch(
      /^By this part's own trials, which overrule the plan's start.* at the large edge.*\. Roll from the seam edge marked second, and/,
    );
    expect(second.toNote.map(({ planned }) => planned)).toContain(tenth(secondPass!.largeMm));
    expect(second.toNote.map(({ planned }) => planned)).toContain(tenth(secondPass!.smallBearingMm!));
    expect(step(stepsAfter(seen), "second-raise")).toEqual(step(stepsAfter(), "second-raise"));
    // Nobody carries over by hand, on top, what the trials have in them already.
    expect(byHandRows(step(stepsAfter(), "second-raise"), "mm").length).toBeGreaterThan(1);
    expect(byHandRows(second, "mm")).toEqual([]);
    expect(second.figures.some(({ label }) => label.startsWith("by the model"))).toBe(false);
    for (const box of second.toNote) expect(box).not.toHaveProperty("carried");
  });

  it("names no setting where something is to be looked at first", () => {
    const answer = trialModel({ item, roll: machine, say });
    if (answer.kind === "none") throw new Error(answer.why);
    const { highMm } = answer.model.aim;
    const flat = step(stepsAfter([{ settingMm: 1.1 * highMm, flat: true }]), "first-raise");
    expect(flat.text).toMatch(/sprang back flat, and the plan's own high.*Do not raise further.*stands at 0/);
    expect(flat.figures.some(({ label }) => label.startsWith("by this part's own trials"))).toBe(false);
    const reading = step(stepsAfter([{ settingMm: 200, closed: 0.5 }]), "first-raise");
    expect(reading.text).toMatch(
      /Is that the scale's reading, 200 mm\?.*take the reading at 0 off.*no next setting is named/,
    );
    expect(reading.toNote.filter((box) => "planned" in box)).toEqual([]);
    const wrong = step(stepsAfter([{ settingMm: 452, flat: true }]), "first-raise");
    expect(wrong.text).toMatch(/No setting by them: a setting of 452 mm lies beyond the slide/);
    const past = step(stepsAfter([{ settingMm: 40, gapMm: -20 }]), "first-raise");
    expect(past.text).toMatch(
      /: raise to .*overlap 20 mm: .*past the cap of 85 %: do not roll on with that blank, set it aside\. Its edges/,
    );
  });

  it("leaves both raises empty where trials contradict each other, and names nothing for either pass", () => {
    const { window } = correction(seen);
    const wrong = [
      { settingMm: 41, closed: window.to - 0.01 },
      { settingMm: 45, closed: window.from - 0.15 },
    ];
    expect(correction(wrong)).toMatchObject({ kind: "check", set: null, secondPass: null });
    for (const id of ["first-raise", "second-raise"]) {
      const { toNote } = step(stepsAfter(wrong), id);
      expect(toNote).toHaveLength(3);
      expect(toNote.filter((box) => "planned" in box)).toEqual([]);
    }
    expect(step(stepsAfter(wrong), "second-raise").text).toMatch(/no second raise is safe to name/);
  });

  it("gives a blank that is past the window but not past the cap its second pass", () => {
    const { window } = correction(seen);
    const kept = [{ settingMm: 41, closed: (window.to + window.cap) / 2 }];
    const { secondPass, advice } = correction(kept);
    expect(advice).toMatch(/it is kept for the second\. Second pass: start at .* Set .* for the next blank/);
    const { toNote } = step(stepsAfter(kept), "second-raise");
    expect(toNote.map(({ planned }) => planned)).toContain(tenth(secondPass!.largeMm));
  });

  it("takes no notice of trials on another machine, nor of none", () => {
    expect(stepsAfter(seen, "Another")).toEqual(stepsAfter());
    expect(stepsAfter([])).toEqual(stepsAfter());
  });

  it("sets a pipe by one raise, with no word of a tilt", () => {
    const pipe = coneCase({ ...reducer, smallRadiusMm: 450 });
    const raise = step(stepsAfter([{ settingMm: 30, gapMm: 1500 }], machine.name, pipe), "first-raise");
    expect(raise.toNote).toEqual([
      {
        label: "raise, set",
        unit: "mm",
        planned: tenth(correction([{ settingMm: 30, gapMm: 1500 }], pipe).nextMm!),
      },
    ]);
    expect(correction([{ settingMm: 30, gapMm: 1500 }], pipe).advice).not.toMatch(/tilt|small edge/);
  });
});

describe("the table to correct by without a screen", () => {
  const rows = (of = item) => step(stepsAfter(undefined, machine.name, of), "first-correct").byHand!;

  it("says for each range what the correction says for its narrowest gap after one trial at the plan's first setting", () => {
    for (const units of ["mm", "in"] as const) {
      const of = coneCase(reducer, { units });
      const { passes } = formingOf(of, shop([machine])).plans[0]!.settings!.zones[0]!;
      const settingMm = passes[0]!.start!.largeMm;
      const next = (seen: { readonly gapMm: number } | { readonly flat: true }) =>
        correction([{ settingMm, ...seen }], of).nextMm! - settingMm;
      const [over, ...ranges] = rows(of);
      expect(ranges.length).toBeGreaterThanOrEqual(3);
      const highMm = passes.find(({ id }) => id === "end")!.large.highMm!;
      const least = Math.min(next({ flat: true }), next({ gapMm: over!.toMm! }), highMm - settingMm);
      expect(over!.moreMm).toBeCloseTo(least, 6);
      for (const { fromMm, toMm, moreMm } of ranges.filter((one) => one.moreMm > 0)) {
        // A hair wider than the window, which itself is left; never more than a wider gap gets.
        const wanted = next({ gapMm: toMm! + 1e-7 });
        expect(moreMm, `${toMm}`).toBeCloseTo(Math.min(wanted, over!.moreMm), 5);
        // Found on a tape.
        expect((fromMm! / (units === "mm" ? 10 : 12.7)) % 1).toBeCloseTo(0, 9);
      }
    }
  });

  it("leaves no gap without an answer, from flat to past the cap, and leaves what lies in the window", () => {
    const all = rows();
    expect(all[0]!.fromMm).toBeNull();
    expect(all.at(-1)!.toMm).toBeNull();
    all.forEach(({ fromMm, toMm }, i) => {
      if (i > 0) expect(fromMm).toBe(all[i - 1]!.toMm);
      if (fromMm !== null && toMm !== null) expect(toMm).toBeLessThan(fromMm);
    });
    const raises = all.slice(1).map(({ moreMm }) => moreMm);
    expect(raises).toEqual(raises.toSorted((a, b) => b - a));
    const { figures } = step(stepsAfter(), "first-measure");
    const figure = (words: RegExp) => figures.find(({ label }) => words.test(label))!.value;
    const right = all.find(({ moreMm }) => moreMm === 0)!;
    expect(right.fromMm).toBeCloseTo(figure(/large end, widest/), 6);
    expect(right.toMm).toBeCloseTo(figure(/large end, narrowest/), 6);
    // What is closed too far is corrected for as if it stood at the cap.
    const { settings } = formingOf(item, shop([machine])).plans[0]!;
    const settingMm = settings!.zones[0]!.passes[0]!.start!.largeMm;
    const { nextMm } = correction([{ settingMm, gapMm: figure(/large end, never below/) }]);
    expect(all.at(-1)!.moreMm).toBeCloseTo(nextMm! - settingMm, 6);
    expect(all.at(-1)!.moreMm).toBeLessThan(0);
  });

  it("is not there where nothing says what to correct by", () => {
    expect(step(stepsAfter(undefined, machine.name, coneless(item)), "first-correct")).toBeUndefined();
  });

  it("goes with what is done with a blank past the cap", () => {
    const { text } = step(stepsAfter(), "first-correct");
    expect(text).toMatch(/Below the “never below”: do not roll on.*set it aside: the foreman decides/);
  });
});

describe("what is carried to the second pass and to the closing without a screen", () => {
  const { settings } = formingOf(item, shop([machine])).plans[0]!;
  const planned = settings!.zones[0]!.passes.find(({ id }) => id === "finished")!.start!;
  const models = step(stepsAfter(), "second-raise")
    .figures.filter(({ label }) => label.startsWith("by the model for a gap of"))
    .map(({ label, value }) => ({ gapMm: Number(/gap of ([\d.]+)/.exec(label)![1]), value }));

  it("is where the correction by one trial starts the second pass, at both ends of the window, half way and at the cap", () => {
    // The last column is the cap: so far a blank is kept for the second pass.
    expect(models.length).toBe(4);
    const never = step(stepsAfter(), "first-measure").figures.find(({ label }) =>
      label.includes("large end, never below"),
    )!;
    expect(models[3]!.gapMm).toBeCloseTo(never.value, 0);
    for (const { gapMm, value } of models)
      for (const over of [-1.5, 0]) {
        const { secondPass } = correction([{ settingMm: value + over, gapMm }]);
        // The gap on the sheet is rounded to 0.1 mm or so, and the ends of the window are a hair's breadth.
        if (!secondPass) continue;
        expect(Math.abs(secondPass.largeMm - planned.largeMm - over)).toBeLessThan(0.01);
      }
    const { secondPass } = correction([{ settingMm: models[1]!.value - 1.5, gapMm: models[1]!.gapMm }]);
    expect(secondPass!.largeMm).toBeCloseTo(planned.largeMm - 1.5, 2);
  });

  it("asks in the closing for what the model asks between 95 % and the whole of the turn", () => {
    const close = step(stepsAfter(), "close");
    const { value } = close.figures.find(({ label }) => label.startsWith("raise for every 10 mm"))!;
    expect(close.text).toContain(`${say.length(value)} for every 10 mm that it falls further short`);
    // The chord from the end of the first pass's window to the closed cone, by the plan's own table and settings.
    const { passes } = settings!.zones[0]!;
    const end = passes.find(({ id }) => id === "end")!;
    const closure = closureTable(item, 0);
    const gapMm = (closed: number) =>
      closure.find((row) => Math.abs(row.closed - closed) < 1e-9)!.large!.insideGapMm;
    const best = (id: string) => passes.find((pass) => pass.id === id)!.middle.bestMm!;
    const chord = (10 * (best("finished") - best("end"))) / (gapMm(end.closed!) - gapMm(1));
    expect(value / chord).toBeGreaterThan(0.9);
    expect(value / chord).toBeLessThan(1.3);
  });
});

it("has on the sheet whatever the correction warns of, beyond the plan's own high too", () => {
  const seen: TrialSeen[] = [{ settingMm: 50, gapMm: 1500 }];
  const [warning] = /That is above the plan's own high.*$/.exec(correction(seen).advice)!;
  expect(step(stepsAfter(seen), "first-raise").text).toContain(warning);
  // Where the second pass goes lower than nought its own step says so.
  const far = { ...machine, bearings: [140, 3000] as [number, number] };
  const done = { machine: far.name, seen: [{ settingMm: 41, closed: 0.75 }] };
  const { steps } = formingOf(item, shop([far]), done).plans[0]!;
  for (const id of ["first-raise", "second-raise"])
    expect(step(steps, id).text.match(/ Below 0: a bearing at -/g)).toHaveLength(1);
  // As low as the shop says that the slide goes, in both steps alike.
  const lower = { ...far, slide: { ...far.slide!, below: 60 } };
  const sheet = formingOf(item, shop([lower]), done).plans[0]!.steps;
  const endIn = (of: typeof sheet, id: string) =>
    Number(/own lower end lies at (-?[\d.]+) mm/.exec(step(of, id).text)![1]);
  for (const id of ["first-raise", "second-raise"])
    expect(endIn(sheet, id)).toBeCloseTo(endIn(steps, id) - 60, 6);
});
