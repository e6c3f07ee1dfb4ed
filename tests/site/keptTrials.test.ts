import fc from "fast-check";
import { expect, it } from "vitest";
import type { AnySeen, AnyTold } from "../../src/forming/settleTrials.ts";
import { readTrials, seenOf } from "../../src/input/readTrials.ts";
import { keptIn, trialsYaml } from "../../src/site/trials/keptTrials.ts";
import { runs } from "../arbitraries.ts";
import { even } from "../even.ts";
import { tables } from "../input/files.ts";

const trial: fc.Arbitrary<AnyTold> = fc
  .record({
    kind: fc.constantFrom<Drawn["kind"]>("gap", "closed", "flat", "zone", "one end", "flat zone"),
    zone: fc.integer({ min: 1, max: 8 }),
    settingMm: even(0.1, 300),
    out: even(0, 1),
    set: fc.constantFrom("edge", "bearings", "scales"),
    dropMm: even(-20, 300),
    fixedMm: even(-20, 300),
  })
  .map(({ set, dropMm, fixedMm, ...one }): AnyTold => {
    const { settingMm, ...came } = outcome(one);
    const bearings = { dropMm, fixedMm, ...(set === "scales" && { dropAt0Mm: 150, fixedAt0Mm: 149.5 }) };
    return { ...came, settingMm, ...(set !== "edge" && { bearings }) };
  });

interface Drawn {
  readonly kind: "gap" | "closed" | "flat" | "zone" | "one end" | "flat zone";
  readonly zone: number;
  readonly settingMm: number;
  readonly out: number;
}
function outcome({ kind, zone, settingMm, out }: Drawn): AnySeen {
  if (kind === "gap") return { settingMm, gapMm: 3000 * out - 500 };
  if (kind === "zone") return { zone, settingMm, largeMm: 100 + 900 * out, smallMm: 60 + 400 * out };
  if (kind === "one end") return { zone, settingMm, largeMm: 100 + 900 * out };
  if (kind === "flat zone") return { zone, settingMm, flat: true };
  return kind === "closed" ? { settingMm, closed: 1.5 * out } : { settingMm, flat: true };
}
const list = fc.array(trial, { minLength: 1, maxLength: 6 });
const machine = fc.constantFrom("Big roll", 'Roll "7": # {x}', "Rôle Ø", "true", "- 3");

it("writes a file of trials that is read back as it was, in either unit and whatever the machine is called", () => {
  fc.assert(
    fc.property(list, fc.constantFrom("mm" as const, "in" as const), machine, (trials, units, name) => {
      const { value, problems } = readTrials(trialsYaml(trials, { units, machine: name }), {
        path: "a.trials.yaml",
        ...tables,
      });
      expect(problems).toEqual([]);
      expect(value!.machine).toBe(name);
      value!.trials.map(seenOf).forEach((read, i) => {
        for (const [key, written] of Object.entries(trials[i]!)) {
          // The raise is worked out anew from both bearings.
          if (key === "settingMm" && trials[i]!.bearings) continue;
          const back = (read as unknown as Record<string, unknown>)[key];
          // To a hundredth of a millimetre or a thousandth of an inch, and a tenth of a per cent.
          if (key === "bearings") {
            expect(Object.keys(back as object)).toEqual(Object.keys(written as object));
            for (const [name, mm] of Object.entries(written as Record<string, number>))
              expect(Math.abs((back as Record<string, number>)[name]! - mm)).toBeLessThan(0.013);
          } else if (typeof written === "number")
            expect(Math.abs((back as number) - written)).toBeLessThan(0.013);
          else expect(back).toBe(written);
        }
      });
    }),
    runs(200),
  );
});

it("takes from the browser what it kept there, and nothing else", () => {
  fc.assert(
    fc.property(list, (trials) => {
      expect(keptIn(JSON.stringify(trials))).toEqual(trials);
    }),
    runs(50),
  );
  for (const text of [
    "",
    "{}",
    "[1]",
    '[{"settingMm":"1","flat":true}]',
    '[{"settingMm":1}]',
    '[{"zone":1.5,"settingMm":1,"flat":true}]',
    '[{"zone":1,"settingMm":1}]',
    '[{"flat":true}]',
    '[{"settingMm":1,"bearings":{"dropMm":"1","fixedMm":2},"flat":true}]',
    '[{"settingMm":1,"tiltMm":"1","flat":true}]',
    "null",
  ])
    expect(keptIn(text), text).toBeUndefined();
  expect(keptIn(null)).toBeUndefined();
});
