import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { run } from "../../src/cli/run.ts";
import { develop as core } from "../../src/report/develop.ts";

const base = mkdtempSync(join(tmpdir(), "told-"));
afterAll(() => {
  rmSync(base, { recursive: true });
  delete process.env["SLANTWORK_EFFORT"];
});

const cone = (title: string, thickness: string, more = ""): string => `shape: right-cone
title: ${title}
units: mm
material: s235
thickness: ${thickness}
largeEnd: { diameter: 600, measured: outside }
smallEnd: { diameter: 200, measured: outside }
height: 500
${more}`;

const FILES = {
  "job.yaml": "title: Bins for Søn\n",
  "parts/thin.yaml": cone("Cone Ø600 für Müller", "4", "quantity: 5\n"),
  "parts/thick.yaml": cone("Wear cone", "30"),
  "parts/inches.yaml": `shape: right-cone
title: Inch cone
units: in
material: A36
thickness: 1/8
largeEnd: { diameter: 24, measured: outside }
smallEnd: { diameter: 8, measured: outside }
height: 20
`,
  "shop.yaml": `name: Test shop
units: mm
machines:
  - { kind: press brake, name: Brake, bedLength: 3000, forceKN: 1000, dies: [40] }
stock:
  - { material: s235, thickness: 4, length: 3000, width: 1500 }
  - { material: s235, thickness: 30, length: 3000, width: 1500 }
  - { material: a36, thickness: 3.175, length: 3000, width: 1500 }
`,
};

/** Cells of a CSV by the names of their columns; none of these holds a line break. */
function tableOf(csv: string): Record<string, string>[] {
  // Above the table a heading may stand, with an empty line between.
  const [head, ...rows] = (csv.split("\r\n\r\n").at(-1) ?? "")
    .replace(/^\uFEFF/, "")
    .trimEnd()
    .split("\r\n")
    .map((line) =>
      [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(
        ([, quoted, bare]) => quoted ?? bare ?? "",
      ),
    );
  return rows.map((row) => Object.fromEntries(row.map((cell, i): [string, string] => [head![i]!, cell])));
}

describe("a job with a part that goes on no machine", () => {
  let told: ReturnType<typeof run>;
  const text = (name: string) => readFileSync(join(base, "cut", name), "utf8");
  beforeAll(() => {
    process.env["SLANTWORK_EFFORT"] = "0.01";
    for (const [name, content] of Object.entries(FILES)) {
      mkdirSync(join(base, "job", name, ".."), { recursive: true });
      writeFileSync(join(base, "job", name), content);
    }
    told = run(["job", "--out", "cut"], { folder: base, develop: core });
  });

  it("says so where it prints, in the word on what to know first, and in both lists", () => {
    expect([told.exitCode, told.stderr]).toEqual([0, ""]);
    expect(told.stdout).toContain("1 part does not go here, on no machine of the shop: thick.");
    expect(text("read-me.txt")).toMatch(/DOES NOT GO HERE.*\r\n +thick\r\n\r\n/);
    const list = tableOf(text("list.csv"));
    const goes = (file: string) => list.find((row) => row["file"] === file)!["will it go"];
    expect(goes("parts/thick.dxf")).toBe("does not go here");
    expect(goes("parts/thin.dxf")).toMatch(/^goes/);
    const mind = (file: string) => list.find((row) => row["file"] === file)!["what to mind"];
    expect(mind("parts/thick.dxf")).toMatch(/[A-Z][a-z ]+: .*\.$/);
    expect(mind("plates/s235-30-mm-plate-1.dxf")).toMatch(/^thick: [A-Z]/);
    expect(goes("plates/s235-30-mm-plate-1.dxf")).toBe("holds what does not go here: thick");
    const bad = tableOf(text("plates/plates.csv")).filter((row) => row["will it go"] === "does not go here");
    expect(bad.map((row) => [row["part"], row["file"]])).toEqual([["thick", "s235-30-mm-plate-1"]]);
  });

  it("says so of parts on their own too, beside the report that is printed", () => {
    const one = run(["job/parts/thick.yaml", "--shop", "job/shop.yaml", "--out", "one"], {
      folder: base,
      develop: core,
    });
    expect(one.exitCode).toBe(0);
    expect(one.stderr).toContain("does not go here, on no machine of the shop: thick");
    const good = run(["job/parts/thin.yaml", "--shop", "job/shop.yaml", "--out", "one"], {
      folder: base,
      develop: core,
    });
    expect(good.stderr).toBe("develop: 4 files of 1 part were written into one\n");
  });

  it("tells of a part which plates it lies on, and of a plate how many of which part it holds and how large it is", () => {
    const list = tableOf(text("list.csv"));
    const places = list.find(({ file }) => file === "parts/thin.dxf")!["lies on plates"]!;
    const counted = places
      .split("; ")
      .map((one) => /^([\w-]+)(?: \((\d+) alike\))?: (\d+)(?: each)?$/.exec(one)!);
    const sum = counted.reduce((total, [, , alike, count]) => total + Number(alike ?? 1) * Number(count), 0);
    expect(sum).toBe(5);
    for (const [, name, , count] of counted) {
      const plate = list.find(({ file }) => file === `plates/${name}.dxf`)!;
      expect(plate["plate holds"]).toBe(`thin: ${count}`);
      expect(plate["plate size"]).toBe("3000 x 1500 mm");
      const rows = tableOf(text("plates/plates.csv")).filter(({ file }) => file === name);
      expect(rows).toHaveLength(Number(count));
      expect(rows[0]!["title"]).toBe("Cone Ø600 für Müller");
    }
  });

  it("begins every CSV with the mark of UTF-8, once", () => {
    const names = readdirSync(join(base, "cut"), { recursive: true, encoding: "utf8" });
    const csv = names.filter((name) => name.endsWith(".csv"));
    expect(csv.length).toBe(5);
    for (const name of csv) {
      const bytes = readFileSync(join(base, "cut", name));
      expect([...bytes.subarray(0, 3)]).toEqual([0xef, 0xbb, 0xbf]);
      expect(bytes.toString("utf8").lastIndexOf("\uFEFF")).toBe(0);
    }
  });

  it("has a DXF in inches of a plate that holds a part in inches, and of no other", () => {
    const names = readdirSync(join(base, "cut/plates")).filter((name) => name.endsWith("-inches.dxf"));
    expect(names).toHaveLength(1);
    expect(names[0]).toMatch(/^a36-/);
  });

  it("knows its own files again, and takes those of a part away that is gone", () => {
    rmSync(join(base, "job/parts/thick.yaml"));
    const { exitCode, stdout, stderr } = run(["job", "--out", "cut"], { folder: base, develop: core });
    expect(exitCode).toBe(0);
    expect(stdout).not.toContain("does not go");
    expect(stderr).toContain("cut/parts/thick.dxf was of an earlier run");
  });
});
