import type { Tables } from "../../input/context.ts";
import { gaugeOf } from "../../input/gaugeName.ts";
import type { Job } from "../../input/readJob.ts";
import type { Shaped } from "../../report/report.ts";
import type { PartAround } from "../words/titleBlock.ts";
import type { Bench } from "./bench.svelte.ts";
import { remarks } from "./remarks.ts";

/** What the sheets of a part say besides its report: whose they are, and how they came about. */
export function aroundOf(bench: Bench, { part }: Shaped, tables: Tables, job: Job | null): PartAround {
  const material = tables.catalogue.materials[part.material];
  if (!material) throw new RangeError(`material: ${part.material}`);
  return {
    shop: bench.shop,
    // A part that is not in the job does not go out under its name.
    job: job?.parts?.includes(bench.name) ? job : undefined,
    remarks: remarks(bench),
    material: material.name,
    gauge: gaugeOf(tables.gauges, material.family, part.thickness),
  };
}
