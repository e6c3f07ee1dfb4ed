import type { TypedGroup } from "../../../input/typed.ts";
import { typedYaml } from "../../../input/typedYaml.ts";
import { jobSlug } from "../../../job/jobName.ts";
import { zipTexts } from "../../bits/zip.ts";
import { trialsYaml } from "../../trials/keptTrials.ts";
import type { NamedTyped } from "../asTyped.ts";
import { machineNames } from "../ownTrials.ts";

/** What goes into a job's folder. */
export interface JobFiles {
  /** Title, reference, date and notes; the order of the parts is added. */
  readonly job: TypedGroup;
  readonly shop: TypedGroup | undefined;
  readonly parts: readonly NamedTyped[];
}

/** Trials on a roll that the shop does not have would stop the binder. */
const isOf = (shop: TypedGroup | undefined, machine: string): boolean =>
  !shop || machineNames(shop).includes(machine);

/** A part's file, and that of its trials beside it. */
function filesOf({ name, part, trials }: NamedTyped, shop: TypedGroup | undefined) {
  const own = { path: `parts/${name}.yaml`, text: typedYaml(part) };
  if (!trials || !isOf(shop, trials.machine)) return [own];
  const units = part["units"] === "in" ? "in" : "mm";
  const text = trialsYaml(trials.seen, { units, machine: trials.machine });
  return [own, { path: `parts/${name}.trials.yaml`, text }];
}

/** The folder that a job is packed in. A folder named "parts" would be taken for the one in which parts lie. */
export function jobFolder({ title }: TypedGroup): string {
  const name = jobSlug(typeof title === "string" ? title : "");
  return name === "parts" ? "parts-job" : name;
}

/** A job's folder in an archive, by its name, so that it stays together wherever it is unpacked; a binder is built from it. */
export function zipJob({ job, shop, parts }: JobFiles): Uint8Array<ArrayBuffer> {
  const folder = jobFolder(job);
  const texts = [
    { path: "job.yaml", text: typedYaml({ ...job, parts: parts.map(({ name }) => name) }) },
    ...(shop ? [{ path: "shop.yaml", text: typedYaml(shop) }] : []),
    ...parts.flatMap((one) => filesOf(one, shop)),
  ];
  return zipTexts(texts.map(({ path, text }) => ({ path: `${folder}/${path}`, text })));
}
