import { strToU8, zipSync, type Zippable } from "fflate";
import type { TypedGroup } from "../../../input/typed.ts";
import { typedYaml } from "../../../input/typedYaml.ts";
import type { NamedTyped } from "../asTyped.ts";

/** What goes into a job's folder. */
export interface JobFiles {
  /** Title, reference, date and notes; the order of the parts is added. */
  readonly job: TypedGroup;
  readonly shop: TypedGroup | undefined;
  readonly parts: readonly NamedTyped[];
}

/** The earliest that an archive can say, on every clock alike: the same job gives the same bytes. */
const noTime = (): Date => new Date(1980, 0, 1);

/** A job's folder in an archive, as a binder is built from it once it has been unpacked. */
export function zipJob({ job, shop, parts }: JobFiles): Uint8Array<ArrayBuffer> {
  const files: Zippable = {
    "job.yaml": strToU8(typedYaml({ ...job, parts: parts.map(({ name }) => name) })),
    ...(shop && { "shop.yaml": strToU8(typedYaml(shop)) }),
  };
  for (const { name, part } of parts) files[`parts/${name}.yaml`] = strToU8(typedYaml(part));
  return zipSync(files, { mtime: noTime(), level: 9 });
}
