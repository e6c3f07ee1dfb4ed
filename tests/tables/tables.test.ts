import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { yamlOf } from "../content/read.ts";
import { all } from "./all.ts";
import { keyIn, off } from "./arithmetic.ts";

const sources = yamlOf("content/sources.yaml") as Record<string, unknown>;
const NO_SOURCE = ["common practice, no source", "derived here"];

it("has an address for each table, and its own", () => {
  const ids = all.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(new Set(all.map(({ title }) => title)).size).toBe(ids.length);
  for (const id of ids) expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
  // Pages of their own that an address must not hide.
  expect(ids).not.toContain("gauges");
  expect(ids).not.toContain("materials");
});

it("pairs tables of both units both ways", () => {
  for (const { id, twin } of all)
    if (twin !== undefined) expect(all.find((one) => one.id === twin)?.twin).toBe(id);
});

/** What the binder's font has besides Latin letters. */
const signs = /^SIGNS = "(.+)"$/m.exec(readFileSync("src/site/fonts/bake.py", "utf8"))?.[1] ?? "";

describe.each(all)("$id", (table) => {
  const { columns, rows, worked, entries } = table;

  it("has a cell for every column of every row, and no row twice", () => {
    expect(rows.length).toBeGreaterThan(10);
    for (const row of rows) {
      expect(row).toHaveLength(columns.length);
      expect(row.filter((cell) => cell.trim() === "" || /NaN|Infinity|undefined|null/.test(cell))).toEqual(
        [],
      );
    }
    const looked = rows.map((row) => row.slice(0, entries).join(" | "));
    expect(new Set(looked).size).toBe(rows.length);
  });

  it("names a source that is listed, or says that there is none", () => {
    expect(table.basis.length).toBeGreaterThan(0);
    for (const basis of table.basis) expect(basis in sources || NO_SOURCE.includes(basis), basis).toBe(true);
    for (const id of table.checked ?? []) expect(id in sources, id).toBe(true);
    expect(new Set(table.basis).size).toBe(table.basis.length);
  });

  it("has a worked row that anybody can key in", () => {
    expect(worked.steps.length).toBeGreaterThan(2);
    for (const { what, sum, is } of worked.steps) {
      const [printed = ""] = /^[\d.]+/.exec(is) ?? [];
      expect(off(printed, keyIn(sum)), `${what}: ${sum} = ${is}, but ${keyIn(sum)}`).toBeLessThanOrEqual(1);
    }
  });

  it("comes out by hand as the row says", () => {
    const row = rows[worked.row]!;
    expect(worked.columns.length).toBeGreaterThan(0);
    for (const column of worked.columns) {
      const cell = row[column]!;
      const results = worked.steps.map(({ is }) => /^[\d.]+/.exec(is)?.[0]);
      expect(results, `column ${column}`).toContain(cell);
      expect(column).toBeGreaterThanOrEqual(entries);
    }
  });

  it("is lettered in signs that the binder's font has", () => {
    const text = JSON.stringify(table).normalize();
    const foreign = Array.from(text).filter((sign) => sign > "\u017f" && !signs.includes(sign));
    expect(signs.length).toBeGreaterThan(20);
    expect([...new Set(foreign)]).toEqual([]);
  });
});
