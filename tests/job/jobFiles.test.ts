import { unzipSync, strFromU8 } from "fflate";
import { describe, expect, it } from "vitest";
import { archiveName } from "../../src/job/jobName.ts";
import { jobFiles, jobFolder } from "../../src/job/jobFiles.ts";
import { platesOf } from "../../src/job/plates.ts";
import { cutPatterns } from "../../src/output/contour.ts";
import { readBinder } from "../../src/site/binder/binder.ts";
import { zipTexts } from "../../src/site/bits/zip.ts";
import { archiveBytes, archiveOf } from "../../src/site/job/cuttingFiles.ts";
import { layJob } from "../../src/site/job/layJob.ts";
import { named, reportOf } from "../parts.ts";

const binder = readBinder();
const groups = layJob(binder);

/** Reads CSV as RFC 4180 has it, quotes and all. */
function rowsOf(csv: string): string[][] {
  return csv
    .trimEnd()
    .split("\r\n")
    .map((line) =>
      [...line.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/g)].map(([, quoted, bare]) =>
        quoted === undefined ? (bare ?? "") : quoted.replaceAll('""', '"'),
      ),
    );
}

describe("the demo job's cutting files", () => {
  const unpacked = unzipSync(archiveBytes(binder));
  const names = Object.keys(unpacked);

  it("hold DXF, SVG, marking table and report of every part, and every plate, in the order of their names", () => {
    expect(names).toEqual(names.toSorted());
    for (const { report } of binder.parts) {
      expect(names).toContain(`parts/${report.part.name}.json`);
      for (const { name } of cutPatterns(report))
        for (const ending of ["dxf", "svg", "csv"]) expect(names).toContain(`parts/${name}.${ending}`);
      expect(names.includes(`parts/${cutPatterns(report)[0]!.name}-inches.dxf`)).toBe(
        report.part.units === "in",
      );
    }
    const sheets = groups.flatMap(({ plates }) => plates.map(({ sheet }) => sheet.name));
    expect(sheets.length).toBeGreaterThan(5);
    for (const name of sheets)
      for (const ending of ["dxf", "svg"]) expect(names).toContain(`plates/${name}.${ending}`);
    expect(names).toContain("plates/plates.csv");
  });

  it("are told one by one in the list: every file but the two that tell of them, with numbers to cut that add up", () => {
    const [head, ...rows] = rowsOf(strFromU8(unpacked["list.csv"]!));
    const at = (name: string) => head!.indexOf(name);
    expect(rows.map(([file]) => file).toSorted()).toEqual(
      names.filter((name) => name !== "list.csv" && name !== "read-me.txt"),
    );
    for (const row of rows) {
      expect(row).toHaveLength(head!.length);
      for (const name of ["use", "contents", "plate", "units"]) expect(row[at(name)]).not.toBe("");
    }
    for (const { report } of binder.parts) {
      const own = rows.filter((row) => row[at("part")] === report.part.name && row[0]!.endsWith(".svg"));
      const sum = own.reduce((total, row) => total + Number(row[at("to cut")]), 0);
      expect(sum).toBe((report.part.quantity ?? 1) * report.blanks.length);
      for (const row of own) expect(row[at("title")]).toBe(report.part.title);
    }
    const inches = rows.filter(([file]) => file!.endsWith("-inches.dxf"));
    expect(inches.length).toBeGreaterThan(0);
    expect(new Set(inches.map((row) => row[at("units")]))).toEqual(new Set(["in"]));
  });

  it("come with a word on what to know first", () => {
    const text = strFromU8(unpacked["read-me.txt"]!);
    expect(text).toContain(`${binder.job!.title}: files for the cutting table`);
    expect(text).toContain("not by both");
    expect(text).toContain("hurt");
    const plates = groups.reduce(
      (sum, one) => sum + one.plates.reduce((n, { sheet }) => n + sheet.copies, 0),
      0,
    );
    expect(text).toContain(`${plates} whole plates`);
    expect(text.split("\r\n").every((line) => line.length <= 140)).toBe(true);
  });

  it("are packed the same byte for byte, whatever the clock says", () => {
    const zone = process.env["TZ"];
    const first = Buffer.from(archiveBytes(binder));
    process.env["TZ"] = "Pacific/Auckland";
    const second = Buffer.from(archiveBytes(binder));
    process.env["TZ"] = zone;
    expect(first.equals(second)).toBe(true);
  });

  it("go by a name that every system takes", () => {
    expect(archiveOf(binder)).toBe("second-cleaning-line-cutting-files.zip");
    expect(archiveName("Ø 900 / “Säge” № 7")).toBe("900-sage-no-7-cutting-files.zip");
    expect(archiveName("Cement hopper Ø1200, Müller & Søn, Łódź, Straße")).toBe(
      "cement-hopper-1200-muller-son-lodz-strasse-cutting-files.zip",
    );
    expect(archiveName("漢字")).toBe("job-cutting-files.zip");
    expect(archiveName("long-".repeat(40)).length).toBeLessThan(90);
  });
});

describe("a job of parts whose files would bear one name", () => {
  const cone = {
    shape: "right-cone",
    thickness: 4,
    largeEnd: { diameter: 605, measured: "outside" },
    smallEnd: { diameter: 305, measured: "outside" },
    height: 200,
  } as const;
  const split = reportOf({
    ...named({
      shape: "square-to-round",
      thickness: 2,
      rectangularEnd: { length: 500, width: 400, measured: "outside" },
      roundEnd: { diameter: 300, measured: "outside", offset: [40, 20] },
      height: 300,
      pieces: 2,
    }),
    name: "hood",
  });
  const same = reportOf({ ...named(cone), name: "Hood-piece-2" });
  const job = {
    shop: undefined,
    parts: [split, same].map((report) => ({ report, material: { name: "S235" }, gauge: null })),
  };

  it("keeps them apart in folders, and needs no shop", () => {
    const files = jobFiles(job, platesOf(job, 0.01), { inches: true });
    const paths = files.map(({ path }) => path.toLowerCase());
    expect(new Set(paths).size).toBe(paths.length);
    expect(paths).toContain("parts/hood-piece-2.dxf");
    expect(paths).toContain("parts/hood-piece-2/hood-piece-2.dxf");
    expect(paths.filter((path) => path.endsWith("-inches.dxf"))).toHaveLength(3);
    const texts = jobFolder({ title: "=1+1" }, job, platesOf(job, 0.01));
    const list = texts.find(({ path }) => path === "list.csv")!.text;
    expect(rowsOf(list).length).toBe(1 + 3 * 3 + 2);
    expect(texts.find(({ path }) => path === "read-me.txt")!.text).toContain(
      "there is no shop file with plates",
    );
    expect(Object.keys(unzipSync(zipTexts(texts)))).toEqual(texts.map(({ path }) => path));
  });
});
