import { globSync, readFileSync } from "node:fs";
import { basename } from "node:path";
import { describe, expect, it } from "vitest";
import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import { readJob } from "../../src/input/readJob.ts";
import { readPart } from "../../src/input/readPart.ts";
import { readShop } from "../../src/input/readShop.ts";
import { develop } from "../../src/report/develop.ts";

/** The invented shop and job must show, between them, everything that a shop can meet. */
const tables = loadCatalogue("content");
const text = (path: string) => readFileSync(path, "utf8");
/** A file with two dots in its name holds trials and no part. */
const paths = globSync("demo-data/parts/*.yaml")
  .filter((path) => !path.includes(".trials."))
  .sort();
const names = paths.map((path) => basename(path, ".yaml")).sort();

const shop = readShop(text("demo-data/shop.yaml"), { path: "demo-data/shop.yaml", ...tables });
const job = readJob(text("demo-data/job.yaml"), { path: "demo-data/job.yaml", ...tables }, names);
const parts = paths.map((path) => readPart(text(path), { path, ...tables }));
const reports = parts.flatMap(({ part }) => {
  if (!part || !shop.value) return [];
  const developed = develop(part, { catalogue: tables.catalogue, shop: shop.value });
  return developed.kind === "report" ? [developed.report] : [];
});
const report = (name: string) => reports.find(({ part }) => part.name === name)!;
const verdictOn = (name: string, machine: string) =>
  report(name).forming.machines.find((one) => one.machine === machine)!.verdict;

it("is read without a problem", () => {
  expect([shop, job, ...parts].flatMap(({ problems }) => problems)).toEqual([]);
});

it("is developed part by part, none refused", () => {
  expect(reports.map(({ part }) => part.name).sort()).toEqual(names);
});

it("lists every part of the folder once in its order of work", () => {
  expect([...(job.value?.parts ?? [])].sort()).toEqual(names);
});

describe("among its parts there is", () => {
  const read = parts.flatMap(({ part }) => part ?? []);
  const files = paths.map(text);
  it.each([
    ["a cone by its height", () => read.some((p) => p.shape === "right-cone" && p.height !== undefined)],
    ["a cone by its slant", () => read.some((p) => p.shape === "right-cone" && p.slant !== undefined)],
    [
      "a cone by its half angle",
      () => read.some((p) => p.shape === "right-cone" && p.halfAngle !== undefined),
    ],
    [
      "a right cone to a point",
      () => read.some((p) => p.shape === "right-cone" && p.smallEnd.diameter === 0),
    ],
    [
      "an eccentric cone to a point",
      () => read.some((p) => p.shape === "eccentric-cone" && p.smallEnd.diameter === 0),
    ],
    [
      "a pipe",
      () => read.some((p) => p.shape === "right-cone" && p.smallEnd.diameter === p.largeEnd.diameter),
    ],
    [
      "a leaning pipe",
      () => read.some((p) => p.shape === "eccentric-cone" && p.smallEnd.diameter === p.largeEnd.diameter),
    ],
    [
      "a square-to-round on centre",
      () => read.some((p) => p.shape === "square-to-round" && !p.roundEnd.offset),
    ],
    [
      "a square-to-round offset both ways",
      () => read.some((p) => p.shape === "square-to-round" && p.roundEnd.offset?.every((by) => by !== 0)),
    ],
    ["one with square edges", () => read.some((p) => p.edges === "square")],
    ["one with a trim allowance", () => read.some((p) => p.trimAllowance)],
    ["a lap seam", () => read.some((p) => p.seam?.joint === "lap")],
    ["a mirrored pattern", () => read.some((p) => p.mirror)],
    ["a part in three pieces", () => read.some((p) => p.pieces === 3)],
    ["a mill certificate", () => read.some((p) => p.certificate)],
    ["plate of 12 mm", () => read.some((p) => p.thickness === 12)],
    ["four materials or more", () => new Set(read.map((p) => p.material)).size >= 4],
    ["a file in inches", () => read.some((p) => p.units === "in")],
    ["a size in feet and inches", () => files.some((file) => /\d' \d+-\d+\/\d+"/.test(file))],
    ["a thickness by gauge", () => files.some((file) => /thickness: \d+ ga$/m.test(file))],
  ])("%s", (_, found) => {
    expect(found()).toBe(true);
  });
});

describe("its machines answer", () => {
  it("that the thick cone is too much for the small roll and goes on the big one", () => {
    expect(verdictOn("scalper-cone", "Small roll")).toBe("fail");
    expect(verdictOn("scalper-cone", "Big roll")).not.toBe("fail");
  });
  it("that the cyclone cone goes on the small roll, its small end being too narrow for the big one", () => {
    expect(verdictOn("dust-cyclone-cone", "Small roll")).toBe("pass");
    expect(verdictOn("dust-cyclone-cone", "Big roll")).toBe("fail");
  });
  it("that no machine takes the throat liner", () => {
    expect(report("crusher-throat").forming.machines.map(({ verdict }) => verdict)).toEqual([
      "fail",
      "fail",
      "fail",
    ]);
  });
  it("with every verdict there is", () => {
    expect(new Set(reports.map(({ forming }) => forming.verdict))).toEqual(
      new Set(["pass", "caution", "fail"]),
    );
  });
});

it("has stock that holds every blank", () => {
  const short = reports.filter(({ forming }) =>
    forming.checks.some(({ id, verdict }) => id === "stock-plate" && verdict !== "pass"),
  );
  expect(short.map(({ part }) => part.name)).toEqual([]);
});

it("shows both hands of one part: their blanks are alike, with the other face up", () => {
  const outlines = (name: string) =>
    report(name)
      .blanks.map(({ areaMm2 }) => areaMm2)
      .sort((a, b) => a - b);
  const [right, left] = [outlines("screw-feed-transition"), outlines("screw-feed-transition-left")];
  for (const [i, area] of right.entries()) expect(left[i]! / area).toBeCloseTo(1, 6);
  expect(report("screw-feed-transition-left").blanks[0]!.faceUp).toBe("outside");
  expect(report("screw-feed-transition").blanks[0]!.faceUp).toBe("inside");
});
