import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { check } from "../../src/input/check.ts";
import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import { readPart } from "../../src/input/readPart.ts";
import { typedAt, typedWith, type TypedGroup } from "../../src/input/typed.ts";
import { treeOf, typedOf } from "../../src/input/typedTree.ts";
import { typedYaml } from "../../src/input/typedYaml.ts";
import { yamlTree } from "../../src/input/yamlTree.ts";
import { Part } from "../../src/shapes/part.ts";
import { emptyAt } from "../../src/site/bench/form.ts";

const tables = loadCatalogue();
const files = readdirSync("demo-data/parts").filter((name) => !name.includes(".trials."));

it.each(files)("%s says the same in a form as in its file", (name) => {
  const text = readFileSync(`demo-data/parts/${name}`, "utf8");
  const { tree } = yamlTree(text);
  const typed = tree && (typedOf(tree) as TypedGroup);
  const formed = check(Part, treeOf(typed ?? {}), tables);
  const { part } = readPart(text, { path: name, ...tables });
  expect(formed.problems).toEqual([]);
  expect({ ...formed.value, name: part?.name }).toEqual(part);
});

it("leaves out what is not filled in, and keeps the places in a pair", () => {
  const tree = treeOf({ title: " ", seam: { at: "" }, bearings: ["", "150"], empty: ["", ""] });
  expect([...tree.entries.keys()]).toEqual(["bearings"]);
  const pair = tree.entries.get("bearings")?.tree;
  expect(pair?.kind === "list" && pair.items.map((one) => one.kind === "scalar" && one.value)).toEqual([
    null,
    150,
  ]);
});

it.each([
  [
    ["", "30"],
    [0, 30],
  ],
  [
    ["55", " "],
    [55, 0],
  ],
  [
    ["", ""],
    [0, 0],
  ],
  // Kept by a browser when one of the two had been taken out.
  [["30"], [30, 0]],
])("reads the offset %j as %j, in the form and in the file that it saves", (offset, mm) => {
  const part: TypedGroup = {
    ...{ shape: "eccentric-cone", title: "A", units: "mm", material: "a36", thickness: "3", height: "600" },
    largeEnd: { diameter: "900", measured: "inside" },
    smallEnd: { diameter: "400", measured: "inside", offset },
  };
  const { value } = check(Part, treeOf(part), tables);
  const end = value?.shape === "eccentric-cone" ? value.smallEnd.offset : undefined;
  expect(end).toEqual(mm);
  expect(readPart(typedYaml(part), { path: "a.yaml", ...tables }).part).toMatchObject({
    smallEnd: { offset: mm },
  });
});

it("clears one place of a pair and leaves the other where it is", () => {
  const before: TypedGroup = { offset: ["55", "30"], title: "A" };
  const clear = (path: readonly (string | number)[]) => typedWith(before, path, emptyAt(path));
  expect(clear(["offset", 0])).toEqual({ offset: ["", "30"], title: "A" });
  expect(clear(["offset", 1])).toEqual({ offset: ["55", ""], title: "A" });
  expect(clear(["title"])).toEqual({ offset: ["55", "30"] });
});

it("reads numbers as a file does, and leaves fractions and gauges as text", () => {
  const value = (text: string) => {
    const tree = treeOf({ a: text }).entries.get("a")?.tree;
    return tree?.kind === "scalar" ? tree.value : undefined;
  };
  expect(["12.5", "-.5", "12-3/8", "10 ga", "1e3", "0x10"].map(value)).toEqual([
    12.5,
    -0.5,
    "12-3/8",
    "10 ga",
    1000,
    "0x10",
  ]);
});

it("changes one place and nothing else", () => {
  const before: TypedGroup = { title: "A", largeEnd: { diameter: "900" } };
  const after = typedWith(before, ["smallEnd", "offset", 1], "150");
  expect(after).toEqual({ title: "A", largeEnd: { diameter: "900" }, smallEnd: { offset: ["", "150"] } });
  expect(typedWith(after, ["largeEnd"], undefined)).toEqual({
    title: "A",
    smallEnd: { offset: ["", "150"] },
  });
  expect(before).toEqual({ title: "A", largeEnd: { diameter: "900" } });
  expect(typedAt(after, ["smallEnd", "offset", 1])).toBe("150");
  expect(typedAt(after, ["__proto__", "x"])).toBeUndefined();
});
