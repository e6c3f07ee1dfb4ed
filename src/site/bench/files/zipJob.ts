import { strToU8, zipSync, type Zippable } from "fflate";
import type { TypedGroup } from "../../../input/typed.ts";
import { typedYaml } from "../../../input/typedYaml.ts";
import { trialsYaml } from "../../trials/keptTrials.ts";
import type { NamedTyped } from "../link.ts";
import { machineNames } from "../ownTrials.ts";

/** What goes into a job's folder. */
export interface JobFiles {
  /** Title, reference, date and notes; the order of the parts is added. */
  readonly job: TypedGroup;
  readonly shop: TypedGroup | undefined;
  readonly parts: readonly NamedTyped[];
}

/** The earliest that an archive can say, on every clock alike: the same job gives the same bytes. */
const noTime = (): Date => new Date(1980, 0, 1);

/** Trials on a roll that the shop does not have would stop the binder. */
const isOf = (shop: TypedGroup | undefined, machine: string): boolean =>
  !shop || machineNames(shop).includes(machine);

/** A job's folder in an archive, as a binder is built from it once it has been unpacked. */
export function zipJob({ job, shop, parts }: JobFiles): Uint8Array<ArrayBuffer> {
  const files: Zippable = {
    "job.yaml": strToU8(typedYaml({ ...job, parts: parts.map(({ name }) => name) })),
    ...(shop && { "shop.yaml": strToU8(typedYaml(shop)) }),
  };
  for (const { name, part, trials } of parts) {
    files[`parts/${name}.yaml`] = strToU8(typedYaml(part));
    if (!trials || !isOf(shop, trials.machine)) continue;
    const units = part["units"] === "in" ? "in" : "mm";
    files[`parts/${name}.trials.yaml`] = strToU8(trialsYaml(trials.seen, { units, machine: trials.machine }));
  }
  return zipSync(files, { mtime: noTime(), level: 9 });
}
