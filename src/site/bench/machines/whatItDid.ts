import type { MachineAnswer } from "../../../forming/answer.ts";
import type { Verdict } from "../../../forming/check.ts";
import type { Care } from "../cares.ts";

const WORSE: Readonly<Record<Verdict, number>> = { pass: 0, caution: 1, fail: 2 };

/**
 * What a change of a machine did to the part on it: every check that came out worse than before, those that refuse first.
 * A check that was not asked before counts as one that went.
 */
export function whatItDid(before: MachineAnswer | undefined, now: MachineAnswer | undefined): Care[] {
  if (!now) return [];
  const was = new Map((before?.checks ?? []).map(({ id, verdict }) => [id, verdict]));
  return now.checks
    .filter(({ id, verdict }) => WORSE[verdict] > WORSE[was.get(id) ?? "pass"])
    .toSorted((p, q) => WORSE[q.verdict] - WORSE[p.verdict])
    .map(({ title, advice, verdict }) => ({
      fails: verdict === "fail",
      text: `${verdict === "fail" ? `With this ${now.machine} does not take the part` : `With this the part wants care on ${now.machine}`}. ${title}: ${advice}`,
    }));
}
