import { handLiftOf } from "./handling.ts";
import type { SheetOf } from "./plans.ts";
import { brakeBatch, brakeSheet } from "./sheet/brakeSheet.ts";
import { rollBatch, rollSheet } from "./sheet/rollSheet.ts";
import { type TrialsKept, triedOn } from "./tried.ts";

/** The work sheets of plans, step by step; on the roll that trials were kept of it starts from them. */
export const sheetsFrom =
  (kept?: TrialsKept): SheetOf =>
  (part, { route, settings, noSettings, brake }, { machine, shop }) => {
    const handLiftKg = handLiftOf(shop);
    if (route === "brake")
      return brake
        ? { steps: brakeSheet({ ...part, handLiftKg }, brake), batch: brakeBatch(part) }
        : { steps: [], batch: [] };
    const roll = machine?.kind === "plate roll" ? machine : null;
    const tried = roll && triedOn({ ...part, roll }, kept);
    return {
      steps: rollSheet({ ...part, roll, settings, noSettings, handLiftKg, ...(tried && { tried }) }),
      batch: rollBatch({ ...part, roll }),
    };
  };
