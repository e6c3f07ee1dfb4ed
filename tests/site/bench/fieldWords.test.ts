import { expect, it } from "vitest";
import { loadCatalogue } from "../../../src/input/loadCatalogue.ts";
import { applies } from "../../../src/site/bench/applies.ts";
import { fieldHelp } from "../../../src/site/bench/fieldHelp.ts";
import { inFieldWords } from "../../../src/site/bench/fieldWords.ts";
import { materialChoices } from "../../../src/site/bench/materialChoices.ts";
import { readTypedPart } from "../../../src/site/bench/readTyped.ts";
import { PART_FIELDS } from "../../../src/site/words/partFields.ts";

const PART = {
  ...{ shape: "eccentric-cone", title: "A", units: "in", material: "a36", thickness: "1/4", height: "28" },
  largeEnd: { diameter: "36", measured: "outside" },
  smallEnd: { diameter: "16", measured: "outside", offset: ["0", "6"] },
};

function said(more: Parameters<typeof readTypedPart>[0]): string[] {
  const reading = readTypedPart({ ...PART, ...more }, loadCatalogue());
  return reading.kind === "read"
    ? []
    : reading.problems.map(({ problem, remedy }) => inFieldWords(`${problem}; ${remedy}`));
}

it("says what is wrong by the names of the fields, not by the keys of a file", () => {
  expect(said({})).toEqual([]);
  expect(said({ edges: "square" })).toEqual([
    "edges left square do not lie in one plane where the wall leans differently round the part; choose “level” for “Edges at the ends”, and tick “Allowance for dressing the edges” where the edges are cut square and dressed",
  ]);
  expect(said({ seam: { lap: "1" } })).toEqual([
    "a lap width is given for a butt joint; choose “lap” for “Joint”, or leave “Lap” empty",
  ]);
  expect(said({ seam: { joint: "lap" } })).toEqual([
    "a lap joint needs its width; give “Lap”, the width by which the plate runs on past the seam",
  ]);
  expect(said({ seam: { joint: "lap", lap: "1", gap: "1/8" } })).toEqual([
    "a lap joint has no gap; leave “Gap for the weld” empty, or choose “butt” for “Joint”",
  ]);
  expect(said({ certificate: { yieldMPa: "36000" } })[0]).toMatch(/ or a yield with its unit, as in 36 ksi$/);
});

it.each(Object.entries(PART_FIELDS))("says what %s means without a key of the file", (_, text) => {
  expect(inFieldWords(text)).not.toMatch(/[a-z][A-Z](?!a\b)|“measured”|the key |halfAngle/);
});

it("says what a list is to be chosen by, not how a file names it, and by what the trade calls each metal", () => {
  expect(fieldHelp("material")).not.toMatch(/\bid\b|alias|capitals|file/);
  expect(fieldHelp("material")).toContain("grade");
  const names = materialChoices(loadCatalogue().catalogue).map(({ name }) => name);
  expect(names).toContain("S250GD+Z, galvanised");
  expect(names.filter((name) => name.includes("mild steel"))).toContain("A36, mild steel");
  // Beside the steps of a field on a telephone there is room for about so many letters.
  for (const name of names) expect(name.length, name).toBeLessThan(26);
});

it("shows a field only where it can be filled in, and one that holds something always", () => {
  const seam = (typed: Record<string, string>) =>
    ["gap", "lap"].filter((key) => applies(["seam", key], { ...PART, seam: typed }));
  expect([{}, { joint: "lap" }, { lap: "1" }].map(seam)).toEqual([["gap"], ["lap"], ["gap", "lap"]]);
  expect(applies(["edges"], PART)).toBe(false);
  expect(applies(["edges"], { ...PART, edges: "square" })).toBe(true);
  expect(applies(["edges"], { ...PART, shape: "right-cone" })).toBe(true);
  expect(applies(["title"], {})).toBe(true);
});
