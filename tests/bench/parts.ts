import { readFileSync } from "node:fs";
import init from "replicad-opencascadejs";
import { Bench } from "tinybench";
import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import { readPart } from "../../src/input/readPart.ts";
import { readShop } from "../../src/input/readShop.ts";
import { develop } from "../../src/report/develop.ts";
import { kernelFrustum, kernelTransition } from "../outside/kernel.ts";

const tables = loadCatalogue();
const shopPath = "demo-data/shop.yaml";
const { value: shop } = readShop(readFileSync(shopPath, "utf8"), { path: shopPath, ...tables });

/** All the work on one part file: text, checks, blanks, forming, JSON. */
function fromTextToReport(text: string, path: string): number {
  const { part } = readPart(text, { path, ...tables });
  if (!part) throw new Error(`${path} cannot be read`);
  const developed = develop(part, { catalogue: tables.catalogue, ...(shop && { shop }) });
  if (developed.kind === "refused") throw new Error(`${path} cannot be laid out`);
  return JSON.stringify(developed.report).length;
}

/**
 * One part from text to report, against a general geometry kernel that only builds the same ruled surface and measures
 * it. The kernel gives no pattern; its time is the yardstick that is the same on every machine.
 */
export async function benchParts(): Promise<void> {
  const oc = await init();
  const cases = [
    {
      name: "eccentric cone",
      path: "demo-data/parts/feed-spout-reducer.yaml",
      kernel: () => kernelFrustum(oc, { R: 448, r: 198, h: 700, e: 150 }),
    },
    {
      name: "square-to-round",
      path: "demo-data/parts/fan-inlet.yaml",
      kernel: () => kernelTransition(oc, { a: 600, b: 400, r: 150, h: 500, x: 30, y: 20 }),
    },
  ];
  for (const { name, path, kernel } of cases) {
    const text = readFileSync(path, "utf8");
    const bench = new Bench({ time: 1500, warmupTime: 500 });
    bench.add("report", () => {
      fromTextToReport(text, path);
    });
    bench.add("kernel", () => {
      kernel();
    });
    await bench.run();
    const [report, surface] = bench.tasks.map(({ result }) =>
      "latency" in result ? result.latency.p50 : Number.NaN,
    ) as [number, number];
    console.log(
      `${name}: ${report.toFixed(2)} ms from text to report (${(1000 / report).toFixed(0)} parts/s); ` +
        `kernel ${surface.toFixed(2)} ms for the bare surface; kernel/report ${(surface / report).toFixed(2)}`,
    );
  }
}
