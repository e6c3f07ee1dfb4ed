import fc from "fast-check";
import { expect, it } from "vitest";
import type { AnySeen, AnyTold } from "../../src/forming/settleTrials.ts";
import { readTrials, seenOf } from "../../src/input/readTrials.ts";
import { brakeKept, brakeKey } from "../../src/site/trials/keptBrake.ts";
import { isSoundIn, keptHere, keptIn, trialsKey, trialsYaml } from "../../src/site/trials/keptTrials.ts";
import { openTrials } from "../../src/site/trials/openTrials.ts";
import { without } from "../../src/site/trials/shared.ts";
import { runs } from "../arbitraries.ts";
import { even } from "../even.ts";
import { tables } from "../input/files.ts";
import { setRoot } from "../../src/site/bits/siteHref.ts";
import { withStorage } from "./bench/storage.ts";

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

it("takes the trials that are some where others are none, and says that not all could be read", () => {
  const good = { settingMm: 20, gapMm: 900 };
  const half = JSON.stringify([good, { settingMm: "x" }]);
  expect(keptIn(half)).toEqual([good]);
  expect(isSoundIn(half)).toBe(false);
  for (const sound of [null, "[]", JSON.stringify([good])]) expect(isSoundIn(sound)).toBe(true);
  for (const broken of ["", "{}", "[1]"]) expect(isSoundIn(broken)).toBe(false);
  const hit = { depthMm: 3, bendDeg: 10 };
  const hits = (trials: unknown) => JSON.stringify({ shoulder: "3", trials });
  expect(brakeKept(hits([hit, {}]))).toEqual({ shoulder: "3", trials: [hit], isSound: false });
  expect(brakeKept(hits([hit]))).toEqual({ shoulder: "3", trials: [hit], isSound: true });
  for (const broken of ["{", "null", "{}"])
    expect(brakeKept(broken)).toEqual({ shoulder: "", trials: [], isSound: false });
});

it("keeps the trials of every binder on a server apart, and takes over once what lies there from before", () => {
  const { local, goTo } = withStorage("http://shop.test/one/parts/cone/forming/");
  setRoot("../../../");
  const earlier = 'slantwork trials ["cone","Big roll"]';
  const first = [{ settingMm: 20, gapMm: 900 }];
  local.setItem(earlier, JSON.stringify(first));
  local.setItem('slantwork brake hits ["cone","Brake"]', "{}");
  expect(keptHere("cone", "Big roll")).toEqual(first);
  expect(local.getItem(earlier)).toBeNull();
  expect(local.getItem(brakeKey("cone", "Brake"))).toBe("{}");
  const own = trialsKey("cone", "Big roll");
  goTo("http://shop.test/two/parts/cone/forming/");
  expect(trialsKey("cone", "Big roll")).not.toBe(own);
  expect(keptHere("cone", "Big roll")).toBeUndefined();
  // What is kept by now is not written over by what lay there before.
  goTo("http://shop.test/one/parts/cone/");
  setRoot("../../");
  expect(trialsKey("cone", "Big roll")).toBe(own);
  local.setItem(earlier, "[]");
  expect(keptHere("cone", "Big roll")).toEqual(first);
  expect(local.getItem(earlier)).toBe("[]");
  setRoot("");
});

it("loses nothing of what was kept before where there is no room to move it", () => {
  const { local } = withStorage("http://shop.test/a/long/way/to/the/binder/");
  const earlier = 'slantwork trials ["cone","Big roll"]';
  local.setItem(earlier, "[1]");
  local.room = earlier.length + 3;
  setRoot("./");
  trialsKey("cone", "Big roll");
  expect(local.getItem(earlier)).toBe("[1]");
  setRoot("");
});

it("takes a trial out of the list as it lies by now", () => {
  const shown = [{ a: 1 }, { a: 2 }, { a: 1 }];
  expect(without(shown, shown, 2)).toEqual([{ a: 1 }, { a: 2 }]);
  expect(without([{ a: 0 }, ...shown], shown, 1)).toEqual([{ a: 0 }, { a: 1 }, { a: 1 }]);
  const now = [{ a: 3 }];
  expect(without(now, shown, 0)).toBe(now);
});

it("opens a file of trials by the rules of all files: one in UTF-16 is told to be", () => {
  const text = "units: mm\nmachine: Big roll\ntrials:\n  - { setting: 20, gap: 900 }\n";
  const open = (bytes: Uint8Array) => openTrials(bytes, "cone.trials.yaml", "Big roll");
  expect(open(Buffer.from(text, "utf8"))).toEqual([{ settingMm: 20, gapMm: 900 }]);
  expect(open(Buffer.from(`\ufeff${text}`, "utf16le"))).toBe(
    "cone.trials.yaml:1:1: file: it is saved as UTF-16; save it as UTF-8 in the editor",
  );
  expect(open(Uint8Array.of(0xff))).toMatch(/not a text file in UTF-8/);
});
