import { describe, expect, it } from "vitest";
import { formingOf } from "../../src/forming/forming.ts";
import { sayIn } from "../../src/forming/say.ts";
import { correctTrials } from "../../src/forming/trials.ts";
import type { TrialSeen } from "../../src/forming/trialSeen.ts";
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
      /By this part's own trials.*: Last set 30 mm, came out gap 1500 mm\. Start at /,
    );
    expect(raise.brief).toMatch(
      /^By this part's own trials \(last set 30 mm, came out gap 1500 mm\): start at .* at the large edge, the rest in the boxes\./,
    );
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
    expect(raise.brief).toMatch(/: keep 41 mm at the large edge/);
    expect(raise.text).toMatch(/In the window: keep 41 mm at the large edge.* Second pass from /);
    expect(raise.toNote.map(({ planned }) => planned)).toContain(41);
    const second = step(stepsAfter(done), "second-raise");
    const { secondPass } = correction(done);
    expect(second.brief).toMatch(/By this part's own trials: .* at the large edge, the rest in the boxes/);
    expect(second.toNote.map(({ planned }) => planned)).toContain(tenth(secondPass!.largeMm));
    expect(second.toNote.map(({ planned }) => planned)).toContain(tenth(secondPass!.smallBearingMm!));
    expect(step(stepsAfter(seen), "second-raise")).toEqual(step(stepsAfter(), "second-raise"));
  });

  it("names no setting where something is to be looked at first", () => {
    const flat = step(stepsAfter([{ settingMm: 200, flat: true }]), "first-raise");
    expect(flat.brief).toMatch(/sprang back flat\): No set at the plan's own high.*look at 0/);
    expect(flat.figures.some(({ label }) => label.startsWith("by this part's own trials"))).toBe(false);
    const wrong = step(stepsAfter([{ settingMm: 452, flat: true }]), "first-raise");
    expect(wrong.brief).toMatch(/No setting by them: a setting of 452 mm lies beyond the slide/);
    const past = step(stepsAfter([{ settingMm: 40, gapMm: -20 }]), "first-raise");
    expect(past.brief).toMatch(/overlap 20 mm\): that blank is set aside; start the next at/);
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

  it("says for each gap what the correction says after one trial at the plan's first setting", () => {
    for (const units of ["mm", "in"] as const) {
      const of = coneCase(reducer, { units });
      const start = formingOf(of, shop([machine])).plans[0]!.settings!.zones[0]!.passes[0]!.start!;
      const settingMm = start.largeMm;
      expect(rows(of).length).toBeGreaterThanOrEqual(5);
      for (const { gapMm, moreMm } of rows(of)) {
        const seen: TrialSeen = gapMm === null ? { settingMm, flat: true } : { settingMm, gapMm };
        const { nextMm } = correction([seen], of);
        expect(moreMm, String(gapMm)).toBeCloseTo(nextMm! - settingMm, 6);
        // Found on a tape, but for the cap, which stands on the sheet.
        if (gapMm !== null && moreMm > 0)
          expect((gapMm / (units === "mm" ? 10 : 12.7)) % 1).toBeCloseTo(0, 9);
      }
    }
  });

  it("runs from the widest gap to the cap, the raise never growing as the gap narrows", () => {
    const [flat, ...gaps] = rows();
    expect(flat!.gapMm).toBeNull();
    gaps.forEach(({ gapMm, moreMm }, i) => {
      if (i === 0) return;
      expect(gapMm).toBeLessThan(gaps[i - 1]!.gapMm!);
      expect(moreMm).toBeLessThanOrEqual(gaps[i - 1]!.moreMm);
    });
    const cap = step(stepsAfter(), "first-measure").figures.find(({ label }) =>
      /large end, never below/.test(label),
    )!;
    expect(gaps.at(-1)!.gapMm).toBeCloseTo(cap.value, 6);
    expect(gaps.at(-1)!.moreMm).toBeLessThan(0);
  });

  it("is not there where nothing says what to correct by", () => {
    expect(step(stepsAfter(undefined, machine.name, coneless(item)), "first-correct")).toBeUndefined();
  });

  it("goes with what is done with a blank past the cap", () => {
    const { text, brief } = step(stepsAfter(), "first-correct");
    expect(text).toMatch(/Is it below the “never below”: stop: do not roll on.*set it aside/);
    expect(brief).toMatch(/Under “never below”: set aside/);
  });
});
