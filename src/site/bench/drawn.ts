import type { LaidOut, NamedPart } from "../../report/lay.ts";
import type { Shaped } from "../../report/report.ts";
import { shapedOf } from "../../report/shaped.ts";
import type { Worked } from "./partWork.ts";
import type { Complaint } from "./typedReading.ts";

/** A part that could be laid out, and how. */
export interface Drawn {
  readonly part: NamedPart;
  readonly made: LaidOut;
  readonly shaped: Shaped;
}

/** What came of what is typed. */
export type Outcome =
  | { readonly kind: "drawn"; readonly drawn: Drawn }
  | { readonly kind: "problems"; readonly problems: readonly Complaint[] }
  /** What reads it is still on its way. */
  | { readonly kind: "unread" };

export function outcomeOf(worked: Worked | undefined): Outcome {
  if (!worked) return { kind: "unread" };
  if (worked.kind === "problems") return worked;
  const { part, made } = worked;
  return { kind: "drawn", drawn: { part, made, shaped: shapedOf(part, made) } };
}
