import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import fc from "fast-check";
import { unzipSync, zipSync, type Zippable } from "fflate";
import { afterAll, expect, it } from "vitest";
import { loadCatalogue } from "../../../src/input/loadCatalogue.ts";
import { printProblems } from "../../../src/input/problem.ts";
import { readFolder } from "../../../src/input/readFolder.ts";
import type { TypedGroup } from "../../../src/input/typed.ts";
import { openJob } from "../../../src/site/bench/files/openJob.ts";
import { openPart } from "../../../src/site/bench/files/openPart.ts";
import { unzip } from "../../../src/site/bench/files/unzip.ts";
import { jobFolder, zipJob } from "../../../src/site/bench/files/zipJob.ts";
import { runs } from "../../arbitraries.ts";
import { even } from "../../even.ts";

const tables = loadCatalogue();
const folder = mkdtempSync(join(tmpdir(), "job-"));
afterAll(() => rmSync(folder, { recursive: true }));

const demo = readFolder("demo-data", tables);
const job = demo.jobWritten ?? {};
const parts = demo.parts.map(({ part, written }) => ({ name: part.name, part: written }));
const text = (words: string) => new TextEncoder().encode(words);
const yaml = (name: string) => name.endsWith(".yaml");

/** What the archive holds, on the disk, by the tests' own way of unpacking it. */
function onDisk(name: string, bytes: Uint8Array): string {
  const at = join(folder, name);
  for (const [path, file] of Object.entries(unzipSync(bytes))) {
    mkdirSync(dirname(join(at, path)), { recursive: true });
    writeFileSync(join(at, path), file);
  }
  return at;
}
const opened = (bytes: Uint8Array) => {
  const reading = openJob(bytes, tables);
  if (reading.kind === "unreadable") throw new Error(reading.problem);
  return reading.value;
};

it("packs a job as the folder that a binder is built from: no problems, the very same parts, shop and job", () => {
  const read = readFolder(
    join(onDisk("demo", zipJob({ job, shop: demo.shopWritten, parts })), jobFolder(job)),
    tables,
  );
  expect(printProblems(read.problems)).toEqual([]);
  expect(read.parts.map(({ part }) => part)).toEqual(demo.parts.map(({ part }) => part));
  expect(read.shop).toEqual(demo.shop);
  expect(read.job).toEqual({ ...demo.job, parts: parts.map(({ name }) => name) });
});

it("packs what a folder without a shop holds, and no shop file", () => {
  const at = onDisk(
    "no-shop",
    zipJob({ job: { title: "No shop" }, shop: undefined, parts: parts.slice(0, 1) }),
  );
  // One folder of the job's name, so that nothing is strewn about where it is unpacked.
  expect(readdirSync(at)).toEqual(["no-shop"]);
  expect(readdirSync(join(at, "no-shop")).sort()).toEqual(["job.yaml", "parts"]);
  expect(printProblems(readFolder(join(at, "no-shop"), tables).problems)).toEqual([]);
});

it("gives the same bytes for the same job, whatever the clock says", () => {
  const zone = process.env["TZ"];
  const first = zipJob({ job, shop: demo.shopWritten, parts });
  process.env["TZ"] = "Pacific/Auckland";
  const second = zipJob({ job, shop: demo.shopWritten, parts });
  process.env["TZ"] = zone;
  expect(Buffer.from(first).equals(Buffer.from(second))).toBe(true);
  expect(new Uint8Array(first.slice(10, 14))).toEqual(new Uint8Array([0, 0, 33, 0]));
});

it("opens what it packed, and a folder packed by hand with one about it", () => {
  const packed = opened(zipJob({ job, shop: demo.shopWritten, parts }));
  expect(packed).toMatchObject({ shop: demo.shopWritten, unfit: [], problems: [] });
  expect(packed.parts).toEqual(parts);
  // As it was packed before there was a folder about it, and under a name that a folder in it has.
  const bare = Object.fromEntries(
    Object.entries(unzipSync(zipJob({ job, shop: demo.shopWritten, parts }))).map(([path, bytes]) => [
      path.replace(`${jobFolder(job)}/`, ""),
      bytes,
    ]),
  );
  expect(Object.keys(bare)).toContain("job.yaml");
  expect(opened(zipSync(bare)).parts).toEqual(parts);
  const few = parts.slice(0, 2);
  for (const title of ["Parts", "parts/job.yaml", "Ω", ".."])
    expect(opened(zipJob({ job: { ...job, title }, shop: undefined, parts: few }))).toMatchObject({
      problems: [],
      parts: few,
    });
  const files: Zippable = { "__MACOSX/my job/._job.yaml": text("\0"), "my job/.DS_Store": text("x") };
  for (const name of readdirSync("demo-data", { recursive: true, encoding: "utf8" }))
    if (yaml(name)) files[`my job/${name}`] = readFileSync(`demo-data/${name}`);
  const byHand = opened(zipSync(files));
  expect(byHand.problems).toEqual([]);
  expect(byHand.parts.map(({ name }) => name)).toEqual(parts.map(({ name }) => name));
});

it("names every problem with its file, as a folder on the disk would, and keeps good and bad parts apart", () => {
  const at = join(folder, "bad");
  cpSync("demo-data", at, { recursive: true });
  const one = join(at, "parts/seed-funnel.yaml");
  writeFileSync(one, readFileSync(one, "utf8").replace("thickness", "thicknes"));
  writeFileSync(join(at, "parts/not-yaml.yaml"), "a: [\n");
  writeFileSync(join(at, "stray.yaml"), "title: x\n");
  writeFileSync(
    join(at, "parts/large.yaml"),
    `${readFileSync("demo-data/parts/rain-cap.yaml", "utf8")}\n# ${"x".repeat(1_000_001)}`,
  );
  const files: Zippable = {};
  for (const name of readdirSync(at, { recursive: true, encoding: "utf8" }))
    if (yaml(name)) files[name] = readFileSync(join(at, name));
  const { problems, parts: good, unfit } = opened(zipSync(files));
  expect(problems).toHaveLength(4);
  expect(problems).toEqual(
    printProblems(readFolder(at, tables).problems).map((line) => line.replace(`${at}/`, "")),
  );
  expect(good.map(({ name }) => name)).not.toContain("seed-funnel");
  expect(unfit.map(({ name }) => name)).toEqual(["seed-funnel"]);
});

it("refuses a part that cannot be laid out, with the line of its file", () => {
  const flat = `shape: eccentric-cone
title: Flat
units: mm
material: s235
thickness: 1
largeEnd: { diameter: 4000, measured: middle }
smallEnd: { diameter: 10, measured: middle, offset: [0, 0] }
height: 1
`;
  const { problems } = opened(zipSync({ "parts/flat.yaml": text(flat) }));
  expect(problems).toHaveLength(1);
  expect(problems[0]).toMatch(/^parts\/flat\.yaml:5:12: thickness: 1 mm plate is thicker/);
  expect(openPart(text(flat), "flat.yaml", tables).problems).toEqual(
    problems.map((line) => line.replace("parts/", "")),
  );
});

it.each(["../evil.yaml", "parts/../../evil.yaml", "/etc/evil.yaml", "C:\\evil.yaml", "..\\evil.yaml"])(
  "reads nothing of an archive with the name %s in it",
  (name) => {
    const bytes = zipSync({ "job.yaml": text("title: x\n"), [name]: text("x: 1\n") });
    expect(openJob(bytes, tables)).toMatchObject({
      kind: "unreadable",
      problem: "a name in it leads out of its folder",
    });
    expect(existsSync(join(folder, "evil.yaml"))).toBe(false);
  },
);

it("reads all of an archive or nothing: cut off anywhere, or any byte of its files changed", () => {
  const whole = zipJob({ job, shop: undefined, parts: parts.slice(0, 3) });
  const begin = 30 + `${jobFolder(job)}/job.yaml`.length;
  const packed = new DataView(whole.buffer).getUint32(18, true);
  fc.assert(
    fc.property(even(0, 1), even(0, 1), (share, turn) => {
      const cut = whole.slice(0, Math.floor(share * (whole.length - 1)));
      expect(openJob(cut, tables).kind).toBe("unreadable");
      const changed = whole.slice();
      const at = begin + Math.floor(share * (packed - 1));
      changed[at] = (changed[at]! + 1 + Math.floor(turn * 254)) % 256;
      expect(openJob(changed, tables).kind).toBe("unreadable");
    }),
    runs(300),
  );
});

it("never throws for what somebody takes for an archive", () => {
  const whole = zipJob({ job, shop: undefined, parts: parts.slice(0, 2) });
  fc.assert(
    fc.property(fc.array(fc.tuple(even(0, 1), fc.nat(255)), { minLength: 1, maxLength: 20 }), (changes) => {
      const bytes = whole.slice();
      for (const [share, byte] of changes) bytes[Math.floor(share * bytes.length)] = byte;
      expect(["read", "unreadable"]).toContain(openJob(bytes, tables).kind);
    }),
    runs(500),
  );
  for (const bytes of [new Uint8Array(), text("PK"), text("x".repeat(100)), new Uint8Array(100)])
    expect(openJob(bytes, tables).kind).toBe("unreadable");
});

it("stops unpacking a file that grows beyond what it says, and leaves one alone that says it is too large", () => {
  const bomb = zipSync({ "parts/a.yaml": new Uint8Array(40_000_000) }, { level: 9 });
  expect(bomb.length).toBeLessThan(100_000);
  expect(unzip(bomb, yaml, 1_000_000)).toEqual({
    kind: "read",
    value: new Map([["parts/a.yaml", undefined]]),
  });
  expect(opened(bomb).problems[0]).toContain("it is larger than 1 MB");
  // The size in the archive's own list says less than comes out.
  const list = new DataView(bomb.buffer);
  list.setUint32(bomb.length - 22 - 46 - "parts/a.yaml".length + 24, 10, true);
  const begun = performance.now();
  expect(unzip(bomb, yaml, 1_000_000).kind).toBe("unreadable");
  expect(performance.now() - begun).toBeLessThan(2000);
});

it("counts what all files come to", () => {
  const files: Zippable = {};
  for (let i = 0; i < 60; i++) files[`parts/a${i}.yaml`] = new Uint8Array(999_999);
  expect(openJob(zipSync(files), tables)).toMatchObject({
    kind: "unreadable",
    problem: "it holds more than any job",
  });
});

it("opens a part file with its lines of problems, what it says beside them", () => {
  const good = readFileSync("demo-data/parts/rain-cap.yaml");
  expect(openPart(good, "rain-cap.yaml", tables)).toMatchObject({
    problems: [],
    typed: { name: "rain-cap" },
  });
  const bad = openPart(text("shape: right-cone\nthicknes: 4\n"), "my cone.yml", tables);
  expect(bad.problems.join("\n")).toContain(
    "my cone.yml:2:1: thicknes: is not a key here; did you mean thickness?",
  );
  expect(bad.problems.join("\n")).toContain("its name holds a space");
  expect(bad.typed?.part).toEqual({ shape: "right-cone", thicknes: "4" } satisfies TypedGroup);
  expect(openPart(new Uint8Array([0xff, 0xfe, 0]), "a.yaml", tables).problems).toEqual([
    "a.yaml:1:1: file: it is saved as UTF-16; save it as UTF-8 in the editor",
  ]);
});

it("knows a report of a part from a part", () => {
  const report = text(JSON.stringify({ part: { shape: "right-cone" }, shape: {}, forming: {} }));
  expect(openPart(report, "cone.json", tables)).toEqual({
    problems: [
      "cone.json is a part’s report, not a part file: open the file that the report was made from, or its page.",
    ],
    typed: undefined,
  });
});

it("does not ask for a picture to be renamed, but for a part that lies under another ending", () => {
  const neither = (file: string) => [
    `${file} is neither a part file, which ends in .yaml, nor a job’s folder packed as a .zip: choose one of these.`,
  ];
  // The signature of PNG (RFC 2083, 3.1), and a drawing that is text.
  const png = new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0]);
  expect(openPart(png, "cone.png", tables).problems).toEqual(neither("cone.png"));
  expect(openPart(text("0\nSECTION\n"), "my.cone.dxf", tables).problems).toEqual(neither("my.cone.dxf"));
  const good = readFileSync("demo-data/parts/rain-cap.yaml");
  for (const file of ["rain-cap.yaml.txt", "rain-cap", "rain-cap.part"])
    expect(openPart(good, file, tables).problems.join("\n"), file).toContain("rename it to end in .yaml");
});
