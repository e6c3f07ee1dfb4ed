import { execFileSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** Sizes of job that are compared, each with the one before. [parts] */
const SIZES = [10, 100, 1000];

/** A job of so many parts: the demo's, over and over, under names of their own. */
function makeJob(folder: string, count: number): void {
  mkdirSync(join(folder, "parts"), { recursive: true });
  // Without stock: how plates are searched is measured elsewhere.
  const shop = readFileSync("demo-data/shop.yaml", "utf8");
  writeFileSync(join(folder, "shop.yaml"), shop.slice(0, shop.indexOf("\nstock:")));
  const names = readdirSync("demo-data/parts").filter((name) => !name.includes(".trials."));
  for (let i = 0; i < count; i++) {
    const name = names[i % names.length] ?? "";
    cpSync(join("demo-data/parts", name), join(folder, "parts", `p${String(i).padStart(4, "0")}-${name}`));
  }
}

interface Run {
  /** Of the processor: others may be at work beside it. */
  readonly seconds: number;
  /** Most memory that was held at once. [MB] */
  readonly megabytes: number;
  readonly pages: number;
}

/** The command as a user runs it, in a process of its own, so that one size does not warm up the next. */
function bind(folder: string): Run {
  const code = `
    const { bindJob } = await import("./src/cli/bindJob.ts");
    const { stdout, stderr } = bindJob([${JSON.stringify(folder)}, "--only", "job", "--out", ${JSON.stringify(join(folder, "binder.pdf"))}], { folder: ".", dataFolder: undefined });
    process.stderr.write(stderr);
    const pages = Number(/(\\d+) pages/.exec(stdout)[1]);
    console.log(JSON.stringify({ seconds: process.resourceUsage().userCPUTime / 1e6, megabytes: process.resourceUsage().maxRSS / 1024, pages }));`;
  const out = execFileSync(
    process.execPath,
    ["--experimental-strip-types", "--no-warnings", "--input-type=module", "-e", code],
    { encoding: "utf8", maxBuffer: 1 << 24 },
  );
  return JSON.parse(out) as Run;
}

/** Time and memory of the binder as one PDF for 10, 100 and 1,000 parts: both may grow ten times from one to the next, and no more. */
export function benchBinder(): void {
  let before: Run | undefined;
  for (const count of SIZES) {
    const folder = mkdtempSync(join(tmpdir(), "slantwork-bench-"));
    try {
      makeJob(folder, count);
      const run = bind(folder);
      const times = before
        ? `; against a tenth of the parts: time ×${(run.seconds / before.seconds).toFixed(1)}, memory ×${(run.megabytes / before.megabytes).toFixed(1)}, pages ×${(run.pages / before.pages).toFixed(1)}`
        : "";
      console.log(
        `binder of ${count} parts: ${run.pages} pages, ${run.seconds.toFixed(1)} s, ${run.megabytes.toFixed(0)} MB${times}`,
      );
      before = run;
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  }
}
