import { execFileSync, spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { printJson } from "../../src/output/json.ts";

const folder = mkdtempSync(join(tmpdir(), "slantwork-cli-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const GOOD = "demo-data/parts/feed-spout-reducer.yaml";
const SHOP = "demo-data/shop.yaml";

const develop = (...args: string[]) =>
  spawnSync("npm", ["run", "--silent", "develop", "--", ...args], { encoding: "utf8" });

const file = (name: string, text: string): string => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};
const bad = file("bad.yaml", readFileSync(GOOD, "utf8").replace("thickness: 4", "thicknes: -4"));

interface Named {
  part: { name: string };
  forming: { machine: string | null; machines: unknown[] };
}

describe("develop", () => {
  it("prints one report for one part, with the shop's answers", () => {
    const { stdout, stderr, status } = develop(GOOD, "--shop", SHOP);
    expect({ stderr, status }).toEqual({ stderr: "", status: 0 });
    const report = JSON.parse(stdout) as Named;
    expect(report.part.name).toBe("feed-spout-reducer");
    expect(report.forming.machine).toBe("Big roll");
    expect(report.forming.machines).toHaveLength(3);
    expect(printJson(report)).toBe(stdout.trimEnd());
  });

  it("prints a list for several, and knows no machine without a shop", () => {
    const { stdout, status } = develop(GOOD, "demo-data/parts/rain-cap.yaml");
    expect(status).toBe(0);
    const reports = JSON.parse(stdout) as Named[];
    expect(reports.map(({ part }) => part.name)).toEqual(["feed-spout-reducer", "rain-cap"]);
    expect(reports[0]!.forming.machine).toBeNull();
  });

  it("tells what is wrong on standard error, prints nothing and exits with 1", () => {
    const { stdout, stderr, status } = develop(bad);
    expect({ stdout, status }).toEqual({ stdout: "", status: 1 });
    expect(stderr).toMatch(/bad\.yaml:5:1: thicknes: .*did you mean thickness\?/);
  });

  it("gives the good part's report beside the bad part's problems", () => {
    const { stdout, stderr, status } = develop(bad, GOOD);
    expect(status).toBe(1);
    expect(stderr).toContain("thicknes");
    expect((JSON.parse(stdout) as Named[]).map(({ part }) => part.name)).toEqual(["feed-spout-reducer"]);
  });

  it("points at the line of what the geometry refuses", () => {
    const swapped = file(
      "swapped.yaml",
      readFileSync(GOOD, "utf8").replace("diameter: 400", "diameter: 950"),
    );
    const { stderr, status } = develop(swapped);
    expect(status).toBe(1);
    expect(stderr).toBe(
      `${swapped}:6:23: largeEnd.diameter: the large end is smaller than the small end; swap them\n`,
    );
  });

  it("writes whole files into a new folder and leaves nothing else there", () => {
    const out = join(folder, "new", "reports");
    expect(develop(GOOD, bad, "--out", out).status).toBe(1);
    expect(readdirSync(out)).toEqual(
      ["csv", "dxf", "json", "svg"].map((ending) => `feed-spout-reducer.${ending}`),
    );
    const written = readFileSync(join(out, "feed-spout-reducer.json"), "utf8");
    expect((JSON.parse(written) as Named).part.name).toBe("feed-spout-reducer");
  });

  it.each([
    ["no part", [], "develop: no part file is named; give at least one .yaml file, or a job's folder"],
    ["an unknown option", [GOOD, "--shp", SHOP], "develop: there is no option --shp; did you mean --shop?"],
    [
      "a missing file",
      ["nowhere.yaml"],
      "nowhere.yaml:1:1: file: there is no such file; check its name and folder",
    ],
  ])("says what is wrong with %s", (_, args, sentence) => {
    const { stdout, stderr, status } = develop(...args);
    expect({ stdout, status }).toEqual({ stdout: "", status: 1 });
    expect(stderr.split("\n")[0]).toBe(sentence);
  });

  it("says in one sentence that a folder cannot be made", () => {
    const { stdout, stderr, status } = develop(GOOD, "--out", join(bad, "inside"));
    expect({ stdout, status }).toEqual({ stdout: "", status: 1 });
    expect(stderr).toMatch(
      /^develop: the folder .* cannot be made: a file is in the way; give another folder\n$/,
    );
    expect(existsSync(join(bad, "inside"))).toBe(false);
  });

  it("explains itself", () => {
    expect(
      execFileSync("npm", ["run", "--silent", "develop", "--", "--help"], { encoding: "utf8" }),
    ).toContain("Usage: npm run --silent develop -- part.yaml");
  });
});
