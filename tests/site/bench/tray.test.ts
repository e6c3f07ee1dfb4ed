import { expect, it } from "vitest";
import { betterName } from "../../../src/input/partName.ts";
import { keptTray } from "../../../src/site/bench/tray/keptTray.ts";
import { sizeSummary } from "../../../src/site/bench/tray/summary.ts";
import {
  asTray,
  clashes,
  EMPTY,
  isWholeTray,
  onTray,
  withoutPart,
  withParts,
} from "../../../src/site/bench/tray/tray.ts";
import { withStorage } from "./storage.ts";

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

it("takes the sound parts of a tray where others are none, and says that it is not whole", () => {
  const [good, trials] = [part("a"), { machine: 1 }];
  for (const bad of [
    { job: {}, parts: [good, { name: "b" }] },
    { job: {}, parts: [part("../b"), good] },
    { job: 1, parts: [good] },
    { job: {}, parts: [{ ...good, trials }] },
  ]) {
    expect(asTray(bad)).toEqual({ job: {}, parts: [good] });
    expect(isWholeTray(bad)).toBe(false);
  }
  expect(isWholeTray({ job: { title: "J" }, parts: [good] })).toBe(true);
  for (const none of [null, {}, { job: {}, parts: 1 }]) expect(isWholeTray(none)).toBe(false);
});

it("sets a tray that is not whole aside before it is written anew, and leaves it where it cannot", () => {
  const { local } = withStorage();
  const kept = keptTray("tray");
  expect(kept.read()).toBeUndefined();
  expect(kept.unread()).toEqual([]);
  const bad = JSON.stringify({ job: {}, parts: [part("a"), { name: "b", part: 1 }] });
  local.setItem("tray", bad);
  expect(kept.read()?.parts).toEqual([part("a")]);
  expect(kept.unread()).toEqual([bad]);
  expect(kept.read()?.parts).toEqual([part("a")]);
  expect(kept.write(withParts(EMPTY, [part("c")], "keep both"))).toBe(true);
  expect(kept.unread()).toEqual([bad]);
  kept.dropUnread();
  expect(kept.unread()).toEqual([]);
  local.setItem("tray", "{");
  expect(kept.read()).toBeUndefined();
  expect(kept.unread()).toEqual(["{"]);
  kept.dropUnread();
  local.setItem("tray", bad);
  local.room = bad.length + 10;
  expect(kept.read()?.parts).toEqual([part("a")]);
  expect(kept.write(EMPTY)).toBe(false);
  expect(local.getItem("tray")).toBe(bad);
});

it("knows a name under which a part may be kept for one that will not do", () => {
  expect(betterName("cone tall")).toBe("cone-tall");
  expect(betterName("a\r\n0\r\nLINE\r\n../../x")).toBe("a-0-LINE-..-..-x");
  expect(betterName("con")).toBe("part-con");
  for (const none of ["", "...", "x.html", "x".repeat(81)]) expect(betterName(none)).toBeUndefined();
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
