import { expect, it } from "vitest";
import { sizeSummary } from "../../../src/site/bench/tray/summary.ts";
import { asTray, clashes, EMPTY, onTray, withoutPart, withParts } from "../../../src/site/bench/tray/tray.ts";

const part = (name: string, height = "100") => ({ name, part: { shape: "right-cone", height } });
const names = (tray: ReturnType<typeof withParts>) => tray.parts.map(({ name }) => name);

it("keeps the very same part once, and both of two with one name unless one replaces the other", () => {
  const tray = withParts(EMPTY, [part("a"), part("b")], "keep both");
  expect(withParts(tray, [{ name: "a", part: { height: "100", shape: "right-cone" } }], "replace")).toEqual(
    tray,
  );
  expect(clashes(tray, [part("a"), part("B"), part("c")]).map(({ name }) => name)).toEqual(["B"]);
  expect(clashes(tray, [part("a", "5")])).toHaveLength(1);
  const both = withParts(tray, [part("a", "5"), part("a", "6")], "keep both");
  expect(names(both)).toEqual(["a", "b", "a-2", "a-3"]);
  expect(onTray(both, "a-3")?.part["height"]).toBe("6");
  const over = withParts(tray, [part("A", "5")], "replace");
  expect(names(over)).toEqual(["A", "b"]);
  expect(names(withoutPart(over, "a"))).toEqual(["b"]);
});

it("cuts a name that would grow too long for a file", () => {
  const long = "x".repeat(80);
  const tray = withParts(withParts(EMPTY, [part(long)], "keep both"), [part(long, "5")], "keep both");
  expect(tray.parts[1]?.name).toBe(`${"x".repeat(74)}-2`);
  expect(asTray(tray)).toEqual(tray);
});

it("takes nothing for a tray that was not kept here", () => {
  const bad = [
    null,
    [],
    {},
    { job: {}, parts: [{}] },
    { job: {}, parts: [part("../a")] },
    { job: 1, parts: [] },
  ];
  for (const one of bad) expect(asTray(one), JSON.stringify(one)).toBeUndefined();
  expect(asTray(EMPTY)).toEqual(EMPTY);
});

it("says the sizes as they were typed, half typed ones too", () => {
  const cone = { units: "in", thickness: "10 ga", largeEnd: { diameter: `2' 6"` }, slant: "40" };
  expect(sizeSummary({ ...cone, smallEnd: { diameter: "12-3/8" } })).toBe(
    `2' 6" → 12-3/8, slant 40, 10 ga thick, in`,
  );
  expect(
    sizeSummary({
      rectangularEnd: { length: "600", width: "400" },
      roundEnd: { diameter: "300" },
      height: "",
    }),
  ).toBe("600 × 400 → 300");
  expect(sizeSummary({ rectangularEnd: "x", largeEnd: ["1"] })).toBe("");
});
