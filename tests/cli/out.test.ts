import { spawnSync } from "node:child_process";
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import DxfParser, { type IPolylineEntity } from "dxf-parser";
import { unzipSync } from "fflate";
import { afterAll, afterEach, beforeAll, describe, expect, it } from "vitest";
import { run } from "../../src/cli/run.ts";
import { putFiles } from "../../src/cli/putFiles.ts";
import { develop as core } from "../../src/report/develop.ts";
import { readBinder } from "../../src/site/binder/binder.ts";
import { archiveBytes } from "../../src/site/job/cuttingFiles.ts";

const base = mkdtempSync(join(tmpdir(), "out-"));
afterAll(() => rmSync(base, { recursive: true }));
let count = 0;
const fresh = (files: Readonly<Record<string, string>> = {}): string => {
  if (files === JOB) quick();
  const folder = join(base, String(count++));
  mkdirSync(folder);
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(join(folder, name, ".."), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  return folder;
};
const develop = (folder: string, ...args: string[]) => run(args, { folder, develop: core });
/** Files of a folder and of those in it, with what they hold. */
const held = (folder: string): Record<string, string> =>
  Object.fromEntries(
    readdirSync(folder, { recursive: true, encoding: "utf8" })
      .filter((name) => statSync(join(folder, name)).isFile())
      .sort()
      .map((name) => [name, readFileSync(join(folder, name), "utf8")]),
  );

const CONE = `shape: right-cone
title: Sand trap
units: mm
material: s235
thickness: 4
largeEnd: { diameter: 600, measured: outside }
smallEnd: { diameter: 200, measured: outside }
height: 500
`;
const SHOP = `name: Test shop
units: mm
machines:
  - { kind: press brake, name: Brake, bedLength: 3000, forceKN: 1000, dies: [40] }
stock:
  - { material: s235, thickness: 4, length: 3000, width: 1500 }
`;
const JOB = { "parts/a.yaml": CONE, "parts/b.yaml": CONE.replace("600", "700"), "shop.yaml": SHOP };

/** Which plates come out does not matter here. */
const quick = (): void => {
  process.env["SLANTWORK_EFFORT"] = "0.01";
};
afterEach(() => delete process.env["SLANTWORK_EFFORT"]);

describe("--out of a job's folder", () => {
  let whole: string;
  beforeAll(() => {
    whole = fresh();
    cpSync("demo-data", join(whole, "job"), { recursive: true });
  });

  it("writes what the binder's archive holds, letter for letter", () => {
    const { exitCode, stdout, stderr } = develop(whole, "job", "--out", "cut");
    expect([exitCode, stderr]).toEqual([0, ""]);
    const archive = unzipSync(archiveBytes(readBinder()));
    const texts = Object.fromEntries(
      Object.entries(archive).map(([name, bytes]) => [name, Buffer.from(bytes).toString("utf8")]),
    );
    expect(held(join(whole, "cut"))).toEqual(texts);
    expect(stdout).toBe(
      `${Object.keys(texts).length} files were written into cut; cut/list.csv tells what each is for\n` +
        "1 part does not go here, on no machine of the shop: crusher-throat. Its files were made all the same; do not cut before that is settled\n",
    );
    expect(readdirSync(whole)).toEqual(["cut", "job"]);
  });

  it("prints all reports where no files are asked for", () => {
    const folder = fresh(JOB);
    const { stdout, exitCode } = develop(folder, ".");
    expect(exitCode).toBe(0);
    expect((JSON.parse(stdout) as { part: { name: string } }[]).map(({ part }) => part.name)).toEqual([
      "a",
      "b",
    ]);
  });

  it("writes nothing where anything in the job is wrong, and leaves what an earlier run wrote", () => {
    const folder = fresh(JOB);
    expect(develop(folder, ".", "--out", "cut").exitCode).toBe(0);
    const before = held(join(folder, "cut"));
    writeFileSync(join(folder, "parts/b.yaml"), CONE.replace("600", "100"));
    const { exitCode, stdout, stderr } = develop(folder, ".", "--out", "cut");
    expect([exitCode, stdout]).toEqual([1, ""]);
    expect(stderr).toMatch(/^parts\/b\.yaml:6:23: largeEnd\.diameter: .*\ndevelop: nothing was written\n$/);
    expect(held(join(folder, "cut"))).toEqual(before);
  });

  it("takes away files of parts that the job no longer has, and leaves what is not its own", () => {
    const folder = fresh(JOB);
    expect(develop(folder, ".", "--out", "cut").exitCode).toBe(0);
    writeFileSync(join(folder, "cut/parts/mine.txt"), "mine");
    rmSync(join(folder, "parts/b.yaml"));
    const { exitCode, stderr } = develop(folder, ".", "--out", "cut");
    expect(exitCode).toBe(0);
    expect(stderr.split("\n").filter((line) => line !== "")).toEqual(
      ["dxf", "svg", "csv", "json"].map(
        (ending) => `develop: cut/parts/b.${ending} was of an earlier run and is taken away`,
      ),
    );
    expect(readdirSync(join(folder, "cut/parts")).sort()).toEqual([
      "a.csv",
      "a.dxf",
      "a.json",
      "a.svg",
      "mine.txt",
    ]);
    expect(develop(folder, ".", "--out", "cut").stderr).toBe("");
  });

  it("never writes over what it did not write, nor follows a list out of its folder", () => {
    quick();
    const folder = fresh({ ...JOB, "cut/list.csv": "my own list\n", "treasure.csv": "gold" });
    const { exitCode, stderr } = develop(folder, ".", "--out", "cut");
    expect(exitCode).toBe(1);
    expect(stderr).toBe(
      "develop: cut/list.csv is there already and was not written by an earlier run; give another folder, or take it away. Nothing was written\n",
    );
    expect(held(join(folder, "cut"))).toEqual({ "list.csv": "my own list\n" });
    rmSync(join(folder, "cut"), { recursive: true });
    expect(develop(folder, ".", "--out", "cut").exitCode).toBe(0);
    const list = join(folder, "cut/list.csv");
    writeFileSync(
      list,
      `${readFileSync(list, "utf8")}../treasure.csv,,,,,,,,\r\nparts/../../treasure.csv,,,,,,,,\r\n`,
    );
    expect(develop(folder, ".", "--out", "cut").exitCode).toBe(0);
    expect(existsSync(join(folder, "treasure.csv"))).toBe(true);
  });

  it.each([
    [
      [".", "--shop", "shop.yaml"],
      "develop: . is a job's folder and has its own shop.yaml; leave out --shop\n",
    ],
    [[".", "--out", "."], "develop: . is the job's own folder; give another folder\n"],
    [["parts"], "parts/parts:1:1: file: there are no part files; put a .yaml file for each part here\n"],
  ])("%j is refused", (args, words) => {
    const { exitCode, stdout, stderr } = develop(fresh(JOB), ...args);
    expect([exitCode, stdout]).toEqual([1, ""]);
    expect(stderr).toContain(words);
  });

  it("says what is wrong with an effort", () => {
    const folder = fresh(JOB);
    process.env["SLANTWORK_EFFORT"] = "much";
    const { stderr } = develop(folder, ".", "--out", "cut");
    expect(stderr).toBe("develop: SLANTWORK_EFFORT=much: give a number up to 100, as in 20\n");
  });
});

describe("--inches", () => {
  it("writes DXF in inches beside that in millimetres, of parts and plates alike", () => {
    const folder = fresh(JOB);
    expect(develop(folder, ".", "--out", "cut", "--inches").exitCode).toBe(0);
    const names = Object.keys(held(join(folder, "cut")));
    const inches = names.filter((name) => name.endsWith("-inches.dxf"));
    expect(inches).toEqual([
      "parts/a-inches.dxf",
      "parts/b-inches.dxf",
      "plates/s235-4-mm-plate-1-inches.dxf",
    ]);
    const widest = (name: string) => {
      const read = new DxfParser().parseSync(readFileSync(join(folder, "cut", name), "utf8"))!;
      const [cut] = read.entities.filter(({ layer }) => layer === "CUT") as IPolylineEntity[];
      return Math.max(...cut!.vertices.map(({ x }) => x));
    };
    for (const name of inches)
      expect(25.4 * widest(name)).toBeCloseTo(widest(name.replace("-inches", "")), 4);
    expect(develop(folder, "parts/a.yaml", "--out", "flat", "--inches").exitCode).toBe(0);
    expect(readdirSync(join(folder, "flat"))).toEqual(["a-inches.dxf", "a.csv", "a.dxf", "a.json", "a.svg"]);
    // Asked for no more: what is left in inches would pass for new.
    expect(develop(folder, "parts/a.yaml", "--out", "flat").stderr).toBe(
      "develop: flat/a-inches.dxf was of an earlier run and is taken away\ndevelop: 4 files of 1 part were written into flat\n",
    );
  });
});

describe("where it cannot be written", () => {
  const program = resolve("src/cli/develop.ts");
  const shell = (script: string, cwd: string) =>
    spawnSync("bash", ["-c", script], { cwd, encoding: "utf8", timeout: 30_000 });
  const command = `"${process.execPath}" --experimental-strip-types --no-warnings "${program}"`;

  it.skipIf(!existsSync("/proc/self"))(
    "comes to an end where the system makes no folders, and says so",
    () => {
      for (const out of ["/proc/x", "/proc/x/y/z"]) {
        const { status, stderr } = shell(`${command} a.yaml --out ${out}`, fresh({ "a.yaml": CONE }));
        expect(status).toBe(1);
        expect(stderr).toBe(
          `develop: the folder ${out} cannot be made: the system makes no files or folders there; give a folder on a disk\n`,
        );
      }
    },
  );

  it("leaves nothing at all of a new folder, where one file does not go on the disk", () => {
    const folder = fresh({ "a.yaml": CONE });
    // A limit that the first files keep, as a disk has room for some; in blocks of 1024 bytes.
    const { status, stderr } = shell(`ulimit -f 24; ${command} a.yaml --out new/cut`, folder);
    expect(status).toBe(1);
    expect(stderr).toBe(
      "develop: new/cut/a.json cannot be written: the system allows no file so large; give a folder on another disk\n",
    );
    expect(readdirSync(folder)).toEqual(["a.yaml"]);
  });

  it("leaves an old folder as it was, where one file does not go on the disk", () => {
    const folder = fresh({ "a.yaml": CONE, "cut/a.dxf": "old", "cut/a-piece-2.dxf": "older" });
    expect(shell(`ulimit -f 24; ${command} a.yaml --out cut`, folder).status).toBe(1);
    expect(held(join(folder, "cut"))).toEqual({ "a-piece-2.dxf": "older", "a.dxf": "old" });
    expect(readdirSync(join(folder, "cut")).sort()).toEqual(["a-piece-2.dxf", "a.dxf"]);
  });

  it("puts back what was replaced and taken away, where a later file cannot be put in its place", () => {
    const folder = fresh({ "one.csv": "old one", "two.csv": "old two", "z/inner.txt": "in the way" });
    const before = held(folder);
    const files = [
      { name: "deep/er/new.csv", text: "new" },
      { name: "one.csv", text: "new one" },
      { name: "z", text: "a file called as a folder is" },
    ];
    expect(putFiles({ folder, shown: "here" }, files, ["two.csv"])).toEqual({
      kind: "failed",
      sentence: "here/z cannot be written: a folder of that name is in the way; give another folder",
    });
    expect(held(folder)).toEqual(before);
    expect(readdirSync(folder).sort()).toEqual(["one.csv", "two.csv", "z"]);
    renameSync(join(folder, "z"), join(folder, "y"));
    expect(putFiles({ folder, shown: "here" }, files, ["two.csv", "three.csv"])).toEqual({
      kind: "put",
      takenAway: ["two.csv"],
    });
    expect(Object.keys(held(folder))).toEqual(["deep/er/new.csv", "one.csv", "y/inner.txt", "z"]);
  });

  it("is a folder like any other to whoever looks in, once it is made", () => {
    const folder = fresh({ "a.yaml": CONE });
    expect(develop(folder, "a.yaml", "--out", "new").exitCode).toBe(0);
    mkdirSync(join(folder, "plain"));
    expect(statSync(join(folder, "new")).mode).toBe(statSync(join(folder, "plain")).mode);
  });
});
