import { expect, it } from "vitest";
import { formingOf } from "../../src/forming/forming.ts";
import { passPoints } from "../../src/forming/passPoints.ts";
import { rollSetting, sectionOf } from "../../src/forming/rollSetting.ts";
import { plateOf } from "../../src/forming/springback.ts";
import { coneCase, reducer, roll, shop } from "./cases.ts";

const machine = roll({
  slide: { origin: [230, -200], angle: 60, travel: 300 },
  bearings: [140, 160],
  coneAttachment: { range: [60, 60] },
});
const planOf = (smallRadiusMm: number, pieces = 1) =>
  formingOf(coneCase({ ...reducer, smallRadiusMm }, { pieces }), shop([machine])).plans[0]!;
const stepOf = (plan: ReturnType<typeof planOf>, id: string) => plan.steps.find((one) => one.id === id)!;

/** Share of the bend at each thousandth of an even raise up to this share of it, sought by halving. */
function bendsOf(share: number): number[] {
  const item = coneCase({ ...reducer, smallRadiusMm: reducer.largeRadiusMm });
  const bestMm = (of: number) => {
    const set = rollSetting(sectionOf(machine)!, plateOf(item), reducer.largeRadiusMm / of);
    return set.kind === "setting" ? set.bestMm : NaN;
  };
  return Array.from({ length: 1001 }, (_, i) => {
    let [low, high] = [0, share];
    for (let turn = 0; turn < 40; turn++) {
      const middle = (low + high) / 2;
      if (bestMm(middle) < (bestMm(share) * i) / 1000) low = middle;
      else high = middle;
    }
    return low / share;
  });
}

/** A bend that grows as an even raise makes it after a straight lead, laid down in short straight steps: how far its ends stand apart. */
function laidDown(
  bends: readonly number[],
  { radiusMm, wholeMm, leadMm, growsMm }: Record<"radiusMm" | "wholeMm" | "leadMm" | "growsMm", number>,
): number {
  let [x, y, heading] = [0, 0, 0];
  const steps = 200_000;
  const step = wholeMm / steps;
  for (let i = 0; i < steps; i++) {
    const left = wholeMm - (i + 0.5) * step;
    const raised = left < leadMm ? 0 : Math.min(1, growsMm === 0 ? 1 : (left - leadMm) / growsMm);
    const bend = bends[Math.round(1000 * raised)]! / radiusMm;
    x += step * Math.cos(heading + (bend * step) / 2);
    y += step * Math.sin(heading + (bend * step) / 2);
    heading += bend * step;
  }
  return Math.hypot(x, y);
}

it("tells by how much the gap is wider for the way that the chalk has gone, as laid down step by step", () => {
  const plan = planOf(reducer.largeRadiusMm);
  const { text, figures } = stepOf(plan, "first-measure");
  const { value } = figures.find(({ label }) => label.startsWith("gap wider for every 100 mm"))!;
  const item = coneCase({ ...reducer, smallRadiusMm: reducer.largeRadiusMm });
  const { closed, share } = passPoints(item).find(({ id }) => id === "end")!;
  const leadMm = plan.settings!.flat.acrossMm;
  const [radiusMm, wholeMm] = [reducer.largeRadiusMm / closed!, 2 * Math.PI * reducer.largeRadiusMm];
  const bends = bendsOf(share);
  // It lags behind the raise, which bends nothing at first.
  expect(bends[100]).toBeLessThan(0.01);
  const laid = (growsMm: number) => laidDown(bends, { radiusMm, wholeMm, leadMm, growsMm });
  const wider = (growsMm: number) => laid(growsMm) - laid(0);
  // Told in whole millimetres.
  expect(Math.abs(value - (100 * wider(leadMm / 2)) / (leadMm / 2))).toBeLessThanOrEqual(0.51);
  expect(text).toContain(`less ${value} mm for every 100 mm that the chalk had gone: right is`);
  // Nearly as much for any way that it may go.
  expect((100 * wider(leadMm)) / leadMm / value).toBeGreaterThan(0.8);
  expect((100 * wider(leadMm)) / leadMm / value).toBeLessThan(1.25);
});

it("tells it for both ends of a cone, and notes the gap without it", () => {
  const { text, toNote } = stepOf(planOf(reducer.smallRadiusMm), "first-measure");
  expect(text).toMatch(/less [\d.]+ mm \(small end [\d.]+ mm\) for every 100 mm that the chalk had gone/);
  expect(toNote[0]!.label).toBe("gap less chalk, large end");
});

it.each([1, 2])(
  "leaves the right end of %i pieces where it stands when only the other is raised",
  (pieces) => {
    const plan = planOf(reducer.smallRadiusMm, pieces);
    const { text } = stepOf(plan, "close");
    const said =
      /small end open: fixed end 1 part up, drop end ([\d.]+) down; large end open: drop end 1 up, fixed end ([\d.]+) down/.exec(
        text,
      )!;
    const [dropDown, fixedDown] = [Number(said[1]), Number(said[2])];
    // Along the roll from its fixed end, at which the small edge stands on the stop in the second pass.
    const [drop, fixed] = machine.bearings!;
    const span = machine.workingWidth + drop + fixed;
    const raised = (mm: number, atFixed: number, atDrop: number) =>
      atFixed + ((atDrop - atFixed) * (mm + fixed)) / span;
    const { stopMm, zones } = plan.settings!;
    const [small, large] = [stopMm!, stopMm! + zones[0]!.slantMm];
    expect(Math.abs(raised(large, 1, -dropDown))).toBeLessThan(0.03);
    expect(raised(small, 1, -dropDown)).toBeGreaterThan(0.1);
    expect(Math.abs(raised(small, -fixedDown, 1))).toBeLessThan(0.01);
    expect(raised(large, -fixedDown, 1)).toBeGreaterThan(0.1);
  },
);
