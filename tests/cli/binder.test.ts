import { spawnSync } from "node:child_process";
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
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { bindJob } from "../../src/cli/bindJob.ts";
import { BINDER_USAGE, readBinderArguments } from "../../src/cli/binderArguments.ts";
import { readPlaces } from "../output/pdfPlaces.ts";

const folder = mkdtempSync(join(tmpdir(), "slantwork-binder-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const made = (...args: string[]) => bindJob(args, { folder, dataFolder: undefined });

beforeAll(() => {
  mkdirSync(join(folder, "job/parts"), { recursive: true });
  cpSync("demo-data/parts/rain-cap.yaml", join(folder, "job/parts/rain-cap.yaml"));
  mkdirSync(join(folder, "bad/parts"), { recursive: true });
  const text = readFileSync("demo-data/parts/rain-cap.yaml", "utf8");
  writeFileSync(join(folder, "bad/parts/cap.yaml"), text.replace("thickness:", "thicknes:"));
});
const left = () => readdirSync(folder).filter((name) => !["job", "bad"].includes(name));

describe("the words of the command", () => {
  it.each([
    [["--papr", "a4"], "there is no option --papr; did you mean --paper?"],
    [["--paper", "a3"], "--paper a3 is not known; give a4 or letter"],
    [["--paper"], "--paper needs a paper, a4 or letter"],
    [["--only", "all"], "--only all is not known; give job or reference"],
    [["--only=job", "--only=job"], "--only is given twice; give it once"],
    [["a", "b"], "a binder is of one folder; a and b are named"],
    [["--out", "x.txt"], "--out x.txt is no name of a PDF; let it end in .pdf"],
    [
      ["job", "--only", "reference"],
      "the reference half is of no job; leave out the folder, or --only reference",
    ],
    [[""], "the folder has an empty name; give the folder that holds parts/"],
  ])("%j is told", (args, sentence) => {
    expect(readBinderArguments(args)).toEqual({ kind: "wrong", sentence });
    expect(made(...args)).toEqual({
      stdout: "",
      stderr: `binder: ${sentence}\nnpm run --silent binder -- --help tells how it is used\n`,
      exitCode: 1,
    });
  });

  it("are read, in any order, with or without a sign between", () => {
    expect(readBinderArguments(["--out=x.pdf", "job", "--paper", "Letter"])).toEqual({
      kind: "binder",
      folder: "job",
      paper: "letter",
      which: "all",
      out: "x.pdf",
    });
    expect(readBinderArguments(["--", "-odd"])).toMatchObject({ folder: "-odd", out: "binder.pdf" });
    expect(made("--help")).toEqual({ stdout: BINDER_USAGE, stderr: "", exitCode: 0 });
  });
});

describe("the file", () => {
  it("is written whole, over what stood there, and says how many pages it has", async () => {
    writeFileSync(join(folder, "x.pdf"), "old");
    const { stdout, stderr, exitCode } = made("job", "--only", "job", "--out", "x.pdf");
    expect({ stderr, exitCode }).toEqual({ stderr: "", exitCode: 0 });
    const { pages } = await readPlaces(new Uint8Array(readFileSync(join(folder, "x.pdf"))));
    expect(stdout).toBe(`x.pdf: ${pages.length} pages\n`);
    expect(left()).toEqual(["x.pdf"]);
  });

  it("has its folder made where that is not there, as develop does", () => {
    const { stdout, stderr, exitCode } = made("--only", "reference", "--out", "some/new/x.pdf");
    expect({ stderr, exitCode }).toEqual({ stderr: "", exitCode: 0 });
    expect(stdout).toMatch(/^some\/new\/x\.pdf: \d+ pages\n$/);
    expect(readdirSync(join(folder, "some/new"))).toEqual(["x.pdf"]);
    rmSync(join(folder, "some"), { recursive: true });
  });

  it.skipIf(!existsSync("/proc/self"))("is refused where the system makes no folder", () => {
    expect(made("--only", "reference", "--out", "/proc/none/x.pdf").stderr).toContain(
      "/proc/none/x.pdf cannot be written: the system makes no folder there; give a folder on a disk",
    );
  });

  it.skipIf(!existsSync("/proc/self"))(
    "is refused where the system makes none, and the folder is there",
    () => {
      expect(made("--only", "reference", "--out", "/proc/x.pdf").stderr).toContain(
        "/proc/x.pdf cannot be written: the system makes no files in that folder; give a folder on a disk",
      );
    },
  );

  it.each([
    ["x.pdf/y.pdf", "x.pdf/y.pdf cannot be written: what should be its folder is a file; give another place"],
    [
      "x.pdf/a/y.pdf",
      "x.pdf/a/y.pdf cannot be written: what should be its folder is a file; give another place",
    ],
    [
      `made/for/it/${"n".repeat(300)}.pdf`,
      `made/for/it/${"n".repeat(300)}.pdf cannot be written: its name is too long; give a shorter one`,
    ],
    ["dir.pdf", "dir.pdf cannot be written: a folder of that name is in the way; give another name"],
    [
      `${"n".repeat(300)}.pdf`,
      `${"n".repeat(300)}.pdf cannot be written: its name is too long; give a shorter one`,
    ],
  ])("%s is refused in a sentence", (out, sentence) => {
    mkdirSync(join(folder, "dir.pdf"), { recursive: true });
    writeFileSync(join(folder, "x.pdf"), "old");
    expect(made("--only", "reference", "--out", out)).toEqual({
      stdout: "",
      stderr: `binder: ${sentence}\n`,
      exitCode: 1,
    });
    expect(readFileSync(join(folder, "x.pdf"), "utf8")).toBe("old");
    expect(left()).toEqual(["dir.pdf", "x.pdf"]);
  });

  it("is not written from a folder with mistakes; they are told as the folder was named, and what stood there stays", () => {
    writeFileSync(join(folder, "x.pdf"), "old");
    const { stdout, stderr, exitCode } = made("bad", "--out", "x.pdf");
    expect({ stdout, exitCode }).toEqual({ stdout: "", exitCode: 1 });
    expect(stderr).toMatch(
      /^binder: 1 problem in the folder, so that no PDF is written\nbad\/parts\/cap\.yaml:\d+:1: thicknes: /,
    );
    expect(made("nowhere", "--out", "x.pdf").stderr).toContain("nowhere:1:1: file: there is no such folder");
    expect(readFileSync(join(folder, "x.pdf"), "utf8")).toBe("old");
  });

  it("leaves nothing behind where it does not go on the disk, and says why as develop does", () => {
    // The system lets the command write so many blocks of a file and no more.
    const { stdout, stderr, status } = spawnSync(
      "sh",
      [
        "-c",
        'ulimit -f 16; exec "$@"',
        "sh",
        process.execPath,
        "--experimental-strip-types",
        "--no-warnings",
        "src/cli/binder.ts",
        "--only",
        "reference",
        "--out",
        join(folder, "full.pdf"),
      ],
      { encoding: "utf8" },
    );
    expect({ stdout, status }).toEqual({ stdout: "", status: 1 });
    expect(stderr).toMatch(
      /full\.pdf cannot be written: the system allows no file so large; give a place on another disk\n$/,
    );
    expect(left().filter((name) => name.includes("full"))).toEqual([]);
  });
});

it("tells the signs that the font has not", () => {
  mkdirSync(join(folder, "job/parts"), { recursive: true });
  writeFileSync(join(folder, "job/job.yaml"), "title: 漢 line\n");
  const { stderr, exitCode } = made("job", "--only", "job", "--out", "signs.pdf");
  rmSync(join(folder, "job/job.yaml"));
  expect(exitCode).toBe(0);
  expect(stderr).toBe(
    "binder: the font has no 漢 (U+6F22); a question mark is printed for it, first in: 漢 line\n",
  );
});
