import type { TypedGroup } from "../../../input/typed.ts";
import { typedYaml } from "../../../input/typedYaml.ts";
import { zipTexts } from "../../bits/zip.ts";
import type { NamedTyped } from "../link.ts";

/** What goes into a job's folder. */
export interface JobFiles {
  /** Title, reference, date and notes; the order of the parts is added. */
  readonly job: TypedGroup;
  readonly shop: TypedGroup | undefined;
  readonly parts: readonly NamedTyped[];
}

/** A job's folder in an archive, as a binder is built from it once it has been unpacked. */
export function zipJob({ job, shop, parts }: JobFiles): Uint8Array<ArrayBuffer> {
  return zipTexts([
    { path: "job.yaml", text: typedYaml({ ...job, parts: parts.map(({ name }) => name) }) },
    ...(shop ? [{ path: "shop.yaml", text: typedYaml(shop) }] : []),
    ...parts.map(({ name, part }) => ({ path: `parts/${name}.yaml`, text: typedYaml(part) })),
  ]);
}
