import { describe, expect, it } from "vitest";
import { foldName, materialNamed, namesOf } from "../../src/shapes/catalogue.ts";
import { linesOf, spoilt, tables } from "./files.ts";
import { readPart } from "../../src/input/readPart.ts";

const { catalogue } = tables;
const withMaterial = (name: string) => spoilt("material: s235", `material: ${name}`);

describe("a material's names", () => {
  it.each([
    ["S235", "s235"],
    ["S 235 JR", "s235"],
    ["A36", "a36"],
    ["ASTM A36", "a36"],
    ["SA-36", "a36"],
    ["stainless 304", "304"],
    ["304 Stainless Steel", "304"],
    ["SS304", "304"],
    ["1.4301", "304"],
    ["1.4401", "316"],
    ["galvanized", "s250gd-z"],
    ["galvanised", "s250gd-z"],
    ["S250GD+Z", "s250gd-z"],
    ["5052-H32", "5052-h32"],
    ["5083-O", "5083"],
  ])("%s is %s", (written, id) => {
    expect(linesOf(withMaterial(written))).toEqual([]);
    expect(readPart(withMaterial(written), { path: "a.yaml", ...tables }).part?.material).toBe(id);
  });

  it("are no two materials' at once", () => {
    const names = Object.entries(catalogue.materials).flatMap(([id, one]) => [
      ...new Set(namesOf(id, one).map(foldName)),
    ]);
    expect(new Set(names).size).toBe(names.length);
  });

  const all = "The materials are 304, 316, 5083, s235, s275, s355, a36, s250gd-z, 5052-h32";
  it.each([
    [
      "304L",
      "there is no material 304L; the nearest in the list is 304, which is another grade: name that one if its figures will do, or add 304L to content/materials.yaml",
    ],
    [
      "5083-H116",
      "there is no material 5083-H116; the nearest in the list is 5083, which is another grade: name that one if its figures will do, or add 5083-H116 to content/materials.yaml",
    ],
    ["mild steel", "mild steel may be one of several materials; name it: s235, s275, s355 or a36"],
    ["stainless", "stainless may be one of several materials; name it: 304 or 316"],
    ["aluminum", "aluminum may be one of several materials; name it: 5083 or 5052-h32"],
    [
      "1.4307",
      `there is no material 1.4307; the${all.slice(3)}, or add one by copying an entry of content/materials.yaml`,
    ],
    ["stainles 304", `there is no material stainles 304; did you mean 304? ${all}`],
  ])("%s is told about", (written, message) => {
    expect(linesOf(withMaterial(written))).toEqual([`a.yaml:4:11: material: ${message}`]);
  });

  it("never take one grade for another that goes on where it ends", () => {
    for (const [id, one] of Object.entries(catalogue.materials))
      for (const name of namesOf(id, one))
        for (const end of ["L", "H", "Ti", "MC", " L", "-x"])
          expect(materialNamed(catalogue, `${name}${end}`).kind).not.toBe("one");
  });
});
