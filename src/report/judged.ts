import { judgedOf } from "../forming/judged.ts";
import type { Shop } from "../forming/machine.ts";
import { NO_SHEETS } from "../forming/plans.ts";
import { formingCase } from "./formingCase.ts";
import type { LaidOut, NamedPart } from "./lay.ts";
import type { Report } from "./report.ts";
import { rounded } from "./rounded.ts";

/** Whether and how a laid out part can be formed, as `formedOf` tells it, but without the steps of any work sheet. */
export const judgedPart = (part: NamedPart, laid: LaidOut, shop: Shop | undefined): Report["forming"] =>
  rounded(judgedOf(formingCase(part, laid), shop, NO_SHEETS));
