import { mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { run } from "../../src/cli/run.ts";
import { readFolder } from "../../src/input/readFolder.ts";
import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import { develop } from "../../src/report/develop.ts";

const folder = mkdtempSync(join(tmpdir(), "slantwork-trial-"));
for (const name of ["dust-cyclone-cone", "feed-spout-reducer", "overflow-shift"])
  writeFileSync(join(folder, `${name}.yaml`), readFileSync(`demo-data/parts/${name}.yaml`));
writeFileSync(join(folder, "kept.yaml"), readFileSync("demo-data/parts/dust-cyclone-cone.yaml"));
writeFileSync(join(folder, "shop.yaml"), readFileSync("demo-data/shop.yaml"));
const TRIALS = "units: mm\nmachine: Small roll\ntrials:\n  - { setting: 21, gap: 1350 }\n";
writeFileSync(join(folder, "kept.trials.yaml"), TRIALS);

const cli = (...args: string[]) => run(args, { folder, develop });
const trial = (...args: string[]) => cli("dust-cyclone-cone.yaml", "--shop", "shop.yaml", ...args);
const SMALL = ["--machine", "Small roll"];

interface Correction {
  kind: string;
  nextMm: number;
  next: Record<"largeMm" | "smallMm" | "smallBearingMm" | "largeBearingMm", number> | null;
  secondPass: Correction["next"];
  by: string;
  trials: { closed: number }[];
  advice: string;
}
const answer = (...args: string[]) => {
  const { stdout, stderr, exitCode } = trial(...SMALL, ...args);
  expect({ stderr, exitCode }).toEqual({ stderr: "", exitCode: 0 });
  return JSON.parse(stdout) as Correction;
};

describe("develop --trial", () => {
  it("gives the next setting, by the offset after one trial and by the slope after two", () => {
    const one = answer("--trial", "setting=21,gap=1350");
    expect(one).toMatchObject({
      part: "dust-cyclone-cone",
      machine: "Small roll",
      kind: "raise",
      by: "offset",
    });
    expect(one.nextMm).toBeGreaterThan(21);
    const two = answer("--trial", "setting=21,gap=1350", "--trial", "setting=24,gap=1000");
    expect(two).toMatchObject({ kind: "raise", by: "slope" });
    expect(two.trials).toHaveLength(2);
    expect(answer("--trial", "setting=26,gap=600").kind).toBe("done");
    expect(answer("--trial", "setting=26,closed=72%").kind).toBe("done");
    expect(answer("--trial", "setting=1in,flat").trials[0]!.closed).toBeCloseTo(Math.sin(0.2946), 2);
    expect(answer("--trial", "setting=30,gap=200").kind).toBe("overshot");
  });

  it("takes the trials kept next to the part first, and them alone if asked", () => {
    const alone = cli("kept.yaml", "--shop", "shop.yaml", "--trial", "file");
    expect(JSON.parse(alone.stdout)).toMatchObject({ machine: "Small roll", trials: [{ settingMm: 21 }] });
    const more = cli("kept.yaml", "--shop", "shop.yaml", "--trial", "setting=24,gap=1000");
    expect(JSON.parse(more.stdout)).toMatchObject({
      by: "slope",
      trials: [{ settingMm: 21 }, { settingMm: 24 }],
    });
    // On another machine they say nothing.
    const other = cli(
      "kept.yaml",
      "--shop",
      "shop.yaml",
      "--machine",
      "Big roll",
      "--trial",
      "setting=60,gap=1000",
    );
    // Nor is any setting named for a roll that its checks refuse the part.
    expect(other.stdout).toBe("");
    expect(other.stderr).toMatch(/Big roll does not take this part\. /);
  });

  it.each([
    ["setting=21,gap=-19000", /an overlap of 19000 mm is longer than the edge itself/],
    ["setting=19000,closed=50", /lies beyond the slide, which goes to/],
    ["setting=21,gap=19000", /longer than the edge itself/],
  ])("names no setting that the slide does not have, after %s", (word, why) => {
    const { stdout, stderr, exitCode } = trial(...SMALL, "--trial", word);
    expect({ stdout, exitCode }).toEqual({ stdout: "", exitCode: 1 });
    expect(stderr).toMatch(why);
  });

  it.each(["setting=1,closed=99.99", "setting=5,gap=500"])(
    "asks whether so little was the raise, and keeps no setting for the lot, after %s",
    (word) => {
      const { stdout, exitCode } = trial(...SMALL, "--trial", word);
      expect(exitCode).toBe(0);
      const answer = JSON.parse(stdout) as {
        kind: string;
        set: unknown;
        secondPass: unknown;
        advice: string;
      };
      expect(answer).toMatchObject({ kind: "check", set: null, secondPass: null });
      expect(answer.advice).toMatch(/Was it raised by no more than [15] mm, counted from the flat plate\?/);
      expect(answer.advice).not.toMatch(/this pass is done/);
    },
  );

  it("takes an overlap as past the cap: stop, and less for the next blank", () => {
    for (const word of ["setting=30,gap=-40", "setting=30,closed=105 %"]) {
      const past = answer("--trial", word);
      expect(past).toMatchObject({ kind: "overshot", trials: [{ place: "past the cap" }] });
      expect(past.advice).toMatch(/past its cap of 85 %\. Stop: do not roll on with this blank/);
      expect(past.nextMm).toBeLessThan(30);
    }
  });

  it("names both edges and both bearings, moved alike, and after a trial in the window the second pass", () => {
    const { next, nextMm, secondPass, advice } = answer("--trial", "setting=21,gap=1350");
    const report = JSON.parse(trial().stdout) as {
      forming: { plans: { machine: string; settings: unknown }[] };
    };
    const { settings } = report.forming.plans.find(({ machine }) => machine === "Small roll") as {
      settings: { zones: { passes: { id: string; start: Record<string, number> }[] }[] };
    };
    const start = (id: string) => settings.zones[0]!.passes.find((one) => one.id === id)!.start;
    const places = ["largeMm", "smallMm", "smallBearingMm", "largeBearingMm"] as const;
    const moves = places.map((place) => next![place] - start("trial")[place]!);
    for (const move of moves) expect(move).toBeCloseTo(nextMm - start("trial")["largeMm"]!, 5);
    expect(secondPass).toBeNull();
    for (const place of places) expect(advice).toContain(`${next![place].toFixed(1).replace(/\.0$/, "")} mm`);
    const done = answer("--trial", "setting=26,closed=72");
    expect(done.next).toBeNull();
    const moved = places.map((place) => done.secondPass![place] - start("finished")[place]!);
    for (const move of moved) expect(move).toBeCloseTo(moved[0]!, 5);
    expect(done.advice).toMatch(
      /Second pass: start at .* at the large edge and .* at the small edge \(at the bearings/,
    );
  });

  it("asks whether a raise far beyond the plan's high is a reading of the scale", () => {
    const { kind, nextMm, advice } = answer("--trial", "setting=120,gap=1350");
    expect({ kind, nextMm }).toEqual({ kind: "check", nextMm: null });
    expect(advice).toMatch(/^Is that the scale's reading, 120 mm\? .* take the reading at 0 off/);
  });

  it("says that two trials do not agree", () => {
    const two = (first: string, second: string) =>
      (JSON.parse(trial(...SMALL, "--trial", first, "--trial", second).stdout) as { advice: string }).advice;
    expect(two("setting=21,closed=60", "setting=24,closed=40")).toContain("do not agree");
    expect(two("setting=21,closed=60", "setting=21,closed=40")).toContain("do not agree");
    expect(two("setting=21,closed=50", "setting=23,closed=60")).not.toContain("do not agree");
  });

  it("does not take the file of trials for a part", () => {
    const { stdout, exitCode } = cli("kept.yaml", "kept.trials.yaml");
    expect(exitCode).toBe(0);
    expect((JSON.parse(stdout) as { part: { name: string } }).part.name).toBe("kept");
    expect(readFolder("demo-data", loadCatalogue()).problems).toEqual([]);
  });

  it.each([
    [["--trial", "setting=21"], /needs a setting and one thing that came out/],
    [["--trial", "gap=21"], /needs a setting and one thing that came out/],
    [["--trial", "setting=21,gap=5,flat"], /one thing that came out/],
    [["--trial", "setting=x,gap=5"], /not a length/],
    [["--trial", "setting=21,gab=5"], /no use for gab/],
    [["--trial", "setting=0,flat"], /nought or less/],
    [["--trial", "setting=5,closed=160"], /from 0 to 150, above 100 where the edges overlap/],
    [["--trial", "file"], /there is no trial yet/],
    [
      ["--trial", "parts/cyclone.trials.yaml"],
      /parts\/cyclone\.trials\.yaml looks like a path: --trial file takes .* where file is that very word/,
    ],
    [["--trial", "cyclone.YML"], /looks like a path/],
    [["--trial", "fil"], /has no use for fil;/],
    [["--trial", "setting=5,flat", "--out", "x"], /leave out --out/],
    [["--machine", "Small roll"], /goes with --trial/],
  ])("%j is told as a mistake", (args, words) => {
    const { stderr, exitCode } = trial(...args);
    expect(exitCode).toBe(1);
    expect(stderr).toMatch(words);
  });

  it("asks which roll it was, and says why there is no answer", () => {
    expect(trial("--trial", "setting=21,flat").stderr).toMatch(/say on which roll.*Small roll, Big roll/);
    expect(trial("--machine", "No roll", "--trial", "setting=21,flat").stderr).toMatch(
      /no plate roll called No roll/,
    );
    const uneven = cli(
      "feed-spout-reducer.yaml",
      "--shop",
      "shop.yaml",
      "--machine",
      "Big roll",
      "--trial",
      "setting=21,gap=800",
    );
    expect(uneven.stderr).toMatch(/has no one closure to correct by: give the zone, and the inside radius/);
    expect(cli("kept.yaml", "--trial", "setting=21,flat").stderr).toMatch(/give the shop file/);
    writeFileSync(join(folder, "feed-spout-reducer.trials.yaml"), TRIALS.replace("gap: 1350", "gab: 1350"));
    const bad = cli("feed-spout-reducer.yaml", "--shop", "shop.yaml", "--trial", "file");
    expect(bad.stderr).toMatch(/feed-spout-reducer\.trials\.yaml:4:20: trials\[1\]\.gab: .*did you mean gap/);
  });
});

describe("develop --trial of an eccentric cone", () => {
  interface Zones {
    zones: { zone: number; kind: string; set: Correction["next"]; from: number[]; trials: unknown[] }[];
    taught: string;
  }
  const shift = (...words: string[]) =>
    cli(
      "overflow-shift.yaml",
      "--shop",
      "shop.yaml",
      "--machine",
      "Big roll",
      ...words.flatMap((word) => ["--trial", word]),
    );
  const zonesOf = (...words: string[]) => JSON.parse(shift(...words).stdout) as Zones;

  it("gives every zone its next setting, and those not tried yet what the others taught", () => {
    const { zones, taught } = zonesOf("zone=2,setting=70,large=1200,small=870");
    expect(zones.map(({ kind }) => kind)).toEqual(["taught", "raise", "taught"]);
    expect(zones[0]!.from).toEqual([2]);
    expect(taught).toMatch(/^By zone 2 this plate on this roll asks about /);
    const two = zonesOf("zone=2,setting=70,large=1200,small=870", "zone=1,setting=75,large=1000,small=730");
    expect(two.taught).toMatch(/^By zones 1 and 2 .* for each further millimetre of the model's/);
  });

  it("takes a depth under a straightedge for the radius that it shows", () => {
    const depth = (radius: number) => radius - Math.sqrt(radius ** 2 - 150 ** 2);
    const byDepth = zonesOf(`zone=1,setting=70,chord=300,largeDepth=${depth(1000)},smallDepth=${depth(730)}`);
    const byRadius = zonesOf("zone=1,setting=70,large=1000,small=730");
    expect(byDepth.zones[0]!.set!.largeMm).toBeCloseTo(byRadius.zones[0]!.set!.largeMm, 4);
  });

  it.each([
    ["zone=4,setting=70,large=1000,small=730", /there is no zone 4: the blank has zones 1 to 3/],
    ["zone=1,setting=70,large=1000", /measured at one end only/],
    ["zone=0,setting=70,flat", /a zone is a number from 1 to 99/],
    ["zone=1,setting=70,gap=800", /a zone has no gap and no closure/],
    ["zone=1,setting=70,chord=300,large=900,small=700", /a depth is measured under a straightedge/],
    ["zone=1,setting=70,largeDepth=9,smallDepth=12", /give chord, its length/],
    ["zone=1,setting=70,chord=20,largeDepth=11,smallDepth=8", /more than half the straightedge/],
    ["zone=1,setting=70,large=-9,small=7", /nought or less/],
    ["zone=1,setting=70", /one thing that came out/],
  ])("%s is told as a mistake", (word, words) => {
    const { stderr, exitCode } = shift(word);
    expect(exitCode).toBe(1);
    expect(stderr).toMatch(words);
  });

  it("corrects a right cone as a whole, whatever zone somebody writes", () => {
    expect(trial(...SMALL, "--trial", "zone=1,setting=21,large=900,small=300").stderr).toMatch(
      /corrected as a whole: give the gap/,
    );
  });

  it("starts the sheet from trials kept beside the part", () => {
    const rows = "  - { zone: 2, setting: 70, large: 1200, small: 870 }\n";
    writeFileSync(
      join(folder, "overflow-shift.trials.yaml"),
      `units: mm\nmachine: Big roll\ntrials:\n${rows}`,
    );
    const report = JSON.parse(cli("overflow-shift.yaml", "--shop", "shop.yaml").stdout) as {
      forming: {
        plans: { steps: { id: string; text: string; toNote: { label: string; planned?: number }[] }[] }[];
      };
    };
    const raise = report.forming.plans[0]!.steps.find(({ id }) => id === "first-raise")!;
    expect(raise.text).toMatch(
      /^By this part's own trials.*Zone 1: .* start at .*Zone 2: .*: set .*Zone 3: .* start at /,
    );
    const { zones } = zonesOf("file");
    // A row a zone, in the order of the zones; those that mirror each other share theirs.
    const large = raise.toNote.filter(({ label }) => label === "large edge, set");
    expect(large).toHaveLength(2);
    expect(large[0]!.planned).toBeCloseTo(zones[0]!.set!.largeMm, 1);
    expect(large[1]!.planned).toBeCloseTo(zones[1]!.set!.largeMm, 1);
  });
});

describe("both bearings as they were read", () => {
  it("stand in place of the setting, and the answer is for both of them", () => {
    const { bearings, nextMm } = answer(
      "--trial",
      "drop=190,fixed=162,dropAt0=150,fixedAt0=150,gap=1350",
    ) as {
      bearings: { sum: string; set: { dropScaleMm: number; fixedScaleMm: number; dropMm: number } };
    } & Correction;
    expect(bearings.sum).toMatch(
      /drop end 190 − 150 = 40 mm, fixed end 162 − 150 = 12 mm; .* at the large edge/,
    );
    expect(bearings.set.dropScaleMm - 190).toBeCloseTo(bearings.set.fixedScaleMm - 162, 5);
    expect(nextMm).toBeGreaterThan(25);
  });

  it.each([
    ["drop=38,gap=1350", /one bearing alone does not say.*give drop and fixed/],
    ["setting=20,dropAt0=3,fixedAt0=3,gap=1350", /readings at 0 go with those of the trial/],
    ["drop=38,fixed=12,fixedAt0=3,gap=1350", /the reading at 0 of one bearing is left out/],
    ["drop=38,fixed=12", /needs a setting and one thing that came out/],
    [
      "setting=50,drop=38,fixed=12,gap=1350",
      /the trial setting=50.*50 mm is not what the two bearings come to.*leave out/,
    ],
  ])("are refused: %s", (word, why) => {
    expect(trial(...SMALL, "--trial", word)).toMatchObject({ stdout: "", exitCode: 1 });
    expect(trial(...SMALL, "--trial", word).stderr).toMatch(why);
  });

  it("are told with file, line and field where the file's own raise is another", () => {
    const part = "askew.yaml";
    writeFileSync(join(folder, part), readFileSync("demo-data/parts/dust-cyclone-cone.yaml"));
    const rows =
      "  - { drop: 38, fixed: 12, gap: 1350 }\n  - { setting: 50, drop: 40, fixed: 14, gap: 1200 }\n";
    writeFileSync(join(folder, "askew.trials.yaml"), `units: mm\nmachine: Small roll\ntrials:\n${rows}`);
    const { stderr, exitCode } = cli(part, "--shop", "shop.yaml", "--trial", "file");
    expect(exitCode).toBe(1);
    expect(stderr).toMatch(
      /^askew\.trials\.yaml:5:16: trials\[2\]\.setting: 50 mm is not what the two bearings come to/,
    );
    // A report starts from the plan, and says why.
    expect(cli(part, "--shop", "shop.yaml").stderr).toMatch(
      /askew.trials.yaml: .*no next setting: trial 2: 50 mm is not/,
    );
    writeFileSync(
      join(folder, "askew.trials.yaml"),
      `units: mm\nmachine: Small roll\ntrials:\n${rows.split("\n")[0]!}\n`,
    );
    expect(JSON.parse(cli(part, "--shop", "shop.yaml", "--trial", "file").stdout)).toMatchObject({
      bearings: { set: { dropScaleMm: null } },
    });
    const wrong = "  - { drop: 38, gap: 1350 }\n";
    writeFileSync(join(folder, "askew.trials.yaml"), `units: mm\nmachine: Small roll\ntrials:\n${wrong}`);
    expect(cli(part, "--shop", "shop.yaml", "--trial", "file").stderr).toMatch(
      /^askew\.trials\.yaml:4:5: trials\[1\]: one bearing alone/,
    );
  });
});
