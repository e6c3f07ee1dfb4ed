import { describe, expect, it } from "vitest";
import { canBeSet } from "../../src/forming/canBeSet.ts";
import type { Forming } from "../../src/forming/answer.ts";
import { formingOf } from "../../src/forming/forming.ts";
import type { PlateRoll } from "../../src/forming/machine.ts";
import { rollSettings } from "../../src/forming/rollSettings.ts";
import { sayIn } from "../../src/forming/say.ts";
import { coneCase, reducer, roll, shop } from "./cases.ts";

const slide = { origin: [230, -200] as [number, number], angle: 60, travel: 300, greatestTilt: 8 };
const rolls = { topDiameter: 200, pinchDiameter: 170, bendingDiameter: 180 };
/** So low at its origin that no bearing of this cone comes to stand below it. */
const good = roll({
  coneAttachment: { range: [0, 300] },
  slide: { ...slide, origin: [230, -220] },
  bearings: [140, 160],
  rolls,
});
const item = () => coneCase(reducer);

const on = (more: Partial<PlateRoll>): Forming => formingOf(item(), shop([{ ...good, ...more }]));
const asked = ({ machines }: Forming) => machines[0]!.checks.find(({ id }) => id === "roll-settings");
const settingsOn = (more: Partial<PlateRoll>) => {
  const answer = rollSettings({ item: item(), roll: { ...good, ...more }, say: sayIn("mm") });
  if (answer.kind === "none") throw new Error(answer.why);
  return answer.settings.zones[0]!.passes;
};
const step = ({ plans }: Forming, id: string) => plans[0]!.steps.find((one) => one.id === id)!;

describe("the settings among a roll's checks", () => {
  it("are not asked where nothing stands in the way: the plan has them", () => {
    const forming = on({});
    expect(asked(forming)).toBeUndefined();
    expect(forming.plans).toHaveLength(1);
  });

  it("refuse a part whose flat blank ends before the bending roll", () => {
    // Wide and small: its large edge lies 176 from the apex, and the bending roll 230 or so from the pinch.
    const cap = coneCase({ largeRadiusMm: 170, smallRadiusMm: 140, heightMm: 8, thicknessMm: 2 });
    const check = canBeSet({ item: cap, roll: good, say: sayIn("mm") });
    expect(check).toMatchObject({
      verdict: "fail",
      advice: expect.stringMatching(/does not reach the bending roll, 2\d\d(\.\d)? mm away/) as string,
    });
  });

  it("refuse a part whose plate itself would need the bending roll inside the pinch roll, and say by how much", () => {
    const wide = { ...rolls, pinchDiameter: 300 };
    const clear = Math.min(...settingsOn({ rolls: wide }).map(({ pinchClearMm }) => pinchClearMm!));
    expect(clear).toBeLessThan(0);
    const forming = on({ rolls: wide });
    expect(asked(forming)).toMatchObject({
      verdict: "fail",
      basis: "derived here",
      advice: expect.stringMatching(
        /run into the pinch roll by [\d.]+ mm; measure the rolls and the slide first.*another machine/,
      ) as string,
    });
    expect(forming.machine).toBeNull();
    // What cannot be set is on no sheet.
    expect(forming.plans).toEqual([]);
  });

  it("find the pinch roll on the way up, where a tight bend takes the bending roll past it", () => {
    // From 150 mm across at 75° the centres come nearest at 150·sin 75° = 144.9 mm, after a raise of 38.8 mm.
    const past: PlateRoll = {
      ...good,
      rolls: { topDiameter: 100, pinchDiameter: 148, bendingDiameter: 148 },
      slide: { origin: [150, -(50 + 6 + 74)], angle: 75, travel: 400 },
    };
    const tight = coneCase({ largeRadiusMm: 110, smallRadiusMm: 110, heightMm: 300, thicknessMm: 6 });
    const answer = rollSettings({ item: tight, roll: past, say: sayIn("mm") });
    if (answer.kind === "none") throw new Error(answer.why);
    const last = answer.settings.zones[0]!.passes.at(-1)!;
    const nearest = (75 * Math.PI) / 180;
    expect(last.start!.middleMm).toBeGreaterThan(150 * Math.cos(nearest));
    expect(last.pinchClearMm).toBeCloseTo(150 * Math.sin(nearest) - 148, 9);
    expect(last.problems).toMatchObject([{ id: "pinch", stops: "part" }]);
  });

  it("refuse a part that even the start does not reach, and ask for care where the high setting alone is beyond", () => {
    const upMm = (220 - 196) / Math.sin(Math.PI / 3);
    const { small } = settingsOn({}).at(-1)!;
    const upTo = (raiseMm: number) => ({ slide: { ...good.slide!, travel: upMm + raiseMm } });
    const between = (small.bestMm! + small.highMm!) / 2;
    expect(asked(on(upTo(small.bestMm! - 1)))).toMatchObject({
      verdict: "fail",
      advice: expect.stringContaining("out of reach of the slide") as string,
    });
    expect(asked(on(upTo(between)))).toMatchObject({
      verdict: "caution",
      advice: expect.stringContaining("hardly within reach of the slide; ask the maker") as string,
    });
  });

  it("refuse where the slide never comes round to such a bend", () => {
    const low = { slide: { origin: [525, -200] as [number, number], angle: 40, travel: 55 } };
    expect(asked(on(low))).toMatchObject({ verdict: "fail" });
    expect(on(low).plans).toEqual([]);
  });

  it("ask for care where the tilt alone cannot be set, and name no number to set then", () => {
    const forming = on({ slide: { ...good.slide!, greatestTilt: 1 } });
    expect(asked(forming)).toMatchObject({
      verdict: "caution",
      advice: expect.stringMatching(/greatest, 1°: make two courses/) as string,
    });
    for (const id of ["first-raise", "second-raise"]) {
      const { text, figures, toNote, cautions } = step(forming, id);
      expect(text, id).not.toMatch(/\d mm at the (?:large|small) edge/);
      expect(figures.filter(({ label }) => /start|bearing/.test(label))).toEqual([]);
      expect(toNote.length).toBeGreaterThan(0);
      for (const box of toNote) expect(box).not.toHaveProperty("planned");
      expect(cautions.join(" ")).toContain("make two courses");
    }
    expect(step(forming, "zero").text).not.toMatch(/tilt \([\d.]+°/);
    // The same sheet where the tilt can be set has them.
    expect(step(on({}), "first-raise").text).toMatch(/\d mm at the large edge/);
    expect(step(on({}), "first-raise").toNote[0]).toHaveProperty("planned");
  });

  it("ask for care where nobody says how low the slide goes, and believe what the shop says", () => {
    const higher = { ...slide, origin: [230, -200] as [number, number] };
    const low = asked(on({ slide: higher }))!;
    expect(low.verdict).toBe("caution");
    const [, by] = /stand ([\d.]+) mm below the origin of the slide: find out/.exec(low.advice)!;
    const withRoom = (below: number) => on({ slide: { ...higher, below } });
    expect(asked(withRoom(Number(by) + 0.1))).toBeUndefined();
    const short = withRoom(Number(by) - 2);
    expect(asked(short)).toMatchObject({
      verdict: "caution",
      advice: expect.stringMatching(
        /2(?:\.0\d)? mm below the lower end of the slide: set less tilt/,
      ) as string,
    });
    expect(step(short, "second-raise").toNote[0]).not.toHaveProperty("planned");
    // Where it has to be found out the number is there to be tried.
    expect(step(on({ slide: higher }), "second-raise").toNote[0]).toHaveProperty("planned");
  });

  it("say so where the bending roll does not stand beside the pinch", () => {
    const thin = coneCase({ ...reducer, thicknessMm: 3 });
    const under = { ...good, slide: { origin: [5, -260] as [number, number], angle: 60, travel: 300 } };
    const forming = formingOf(thin, shop([under]));
    expect(asked(forming)).toMatchObject({
      verdict: "caution",
      advice: expect.stringContaining("does not stand beside the pinch") as string,
    });
    expect(forming.plans[0]!.noSettings).toMatch(/does not stand beside/);
  });
});
