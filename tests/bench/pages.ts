import { execFile } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";

const COUNT = 1000;
const run = promisify(execFile);

/** A job of many parts: the demo's, over and over, each a little thicker than the last so that none is a copy. */
function makeJob(folder: string): void {
  mkdirSync(join(folder, "parts"), { recursive: true });
  cpSync("demo-data/shop.yaml", join(folder, "shop.yaml"));
  const names = readdirSync("demo-data/parts");
  for (let i = 0; i < COUNT; i++) {
    const name = names[i % names.length] as string;
    const text = readFileSync(join("demo-data/parts", name), "utf8");
    writeFileSync(join(folder, "parts", `p${i}-${name}`), text.replace(/^title: .*$/m, `title: Part ${i}`));
  }
}

async function seconds(args: readonly string[], env: NodeJS.ProcessEnv): Promise<number> {
  const before = performance.now();
  await run("node_modules/.bin/astro", ["build", ...args], {
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: "1", ...env },
    maxBuffer: 1 << 28,
  });
  return (performance.now() - before) / 1000;
}

/** Building 1,000 part pages against building 1,000 empty ones, in the same run. */
export async function benchPages(): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), "slantwork-bench-"));
  try {
    makeJob(folder);
    const empty = await seconds(["--root", "tests/bench/empty", "--outDir", join(folder, "empty")], {
      PAGES: String(COUNT),
    });
    const parts = await seconds(["--outDir", join(folder, "parts-site")], { SLANTWORK_DATA: folder });
    console.log(
      `${COUNT} part pages: ${parts.toFixed(1)} s; ${COUNT} empty Astro pages: ${empty.toFixed(1)} s; ` +
        `parts/empty ${(parts / empty).toFixed(1)}`,
    );
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
