import { expect, it } from "vitest";
import { Shop } from "../../src/forming/machine.ts";
import { Part } from "../../src/shapes/part.ts";
import { COMMON_ROWS, SHAPE_ROWS } from "../../src/site/reference/partRows.ts";
import { schemaRows } from "../../src/site/reference/schemaRows.ts";
import { SHOP_ROWS } from "../../src/site/reference/shopRows.ts";
import { PART_FIELDS } from "../../src/site/words/partFields.ts";
import { REPEATED, REPORT_FIELDS } from "../../src/site/words/reportFields.ts";
import { SHOP_FIELDS } from "../../src/site/words/shopFields.ts";
import { fieldsOf } from "./fieldsOf.ts";

const sorted = (paths: Iterable<string>) => [...new Set(paths)].toSorted();

it("documents every field of the report, and none that is not there", () => {
  const fields = fieldsOf("src/report/report.ts", "Report", REPEATED);
  expect(fields.length).toBeGreaterThan(80);
  expect(sorted(Object.keys(REPORT_FIELDS))).toEqual(sorted(fields));
});

it("documents every key of a part file, and none that is not there", () => {
  // The compiler reads the keys from the types, the page reads them from the schemas.
  const keys = fieldsOf("src/shapes/part.ts", "Part");
  expect(keys).toContain("seam.lap");
  expect(sorted(schemaRows(Part).map(({ path }) => path))).toEqual(sorted(keys));
  expect(sorted(Object.keys(PART_FIELDS))).toEqual(sorted(keys));
});

it("shows every key of a part file on its page", () => {
  const shown = [...COMMON_ROWS, ...SHAPE_ROWS.flatMap(([, rows]) => rows)].map(({ path }) => path);
  expect(sorted(shown)).toEqual(sorted(Object.keys(PART_FIELDS)));
});

it("documents every key of a shop file, and shows it on its page", () => {
  const keys = schemaRows(Shop).map(({ path }) => path);
  expect(keys).toContain("machines[].slide.origin");
  expect(sorted(Object.keys(SHOP_FIELDS))).toEqual(sorted(keys));
  expect(sorted(SHOP_ROWS.flatMap(([, rows]) => rows.map(({ path }) => path)))).toEqual(sorted(keys));
});
