import { expect, it } from "vitest";
import { EccentricCone } from "../../../src/shapes/eccentric-cone/schema.ts";
import { outlineOf } from "../../../src/input/outline.ts";
import { wheelSteps } from "../../../src/site/bench/drawings/d3Zoom.ts";
import { foldWords } from "../../../src/site/bench/foldWords.ts";
import { formFrom } from "../../../src/site/bench/form.ts";
import { loadCatalogue } from "../../../src/input/loadCatalogue.ts";
import { begin, change, goOn, kept, redo, settle, undo } from "../../../src/site/bench/history.ts";
import { linkOf, partInLink } from "../../../src/site/bench/link.ts";
import { otherHash } from "../../../src/site/bench/otherHash.ts";
import { readLength } from "../../../src/input/length.ts";
import { readTypedPart } from "../../../src/site/bench/readTyped.ts";
import { readTypedShop } from "../../../src/site/bench/readTypedShop.ts";
import type { Keeper } from "../../../src/site/bench/keep.ts";
import { ownDraft } from "../../../src/site/bench/ownDraft.ts";
import { stepped } from "../../../src/site/bench/step.ts";

const tables = loadCatalogue();
const cone = {
  shape: "right-cone",
  title: "Cone",
  units: "mm",
  material: "s235",
  thickness: "4",
  largeEnd: { diameter: "605", measured: "outside" },
  smallEnd: { diameter: "305", measured: "outside" },
  height: "200",
};

it("reads a part as it was typed, and names the field of every problem", () => {
  expect(readTypedPart(cone, tables)).toMatchObject({ kind: "read", value: { thickness: 4, height: 200 } });
  const bad = readTypedPart({ ...cone, height: "2OO", slant: "250" }, tables);
  expect(bad.kind === "problems" && bad.problems.map(({ path }) => path.join("."))).toContain("height");
  const both = readTypedPart({ ...cone, slant: "250" }, tables);
  expect(both).toMatchObject({ kind: "problems" });
});

it("reads a shop as it was typed, with the rules of its file", () => {
  const roll = {
    kind: "plate roll",
    name: "Roll",
    workingWidth: "2050",
    rating: { thickness: "8" },
    rolls: { topDiameter: "220" },
  };
  const shop = { name: "Shop", units: "mm", machines: [roll] };
  expect(readTypedShop(shop, tables)).toMatchObject({ kind: "read" });
  expect(readTypedShop({ ...shop, machines: [roll, roll] }, tables)).toMatchObject({
    kind: "problems",
    problems: [{ path: ["machines", 1, "name"] }],
  });
});

it("undoes the typing in one field as one step, and goes forward again", () => {
  let history = begin("");
  for (const text of ["9", "90", "900"]) history = change(history, text, "height");
  history = change(settle(history), "9000", "height");
  expect(undo(history).now).toBe("900");
  expect(undo(undo(history)).now).toBe("");
  expect(redo(undo(history)).now).toBe("9000");
  // Typed away and back again there is nothing to undo.
  const back = settle(change(change(settle(history), "", "width"), "9000", "width"));
  expect(undo(back).now).toBe("900");
  expect(redo(change(undo(history), "1")).now).toBe("1");
  // Left and opened again: the same steps back, and before them what the page begins with.
  const again = goOn("page", kept(history));
  expect(again.now).toBe("9000");
  expect(undo(again).now).toBe("900");
  expect(undo(undo(undo(again))).now).toBe("page");
  expect(goOn("page", []).now).toBe("page");
  expect(undo(begin("a")).now).toBe("a");
});

it.each([
  ["900", "length", "mm", 1, "905"],
  ["12-3/8", "length", "in", 1, "12-1/2"],
  ["12-3/8", "length", "in", -1, "12-1/4"],
  [`3' 4-1/2"`, "length", "in", 1, `3' 4-5/8"`],
  [`3'-6"`, "length", "mm", 1, `3'-6-1/8"`],
  [`3'-6`, "length", "in", -1, `3'-5-7/8`],
  ["3 ft 11-7/8 in", "length", "mm", 1, "4 ft 0 in"],
  ["3\u2032 6\u2033", "length", "in", 1, "3\u2032 6-1/8\u2033"],
  [`3'`, "length", "in", 1, `3'-0-1/8"`],
  [`3'-0-1/8"`, "length", "in", -1, `3'-0"`],
  [`4'`, "length", "in", 96, `5'`],
  [`-1' 0-1/8"`, "length", "in", 2, `-0' 11-7/8"`],
  ["2.5'", "length", "in", 1, `2'-6.125"`],
  ["12 3/8", "length", "in", -1, "12 1/4"],
  [`20-1/2"`, "length", "in", 10, `21-3/4"`],
  ["12 inches", "length", "mm", 1, "12-1/8 inches"],
  ["50MM", "length", "in", 1, "55MM"],
  ["12.3", "length", "in", 1, "12.425"],
  ["2 in", "length", "mm", 1, "2-1/8 in"],
  ["50 mm", "length", "in", 1, "55 mm"],
  ["10 ga", "thickness", "mm", 1, undefined],
  ["4", "thickness", "mm", -1, "3"],
  ["2", "length", "mm", -1, undefined],
  ["-5", "length", "mm", -1, "-10"],
  ["12", "count", "mm", 2, "14"],
  ["", "count", "mm", 1, undefined],
] as const)("%s, a %s in %s, moved by %s, is %s", (text, quantity, units, times, after) => {
  expect(stepped(text, { quantity, units }, times)).toBe(after);
  // What is written is read again, and moved by those steps.
  if (quantity !== "count" && after !== undefined) expect(readLength(after, units).kind).toBe("read");
});

it.each([
  ["0", "length", { min: { value: -20000, inclusive: true } }, -1, "-5"],
  ["0 mm", "length", { min: { value: -20000, inclusive: true } }, -1, "-5 mm"],
  ["5", "length", { min: { value: 0, inclusive: false } }, -1, undefined],
  ["5", "length", { min: { value: 0, inclusive: true } }, -1, "0"],
  ["1/8 in", "length", { min: { value: -20000, inclusive: true } }, -2, "-1/8 in"],
  ["790 in", "length", { max: { value: 20000, inclusive: true } }, 1, undefined],
  ["1", "count", { min: { value: 1, inclusive: true }, max: { value: 12, inclusive: true } }, -1, undefined],
  ["12", "count", { min: { value: 1, inclusive: true }, max: { value: 12, inclusive: true } }, 1, undefined],
  ["0", "count", { min: { value: 1, inclusive: true }, max: { value: 12, inclusive: true } }, 1, "1"],
  ["15", "count", { min: { value: 1, inclusive: true }, max: { value: 12, inclusive: true } }, -1, "14"],
  ["right", "angle", {}, 1, undefined],
] as const)("%s, a %s within %j, moved by %s, is %s", (text, quantity, limits, times, after) => {
  expect(stepped(text, { quantity, units: "mm", limits }, times)).toBe(after);
});

it.each([
  ["gap", "0", "mm", 1, "0.5"],
  ["gap", "0", "in", 1, "1/32"],
  ["gap", "3/32", "in", 1, "1/8"],
  ["gap", "2.5 mm", "in", -1, "2 mm"],
  ["facetError", "1", "mm", -1, "0.5"],
  ["facetError", "1/16", "in", 1, "3/32"],
  ["spacing", "10", "mm", 1, "11"],
  ["edge", "1/2", "in", 1, "9/16"],
  ["height", "10", "mm", 1, "15"],
] as const)("%s, at %s in %s, goes by %s step of its own to %s", (key, text, units, times, after) => {
  expect(stepped(text, { quantity: "length", units, key }, times)).toBe(after);
});

it("finds another window's draft with its own one step back, and its own alone as it was left", () => {
  const lying = <T>(): Keeper<T> & { at: T | undefined } => {
    const one = {
      at: undefined as T | undefined,
      read: () => one.at,
      write: (now: T | undefined) => ((one.at = now), true),
    };
    return one;
  };
  const shared = lying<readonly string[]>();
  const windows = [1, 2].map(() => ownDraft(shared, lying<readonly string[]>()));
  const [mine, theirs] = [windows[0]!, windows[1]!];
  expect(mine.read()).toBeUndefined();
  mine.write(["a", "250"]);
  expect(theirs.read()).toEqual(["a", "250"]);
  expect(theirs.isOthers()).toBe(false);
  theirs.write(["a", "250", "260"]);
  expect(mine.read()).toEqual(["a", "250", "250", "260"]);
  expect(mine.isOthers()).toBe(true);
  expect(theirs.read()).toEqual(["a", "250", "260"]);
  expect(theirs.isOthers()).toBe(false);
});

it("knows the limits of every number of a form: offsets go below 0, pieces from 1 to 12", () => {
  const form = formFrom(outlineOf(EccentricCone));
  const limits = (key: string) =>
    [...form.fields, ...form.sets.flatMap(({ fields }) => fields)].find(({ path }) => path.join(".") === key)
      ?.limits;
  expect(limits("smallEnd.offset.0")?.min).toEqual({ value: -20000, inclusive: true });
  expect(limits("pieces")).toMatchObject({ min: { value: 1, inclusive: true }, max: { value: 12 } });
  expect(limits("height")?.min).toEqual({ value: 0, inclusive: false });
});

it("says what stands in the fold, as it was typed", () => {
  expect(foldWords({})).toBe("");
  expect(foldWords({ pieces: "2", seam: { at: "right", gap: " 1/8 " }, quantity: "3" })).toBe(
    "2 pieces, seam right, gap 1/8, 3 to make",
  );
  expect(foldWords({ pieces: "1", seam: { at: "90", lap: "30" } })).toBe("1 piece, seam 90°, lap 30");
});

it("looks nearer by half as much again at a notch of the wheel, and by all of a small turn of two fingers", () => {
  const notch = wheelSteps({ deltaY: -100, deltaMode: 0 });
  expect(2 ** notch).toBeCloseTo(Math.SQRT2, 9);
  expect(wheelSteps({ deltaY: 3, deltaMode: 1 })).toBe(-0.5);
  expect(wheelSteps({ deltaY: -4, deltaMode: 0 })).toBeCloseTo(0.08, 9);
});

it.each([
  ["10 ga", 1, "9 ga"],
  ["10 ga", -1, "11 ga"],
  ["9-Gauge", -1, "10-Gauge"],
  ["ga 16", 2, "ga 14"],
  ["10 ga", 10, "3 ga"],
  ["3 ga", 1, undefined],
  ["30 ga", -1, undefined],
  ["99 ga", 1, undefined],
  ["10 gallons", 1, undefined],
  ["ga", 1, undefined],
] as const)("%s in sheet of steel, moved by %s, is %s", (text, times, after) => {
  const gauges = tables.gauges.steel.rows;
  expect(stepped(text, { quantity: "thickness", units: "mm", gauges }, times)).toBe(after);
});

it("carries a whole part in an address, and says why one carries none", () => {
  const sent = { name: "öd & #1 %", part: cone };
  expect(partInLink(linkOf(sent))).toEqual({ kind: "read", value: sent });
  expect(partInLink("#blank")).toEqual({ kind: "none" });
  for (const hash of ["#part=", "#part=%7B", "#part=%", "#part=[]", `#part={"name":"a","part":{"b":1}}`])
    expect(partInLink(hash).kind, hash).toBe("broken");
});

it("carries with a part that was opened here the name of its file, and no more of one than a file has", () => {
  const part = { name: "spout", part: cone };
  expect(partInLink(linkOf(part, "spout.yaml"))).toEqual({ kind: "read", value: part, from: "spout.yaml" });
  const long = partInLink(linkOf(part, "a".repeat(1000)));
  expect(long.kind === "read" && long.from?.length).toBe(255);
});

it("says why something else behind # is no part, and is silent about a place on the page", () => {
  const why = (hash: string) => otherHash(hash, (id) => id === "blank" || id === "größe");
  for (const place of ["", "#", "#blank", "#größe", `#${encodeURIComponent("größe")}`])
    expect(why(place), place).toBeUndefined();
  for (const cut of ["#p", "#par", "#part", linkOf({ name: "a", part: cone }).slice(0, 5)])
    expect(why(cut), cut).toMatch(/cut off before/);
  expect(why("#parts")).toMatch(/neither a part nor a place/);
  expect(why("#%E0%A4%A")).toMatch(/changed on its way/);
});
