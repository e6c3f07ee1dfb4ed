import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, it } from "vitest";
import { bindJob } from "../../src/cli/bindJob.ts";
import { run } from "../../src/cli/run.ts";
import { develop } from "../../src/report/develop.ts";

const folder = mkdtempSync(join(tmpdir(), "slantwork-trials-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
mkdirSync(join(folder, "job/parts"), { recursive: true });
cpSync("demo-data/shop.yaml", join(folder, "job/shop.yaml"));
cpSync("demo-data/parts/overflow-shift.yaml", join(folder, "job/parts/overflow-shift.yaml"));
const kept = join(folder, "job/parts/overflow-shift.trials.yaml");
const good = readFileSync("demo-data/parts/overflow-shift.trials.yaml", "utf8");
const row = (text: string) => `units: mm\nmachine: Big roll\ntrials:\n  - { ${text} }\n`;

const PART = "job/parts/overflow-shift.yaml";
const asJob = () => run(["job"], { folder, develop });
const asPart = () => run([PART, "--shop", "job/shop.yaml"], { folder, develop });

it.each([
  ["zone: 99, setting: 67, large: 993, small: 722", /there is no zone 99: the blank has zones 1 to \d+$/],
  ["setting: 67, gap: 400", /an eccentric cone has no one closure to correct by/],
  ["zone: 1, setting: 20000, large: 993, small: 722", /a setting of 20000 mm lies beyond the slide/],
  [
    "zone: 1, setting: 67, large: 0.001, small: 722",
    /an inside radius of less than 0\.01 mm at the large end/,
  ],
])("trials that give no setting (%s) are told, and the part is worked out", (text, why) => {
  writeFileSync(kept, row(text));
  const told =
    /^develop: job\/parts\/overflow-shift\.trials\.yaml: these trials give no next setting: (.*)\n$/;
  for (const { stdout, stderr, exitCode } of [asJob(), asPart()]) {
    expect(exitCode).toBe(0);
    expect(stdout).toContain('"overflow-shift"');
    expect(told.exec(stderr)?.[1]).toMatch(why);
  }
});

it("trials that give one are not told, and nor is a part without any", () => {
  writeFileSync(kept, good);
  expect([asJob(), asPart()].map(({ stderr }) => stderr)).toEqual(["", ""]);
  rmSync(kept);
  expect([asJob(), asPart()].map(({ stderr }) => stderr)).toEqual(["", ""]);
});

it("the binder tells them too, and is written", () => {
  writeFileSync(kept, row("zone: 99, setting: 67, large: 993, small: 722"));
  const { stdout, stderr } = bindJob(["job", "--only", "job"], { folder, dataFolder: undefined });
  expect(stdout).toMatch(/^binder\.pdf: \d+ pages\n$/);
  expect(stderr).toMatch(
    /^binder: job\/parts\/overflow-shift\.trials\.yaml: these trials give no next setting: there is no zone 99/,
  );
});
