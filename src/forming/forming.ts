import type { Forming } from "./answer.ts";
import type { FormingCase } from "./case.ts";
import { judgedOf } from "./judged.ts";
import type { Shop } from "./machine.ts";
import { sheetsFrom } from "./sheets.ts";
import type { TrialsKept } from "./tried.ts";

/** Can it be formed, how, and on which machine, step by step: from trials that were kept of it, where they were. */
export const formingOf = (item: FormingCase, shop?: Shop, kept?: TrialsKept): Forming =>
  judgedOf(item, shop, sheetsFrom(kept));
