import type { Shop } from "../forming/machine.ts";
import type { Report } from "../report/report.ts";

/** A part of a job, worked out. */
export interface JobPart {
  readonly report: Report;
  readonly material: { readonly name: string };
  /** The sheet gauge that its thickness is, "10 ga"; null where it is none. */
  readonly gauge: string | null;
}

/** All parts of a job, and the shop that they are made in. */
export interface JobParts {
  readonly parts: readonly JobPart[];
  readonly shop: Shop | undefined;
}
