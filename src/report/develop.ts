import { formingOf } from "../forming/forming.ts";
import type { TrialsKept } from "../forming/tried.ts";
import type { Shop } from "../forming/machine.ts";
import type { Catalogue } from "../shapes/catalogue.ts";
import type { Refusal } from "../shapes/refusal.ts";
import { formingCase } from "./formingCase.ts";
import { layOut } from "./layOut.ts";
import type { LaidOut, NamedPart } from "./lay.ts";
import type { Report } from "./report.ts";
import { rounded } from "./rounded.ts";
import { shapedOf } from "./shaped.ts";

export interface Context {
  readonly catalogue: Catalogue;
  readonly shop?: Shop;
  /** Trials of the part that are kept beside it: its work sheet starts from them. */
  readonly trials?: TrialsKept | undefined;
}

export type Developed =
  | { readonly kind: "report"; readonly report: Report }
  | { readonly kind: "refused"; readonly issues: readonly Refusal[] };

/** Whether and how a laid out part can be formed, on the shop's machines where there is a shop. */
export function formedOf(
  part: NamedPart,
  { shape, layout, laid, material }: LaidOut,
  { shop, trials }: { readonly shop?: Shop | undefined; readonly trials?: TrialsKept | undefined },
): Report["forming"] {
  return rounded(formingOf(formingCase(part, shape, layout, laid, material), shop, trials));
}

/** One part file's worth of work: from sizes to blanks, and whether they can be formed. The one door to the core. */
export function develop(part: NamedPart, context: Context): Developed {
  const made = layOut(part, context);
  if (made.kind === "refused") return made;
  const { notes, ...shaped } = shapedOf(part, made);
  return { kind: "report", report: { ...shaped, forming: formedOf(part, made, context), notes } };
}
