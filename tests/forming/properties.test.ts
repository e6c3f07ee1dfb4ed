import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Forming } from "../../src/forming/answer.ts";
import type { FormingCase } from "../../src/forming/case.ts";
import { type Check, type Verdict, worst } from "../../src/forming/check.ts";
import { formingOf } from "../../src/forming/forming.ts";
import type { PlateRoll } from "../../src/forming/machine.ts";
import { ownChecks } from "../../src/forming/ownChecks.ts";
import {
  anyBrake,
  anyCase,
  anyCone,
  anyRoll,
  anyShop,
  coneCase,
  reducer,
  roll,
  RUNS,
  shop,
} from "./cases.ts";
import { even } from "../even.ts";

const SEVERITY: Record<Verdict, number> = { pass: 0, caution: 1, fail: 2 };
const idsOf = (checks: readonly Check[]) => checks.map(({ id }) => id);

/** Every number in an answer, wherever it stands. */
function numbersOf(value: unknown): number[] {
  if (typeof value === "number") return [value];
  return value !== null && typeof value === "object" ? Object.values(value).flatMap(numbersOf) : [];
}

describe("whatever part and shop", () => {
  it("every number is one, and the answer survives being written as JSON", () => {
    fc.assert(
      fc.property(anyCase, fc.option(anyShop, { nil: undefined }), (item, place) => {
        const forming = formingOf(item, place);
        expect(numbersOf(forming).every(Number.isFinite)).toBe(true);
        expect(JSON.parse(JSON.stringify(forming))).toEqual(forming);
      }),
      RUNS,
    );
  });

  it("margin, value, limit and verdict agree", () => {
    fc.assert(
      fc.property(anyCase, anyShop, (item, place) => {
        const forming = formingOf(item, place);
        for (const check of [...forming.checks, ...forming.machines.flatMap(({ checks }) => checks)]) {
          const { value, limit, sense, margin, verdict } = check;
          if (limit === null) {
            expect(margin).toBeNull();
            continue;
          }
          expect(margin).not.toBeNull();
          if (verdict === "pass") expect(margin!).toBeGreaterThanOrEqual(0);
          if (verdict === "fail") expect(margin!).toBeLessThan(0);
          if (margin! < 0) expect(sense === "at most" ? value! > limit : value! < limit).toBe(true);
          if (margin! > 0) expect(sense === "at most" ? value! < limit : value! > limit).toBe(true);
        }
      }),
      RUNS,
    );
  });

  it("says in one sentence what to do, with a basis and a rule, once a question", () => {
    fc.assert(
      fc.property(anyCase, anyShop, (item, place) => {
        const { checks } = formingOf(item, place);
        expect(new Set(idsOf(checks)).size).toBe(checks.length);
        for (const check of checks) {
          expect(check.advice).toMatch(/^[^\n]{20,}\.$/);
          expect(check.advice).not.toMatch(/NaN|undefined|Infinity|null|\. [A-Z]/);
          expect(check.rule.length).toBeGreaterThan(10);
          expect(check.basis).toMatch(/^(common practice, no source|derived here|[a-z0-9]+(-[a-z0-9]+)+)$/);
        }
      }),
      RUNS,
    );
  });

  it("the verdict is the worst of the checks, and the machine takes it or none is named", () => {
    fc.assert(
      fc.property(anyCase, anyShop, (item, place) => {
        const forming = formingOf(item, place);
        expect(forming.verdict).toBe(worst(forming.checks.map(({ verdict }) => verdict)));
        const asked = (checks: Forming["checks"]) => worst(checks.map(({ verdict }) => verdict));
        const takes = forming.machines.filter(({ checks }) => asked(checks) !== "fail");
        expect(forming.machine === null).toBe(takes.length === 0);
        // One word for a part on a machine: the machine's own answer and the part's own.
        for (const { verdict, checks } of forming.machines)
          expect(verdict).toBe(asked([...ownChecks(forming), ...checks]));
      }),
      RUNS,
    );
  });
});

describe("thicker plate never improves a verdict", () => {
  /** The same part, its middle surface kept, in thicker plate. */
  const thicker = (item: FormingCase, by: number): FormingCase => ({
    ...item,
    thicknessMm: item.thicknessMm * by,
    insideDiameterMm: {
      large: Math.max(0, item.insideDiameterMm.large - item.thicknessMm * (by - 1)),
      small: Math.max(0, item.insideDiameterMm.small - item.thicknessMm * (by - 1)),
    },
    blanks: item.blanks.map((blank) => ({ ...blank, massKg: blank.massKg * by })),
  });
  const factor = even(1, 4);

  it("on any machine, nor of the part alone", () => {
    fc.assert(
      fc.property(anyCase, fc.oneof(anyRoll, anyBrake), factor, (item, machine, by) => {
        const [thin, thick] = [item, thicker(item, by)].map((one) => formingOf(one, shop([machine])));
        expect(SEVERITY[thick!.machines[0]!.verdict]).toBeGreaterThanOrEqual(
          SEVERITY[thin!.machines[0]!.verdict],
        );
        expect(SEVERITY[thick!.verdict]).toBeGreaterThanOrEqual(SEVERITY[thin!.verdict]);
      }),
      { ...RUNS, numRuns: 1000 },
    );
  });

  it("in any single check of a roll", () => {
    fc.assert(
      fc.property(anyCone, anyRoll, factor, (item, machine, by) => {
        const [thin, thick] = [item, thicker(item, by)].map((one) => formingOf(one, shop([machine])).checks);
        expect(idsOf(thick!)).toEqual(idsOf(thin!));
        for (const [i, check] of thick!.entries())
          expect(SEVERITY[check.verdict]).toBeGreaterThanOrEqual(SEVERITY[thin![i]!.verdict]);
      }),
      RUNS,
    );
  });

  it("and does go from one verdict to the next on the way", () => {
    const verdicts = [4, 8, 16].map(
      (thicknessMm) => formingOf(coneCase({ ...reducer, thicknessMm }), shop([roll()])).machines[0]!.verdict,
    );
    expect(new Set(verdicts).size).toBeGreaterThan(1);
  });
});

describe("part and roll grown together", () => {
  const grown = (item: FormingCase, k: number): FormingCase => ({
    ...item,
    thicknessMm: k * item.thicknessMm,
    slantMm: { longest: k * item.slantMm.longest, shortest: k * item.slantMm.shortest },
    rimsMm: { large: k * item.rimsMm.large, small: k * item.rimsMm.small },
    insideDiameterMm: { large: k * item.insideDiameterMm.large, small: k * item.insideDiameterMm.small },
    tightestRadiusMm: item.tightestRadiusMm && {
      large: k * item.tightestRadiusMm.large,
      small: k * item.tightestRadiusMm.small,
    },
  });
  const grownRoll = (one: PlateRoll, k: number): PlateRoll => ({
    ...one,
    workingWidth: k * one.workingWidth,
    rating: { ...one.rating, thickness: k * one.rating.thickness },
    ...(one.coneRating && {
      coneRating: { thickness: k * one.coneRating.thickness, slant: k * one.coneRating.slant },
    }),
    rolls: {
      topDiameter: k * one.rolls.topDiameter,
      ...(one.rolls.bendingDiameter !== undefined && { bendingDiameter: k * one.rolls.bendingDiameter }),
    },
    ...(one.coneAttachment && {
      coneAttachment: {
        ...one.coneAttachment,
        ...(one.coneAttachment.range && {
          range: one.coneAttachment.range.map((end) => k * end) as [number, number],
        }),
        ...(one.coneAttachment.clearRoom !== undefined && { clearRoom: k * one.coneAttachment.clearRoom }),
        ...(one.coneAttachment.clearRoomFixedEnd !== undefined && {
          clearRoomFixedEnd: k * one.coneAttachment.clearRoomFixedEnd,
        }),
      },
    }),
    ...(one.smallestDiameter !== undefined && { smallestDiameter: k * one.smallestDiameter }),
    ...(one.smallestRadius !== undefined && { smallestRadius: k * one.smallestRadius }),
  });

  it.each([0.5, 2, 4])("by %d keeps every verdict and margin", (k) => {
    const frustum = fc
      .record({
        small: even(50, 500),
        taper: even(1, 500),
        heightMm: even(50, 1500),
        thicknessMm: even(1, 15),
      })
      .map(({ small, taper, ...rest }) =>
        coneCase({ largeRadiusMm: small + taper, smallRadiusMm: small, ...rest }),
      );
    fc.assert(
      fc.property(frustum, anyRoll, (item, machine) => {
        const before = formingOf(item, shop([machine])).machines[0]!;
        const after = formingOf(grown(item, k), shop([grownRoll(machine, k)])).machines[0]!;
        expect(idsOf(after.checks)).toEqual(idsOf(before.checks));
        for (const [i, check] of after.checks.entries()) {
          expect(check.verdict).toBe(before.checks[i]!.verdict);
          expect(check.margin ?? 0).toBeCloseTo(before.checks[i]!.margin ?? 0, 9);
        }
      }),
      RUNS,
    );
  });
});
