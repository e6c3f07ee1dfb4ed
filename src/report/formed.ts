import { formingOf } from "../forming/forming.ts";
import type { Shop } from "../forming/machine.ts";
import type { TrialsKept } from "../forming/tried.ts";
import { formingCase } from "./formingCase.ts";
import type { LaidOut, NamedPart } from "./lay.ts";
import type { Report } from "./report.ts";
import { rounded } from "./rounded.ts";

/** Whether and how a laid out part can be formed, on the shop's machines where there is a shop. */
export function formedOf(
  part: NamedPart,
  laid: LaidOut,
  { shop, trials }: { readonly shop?: Shop | undefined; readonly trials?: TrialsKept | undefined },
): Report["forming"] {
  return rounded(formingOf(formingCase(part, laid), shop, trials));
}
