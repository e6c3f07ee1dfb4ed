import type { Tables } from "../../input/context.ts";
import { gaugeOf } from "../../input/gaugeName.ts";
import type { Job } from "../../input/readJob.ts";
import type { Report } from "../../report/report.ts";
import type { PartAround } from "../words/titleBlock.ts";
import type { Bench } from "./bench.svelte.ts";
import { remarks } from "./remarks.ts";

/** What stands on a sheet from the bench besides the part; undefined where its material is none of the catalogue's. */
export function aroundOf(
  bench: Bench,
  { part }: Report,
  { tables, job }: { readonly tables: Tables; readonly job: Job | null },
): PartAround | undefined {
  const material = tables.catalogue.materials[part.material];
  return (
    material && {
      shop: bench.shop.now,
      // A part that is not in the job does not go out under its name.
      job: job?.parts?.includes(bench.name) ? job : undefined,
      remarks: remarks(bench),
      material: material.name,
      gauge: gaugeOf(tables.gauges, material.family, part.thickness),
    }
  );
}
