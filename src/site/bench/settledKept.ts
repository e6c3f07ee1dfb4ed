import type { Shop } from "../../forming/machine.ts";
import type { FormingCase } from "../../forming/case.ts";
import { sayIn } from "../../forming/say.ts";
import { settleTrials } from "../../forming/settleTrials.ts";
import type { TrialsKept } from "../../forming/tried.ts";
import type { Units } from "../../input/units.ts";

interface Around {
  readonly item: FormingCase | null;
  readonly shop: Shop | undefined;
  readonly units: Units;
}

/** Trials of a file with how the roll was set worked out, so that a bench need not; as they are where that cannot be. */
export function settledKept({ machine, seen }: TrialsKept, { item, shop, units }: Around): TrialsKept {
  const roll = shop?.machines.find(({ name }) => name === machine);
  if (!item || roll?.kind !== "plate roll") return { machine, seen };
  const settled = settleTrials({ item, roll, say: sayIn(units) }, seen);
  return { machine, seen: settled.kind === "settled" ? settled.seen : seen };
}
