import type { TrialsKept } from "../forming/tried.ts";
import type { Shop } from "../forming/machine.ts";
import type { Catalogue } from "../shapes/catalogue.ts";
import type { Refusal } from "../shapes/refusal.ts";
import { formedOf } from "./formed.ts";
import { layOut } from "./layOut.ts";
import type { NamedPart } from "./lay.ts";
import type { Report } from "./report.ts";
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

/** One part file's worth of work: from sizes to blanks, and whether they can be formed. The one door to the core. */
export function develop(part: NamedPart, context: Context): Developed {
  const made = layOut(part, context);
  if (made.kind === "refused") return made;
  const { notes, ...shaped } = shapedOf(part, made);
  return { kind: "report", report: { ...shaped, forming: formedOf(part, made, context), notes } };
}
