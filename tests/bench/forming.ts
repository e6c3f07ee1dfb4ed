import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import { readFolder } from "../../src/input/readFolder.ts";
import { keptOf } from "../../src/input/readTrials.ts";
import { formedOf } from "../../src/report/formed.ts";
import { layOut } from "../../src/report/layOut.ts";
import { shapedOf } from "../../src/report/shaped.ts";

/** The engine compiles what runs often: both sides are asked warm, as in a job of many parts. */
const [WARM_UP, ROUNDS] = [150, 100];

/** Processor time of some work, collecting garbage included: unlike the clock it does not run on while others work. [ms] */
function spent(work: () => unknown): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

/**
 * What forming adds to a report, for every part of the demo job: with all checks, settings, brake lines, work sheets and kept
 * trials on every machine of the shop it should be less than the report takes without. Those are the two halves of what
 * `develop` does, from part to rounded numbers; they are timed by turns, so that a slower stretch of the machine falls on both.
 */
export function benchForming(): void {
  const tables = loadCatalogue();
  const { parts, shop } = readFolder("demo-data", tables);
  const above: string[] = [];
  const job = { development: 0, forming: 0 };
  console.log("Forming against development, processor time");
  for (const { part, trials } of parts) {
    const laid = layOut(part, tables);
    if (laid.kind === "refused") throw new Error(`${part.name} cannot be laid out`);
    const develop = () => {
      const made = layOut(part, tables);
      return made.kind === "laid" && shapedOf(part, made);
    };
    const kept = trials && keptOf(trials);
    const form = () => formedOf(part, laid, { shop, trials: kept });
    const spentOn = { development: 0, forming: 0 };
    for (let round = 0; round < WARM_UP + ROUNDS; round++) {
      const [development, forming] = [spent(develop), spent(form)];
      if (round < WARM_UP) continue;
      spentOn.development += development / ROUNDS;
      spentOn.forming += forming / ROUNDS;
    }
    const { development, forming } = spentOn;
    const ratio = forming / development;
    if (ratio > 1) above.push(part.name);
    job.development += development;
    job.forming += forming;
    console.log(
      `  ${part.name.padEnd(28)} ${forming.toFixed(2)} ms / ${development.toFixed(2)} ms = ${ratio.toFixed(2)}`,
    );
  }
  console.log(`  ${"the whole job".padEnd(28)} ${(job.forming / job.development).toFixed(2)}`);
  console.log(
    above.length === 0
      ? "  no part takes longer to form than to develop"
      : `  longer to form than to develop: ${above.join(", ")}`,
  );
}
