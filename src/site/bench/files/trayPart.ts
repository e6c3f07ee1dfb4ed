import type { Shop } from "../../../forming/machine.ts";
import type { Tables } from "../../../input/context.ts";
import type { JobPart } from "../../../job/job.ts";
import { formedOf } from "../../../report/formed.ts";
import { layOut } from "../../../report/layOut.ts";
import { shapedOf } from "../../../report/shaped.ts";
import { jobPartOf } from "../../job/jobPart.ts";
import type { NamedTyped } from "../asTyped.ts";
import { readTypedPart } from "../readTyped.ts";
import { trialsHere } from "../trialsHere.ts";

/** A part of the tray as the build works it out, from its trials where they hold; else what is wrong with it. */
export function trayPart(
  one: NamedTyped,
  shop: Shop | undefined,
  tables: Tables,
):
  | {
      readonly kind: "part";
      readonly part: JobPart;
      /** Why its trials hold no longer, in a sentence; empty where they do. */
      readonly told: string;
    }
  | { readonly kind: "wrong"; readonly words: string } {
  const reading = readTypedPart(one.part, tables);
  if (reading.kind === "problems") return wrong(one, reading.problems);
  const part = { ...reading.value, name: one.name };
  const made = layOut(part, tables);
  if (made.kind === "refused") return wrong(one, made.issues);
  const now = { part, made, shop };
  // What trials on the tray were made with goes with them; the shop of the page is no word on that.
  const here = one.trials && trialsHere(one.trials, { part: one, shop: undefined }, now, tables);
  const { notes, ...shaped } = shapedOf(part, made);
  const report = { ...shaped, forming: formedOf(part, made, { shop, trials: here?.trials }), notes };
  return { kind: "part", part: jobPartOf(report, tables), told: here?.told ?? "" };
}

type Wrong = {
  readonly path: readonly (string | number)[];
  readonly problem: string;
  readonly remedy: string;
};

function wrong({ name }: NamedTyped, [first]: readonly Wrong[]) {
  const why = first
    ? `${first.path.join(".")}: ${first.problem}; ${first.remedy}`
    : "something is wrong in it";
  return { kind: "wrong" as const, words: `${name}: ${why}` };
}
