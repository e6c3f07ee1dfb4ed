import { execFileSync, spawnSync } from "node:child_process";
import {
  chmodSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { describe, expect, it } from "vitest";
import type { Report } from "../../src/report/report.ts";
import { USAGE } from "../../src/cli/arguments.ts";
import { run } from "../../src/cli/run.ts";
import { develop as core } from "../../src/report/develop.ts";

const GOOD = `shape: right-cone
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
`;
/** A folder with these files. */
function folderOf(files: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(join(tmpdir(), "develop-"));
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  return folder;
}

const develop = (folder: string, ...args: string[]) => run(args, { folder, develop: core });

const two = folderOf({
  "a.yaml": GOOD,
  "b.yaml": GOOD.replace("600", "700"),
  "bad.yaml": GOOD.replace("600", "-1").replace("500", "x"),
  "swapped.yaml": GOOD.replace("600", "100"),
  "shop.yaml": SHOP,
  "badshop.yaml": SHOP.replace("3000", "0"),
});

describe("a good part", () => {
  it("is printed as one report, and nothing else is said", () => {
    const { exitCode, stdout, stderr } = develop(two, "a.yaml");
    expect([exitCode, stderr]).toEqual([0, ""]);
    const report = JSON.parse(stdout) as Report;
    expect(report.part).toMatchObject({ name: "a", largeEnd: { diameter: 600 } });
    expect(report.blanks.length).toBeGreaterThan(0);
    expect(report.forming.machines).toEqual([]);
    // Points stand on one line each, so that a person can read and compare.
    expect(stdout).toMatch(/^ +\[-?[\d.]+, -?[\d.]+\],?$/m);
    expect(stdout.endsWith("}\n")).toBe(true);
  });

  it("is checked against the machines of a shop file", () => {
    const { exitCode, stdout } = develop(two, "a.yaml", "--shop", "shop.yaml");
    expect(exitCode).toBe(0);
    expect((JSON.parse(stdout) as Report).forming.machines.map(({ machine }) => machine)).toEqual(["Brake"]);
  });

  it("is printed in a list where several are asked for, in their order", () => {
    const { stdout } = develop(two, "b.yaml", "a.yaml");
    expect((JSON.parse(stdout) as Report[]).map(({ part }) => part.name)).toEqual(["b", "a"]);
  });

  it("comes out the same every time", () => {
    expect(develop(two, "a.yaml").stdout).toBe(develop(two, "a.yaml").stdout);
  });

  it("runs as the documented command, paths meant from where the user stands", () => {
    const path = `${resolve("node_modules/.bin")}:${process.env["PATH"] ?? ""}`;
    const stdout = execFileSync(
      "npm",
      ["--prefix", resolve("."), "run", "--silent", "develop", "--", "a.yaml"],
      {
        cwd: two,
        encoding: "utf8",
        env: { ...process.env, PATH: path, INIT_CWD: undefined },
      },
    );
    expect((JSON.parse(stdout) as Report).part.name).toBe("a");
  });
});

describe("a bad part", () => {
  it("has all its problems told, and nothing is printed", () => {
    expect(develop(two, "bad.yaml")).toEqual({
      exitCode: 1,
      stdout: "",
      stderr:
        "bad.yaml:6:23: largeEnd.diameter: -1 is not a size; give a number greater than 0\n" +
        "bad.yaml:8:9: height: x is not a length; give a number, as in 12.5\n",
    });
  });

  it("that only the geometry refuses is told at its place too", () => {
    const { exitCode, stdout, stderr } = develop(two, "swapped.yaml");
    expect([exitCode, stdout]).toEqual([1, ""]);
    expect(stderr).toMatch(/^swapped\.yaml:6:23: largeEnd\.diameter: .+; .+\n$/);
  });

  it("does not take the good ones with it", () => {
    const { exitCode, stdout, stderr } = develop(two, "bad.yaml", "a.yaml", "swapped.yaml");
    expect(exitCode).toBe(1);
    expect((JSON.parse(stdout) as Report[]).map(({ part }) => part.name)).toEqual(["a"]);
    expect(stderr.split("\n").map((line) => line.split(":")[0])).toEqual([
      "bad.yaml",
      "bad.yaml",
      "swapped.yaml",
      "",
    ]);
  });

  it.each([
    ["is not there", ["nix.yaml"], "nix.yaml:1:1: file: there is no such file; check its name and folder\n"],
    [
      "is not there, and no folder either,",
      ["nix"],
      "nix:1:1: file: there is no such file and no such folder; check its name and folder\n",
    ],
    [
      "is a folder beside another",
      ["bad.yaml", "."],
      ".:1:1: file: it is a folder; name a file\n.:1:1: file: its name does not end in .yaml; rename it to end in .yaml\n" +
        "bad.yaml:6:23: largeEnd.diameter: -1 is not a size; give a number greater than 0\n" +
        "bad.yaml:8:9: height: x is not a length; give a number, as in 12.5\n",
    ],
    ["is named twice", ["bad.yaml", "bad.yaml"], undefined],
  ])("that %s is told", (_, args, expected) => {
    const { exitCode, stdout, stderr } = develop(two, ...args);
    expect([exitCode, stdout]).toEqual([1, ""]);
    if (expected === undefined)
      expect(stderr).toContain("bad.yaml:1:1: file: this file is named twice; name it once\n");
    else expect(stderr).toBe(expected);
  });

  it("is a part checked against a shop file that is bad", () => {
    const { exitCode, stdout, stderr } = develop(two, "a.yaml", "--shop", "badshop.yaml");
    expect([exitCode, stdout]).toEqual([1, ""]);
    expect(stderr).toBe(
      "badshop.yaml:4:50: machines[1].bedLength: 0 is not a size; give a number greater than 0\n",
    );
  });
});

/** What a part of one pattern has written, in the order of a folder. */
const filesOf = (name: string) => ["csv", "dxf", "json", "svg"].map((ending) => `${name}.${ending}`);

describe("--out", () => {
  it("writes the same report and the cutting files into a folder that it makes, and no other file", () => {
    const folder = folderOf({ "a.yaml": GOOD, "bad.yaml": "" });
    const { exitCode, stdout, stderr } = develop(folder, "a.yaml", "--out", "new/reports");
    expect([exitCode, stderr]).toEqual([0, "develop: 4 files of 1 part were written into new/reports\n"]);
    expect(readdirSync(join(folder, "new/reports"))).toEqual(filesOf("a"));
    expect(readdirSync(join(folder, "new"))).toEqual(["reports"]);
    expect(readFileSync(join(folder, "new/reports/a.json"), "utf8")).toBe(stdout);
  });

  it("leaves on a screen no more than what was written; without it a screen shows the report", () => {
    const folder = folderOf({ "a.yaml": GOOD, "b.yaml": GOOD });
    const onScreen = (...args: string[]) => run(args, { folder, develop: core, screen: true });
    expect(onScreen("a.yaml", "b.yaml", "--out", "reports")).toEqual({
      exitCode: 0,
      stdout: "",
      stderr: "develop: 8 files of 2 parts were written into reports\n",
    });
    expect(readdirSync(join(folder, "reports"))).toEqual([...filesOf("a"), ...filesOf("b")]);
    expect(onScreen("a.yaml").stdout).toMatch(/^\{/);
  });

  it("writes the good parts of a list and nothing for the bad ones", () => {
    const folder = folderOf({ "a.yaml": GOOD, "bad.yaml": "" });
    expect(develop(folder, "bad.yaml", "a.yaml", "--out=reports").exitCode).toBe(1);
    expect(readdirSync(join(folder, "reports"))).toEqual(filesOf("a"));
  });

  it("replaces an older report", () => {
    const folder = folderOf({ "a.yaml": GOOD, "a.json": "old" });
    expect(develop(folder, "a.yaml", "--out", ".").exitCode).toBe(0);
    expect(readFileSync(join(folder, "a.json"), "utf8")).toMatch(/^\{/);
  });

  it("leaves no old report of a part that now fails, and names those of no part of a list", () => {
    const folder = folderOf({ "a.yaml": GOOD, "b.yaml": GOOD });
    expect(develop(folder, "a.yaml", "b.yaml", "--out", "reports").stderr).toBe(
      "develop: 8 files of 2 parts were written into reports\n",
    );
    writeFileSync(join(folder, "reports/gone.json"), "{}");
    writeFileSync(join(folder, "b.yaml"), GOOD.replace("600", "-1"));
    const { exitCode, stderr } = develop(folder, "a.yaml", "b.yaml", "--out", "reports");
    expect(exitCode).toBe(1);
    expect(stderr.split("\n").slice(1)).toEqual([
      ...filesOf("b").map((name) => `develop: reports/${name} was of an earlier run and is taken away`),
      "develop: 4 files of 1 part were written into reports",
      "develop: reports also holds what is of no part of this run and was left as it was: gone.json",
      "",
    ]);
    expect(readdirSync(join(folder, "reports"))).toEqual([...filesOf("a"), "gone.json"]);
    // A list of one is no list: nothing is said of the others.
    expect(develop(folder, "a.yaml", "--out", "reports").stderr).toBe(
      "develop: 4 files of 1 part were written into reports\n",
    );
  });

  it("leaves no old report where the shop file is bad, or the part is gone", () => {
    const folder = folderOf({ "a.yaml": GOOD, "shop.yaml": "name: x" });
    expect(develop(folder, "a.yaml", "--out", "reports").exitCode).toBe(0);
    expect(develop(folder, "a.yaml", "--shop", "shop.yaml", "--out", "reports").exitCode).toBe(1);
    expect(readdirSync(join(folder, "reports"))).toEqual([]);
    expect(develop(folder, "a.yaml", "--out", "reports").exitCode).toBe(0);
    rmSync(join(folder, "a.yaml"));
    expect(develop(folder, "a.yaml", "--out", "reports").stderr).toContain("a.json was of an earlier run");
    expect(readdirSync(join(folder, "reports"))).toEqual([]);
  });

  it("writes none of a list where one cannot be written whole", () => {
    const folder = folderOf({ "a.yaml": GOOD, "b.yaml": GOOD });
    mkdirSync(join(folder, "reports/b.svg/inner"), { recursive: true });
    writeFileSync(join(folder, "reports/a.dxf"), "old");
    expect(develop(folder, "a.yaml", "b.yaml", "--out", "reports").exitCode).toBe(1);
    expect(readdirSync(join(folder, "reports"))).toEqual(["a.dxf", "b.svg"]);
    expect(readFileSync(join(folder, "reports/a.dxf"), "utf8")).toBe("old");
  });

  it("makes no folder for a bad part", () => {
    const folder = folderOf({ "bad.yaml": "" });
    expect(develop(folder, "bad.yaml", "--out", "reports").exitCode).toBe(1);
    expect(existsSync(join(folder, "reports"))).toBe(false);
  });

  it("says in a sentence that a file is in the way", () => {
    const folder = folderOf({ "a.yaml": GOOD, reports: "" });
    expect(develop(folder, "a.yaml", "--out", "reports")).toEqual({
      exitCode: 1,
      stdout: "",
      stderr: "develop: the folder reports cannot be made: a file is in the way; give another folder\n",
    });
    expect(develop(folder, "a.yaml", "--out", "reports/inner").stderr).toBe(
      "develop: the folder reports/inner cannot be made: a file is in the way; give another folder\n",
    );
  });

  it("leaves no half-written file behind where one cannot be written", () => {
    const folder = folderOf({ "a.yaml": GOOD });
    mkdirSync(join(folder, "reports/a.json/inner"), { recursive: true });
    const { exitCode, stderr } = develop(folder, "a.yaml", "--out", "reports");
    expect(exitCode).toBe(1);
    expect(stderr).toBe(
      "develop: reports/a.json cannot be written: a folder of that name is in the way; give another folder\n",
    );
    expect(readdirSync(join(folder, "reports"))).toEqual(["a.json"]);
  });

  // Whoever runs as the owner of everything may write everywhere.
  it.skipIf(process.getuid?.() === 0)("says in a sentence that it may not write there", () => {
    const folder = folderOf({ "a.yaml": GOOD });
    mkdirSync(join(folder, "reports"));
    chmodSync(join(folder, "reports"), 0o500);
    expect(develop(folder, "a.yaml", "--out", "reports").stderr).toBe(
      "develop: nothing can be written into reports: you may not write there; give another folder\n",
    );
  });
});

describe("the command line", () => {
  it.each([["--help"], ["-h"], ["a.yaml --help"], ["--help --nonsense"]])(
    "%s prints how it is used",
    (line) => {
      expect(develop(two, ...line.split(" "))).toEqual({ exitCode: 0, stdout: USAGE, stderr: "" });
    },
  );

  it.each([
    ["", "no part file is named; give at least one .yaml file, or a job's folder"],
    ["--shop shop.yaml", "no part file is named; give at least one .yaml file, or a job's folder"],
    ["a.yaml --shpo shop.yaml", "there is no option --shpo; did you mean --shop?"],
    [
      "a.yaml --pretty",
      "there is no option --pretty; the options are --shop, --out, --inches, --trial, --machine, --help",
    ],
    [
      "a.yaml -o x",
      "there is no option -o; the options are --shop, --out, --inches, --trial, --machine, --help",
    ],
    ["a.yaml --shop", "--shop needs a file, as in --shop shop.yaml"],
    ["a.yaml --out --shop shop.yaml", "--out needs a folder, as in --out reports"],
    ["a.yaml --out=", "--out needs a folder, as in --out reports"],
    ["a.yaml --inches", "--inches is about the files that are written; give --out too"],
    ["a.yaml --out x --out y", "--out is given twice; give it once"],
  ])("%j is refused", (line, sentence) => {
    const args = line === "" ? [] : line.split(" ");
    // A screenful behind one wrong word would push the sentence out of sight.
    const more = line === "" ? `\n${USAGE}` : "npm run --silent develop -- --help tells how it is used\n";
    expect(develop(two, ...args)).toEqual({
      exitCode: 1,
      stdout: "",
      stderr: `develop: ${sentence}\n${more}`,
    });
  });

  it("takes a file whose name begins with a hyphen after --", () => {
    const folder = folderOf({ "-a.yaml": GOOD });
    expect((JSON.parse(develop(folder, "--", "-a.yaml").stdout) as Report).part.name).toBe("-a");
  });
});

describe("where nothing can be printed", () => {
  const program = `"${process.execPath}" --experimental-strip-types --no-warnings "${resolve("src/cli/develop.ts")}"`;
  const shell = (script: string, cwd = two) => spawnSync("bash", ["-c", script], { cwd, encoding: "utf8" });

  it("says in a line that its reader has stopped reading", () => {
    const { stdout, stderr } = shell(`(${program} a.yaml b.yaml; echo "exit $?" >&2) | head -c 10`);
    expect(stdout).toHaveLength(10);
    expect(stderr).toBe(
      "develop: the report could not be printed whole: whoever was to read it stopped reading; give --out to keep it in a file\nexit 1\n",
    );
  });

  it.skipIf(!existsSync("/dev/full"))("says in a line that the disk is full", () => {
    const { stderr, status } = shell(`${program} a.yaml > /dev/full`);
    expect(status).toBe(1);
    expect(stderr).toBe(
      "develop: the report could not be printed whole: the disk is full; make room, or print it elsewhere\n",
    );
    expect(shell(`${program} bad.yaml 2> /dev/full`).status).toBe(1);
  });

  it("says in a line that the folder is gone", () => {
    const folder = folderOf({});
    const { stderr, status } = shell(`rmdir "${folder}" && ${program} a.yaml`, folder);
    expect(status).toBe(1);
    expect(stderr).toBe(
      "develop: the folder that you stand in is no longer there; change to another folder\n",
    );
  });
});
