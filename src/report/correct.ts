import type { FormingCase } from "../forming/case.ts";
import type { PlateRoll } from "../forming/machine.ts";
import { rollChecks } from "../forming/machineChecks.ts";
import { sayIn } from "../forming/say.ts";
import { correctTold, type ToldAnswer } from "../forming/correctTold.ts";
import type { AnyTold } from "../forming/settleTrials.ts";
import type { Refusal } from "../shapes/refusal.ts";
import type { Context } from "./develop.ts";
import type { NamedPart } from "./lay.ts";
import { layOut } from "./layOut.ts";
import { formingCase } from "./formingCase.ts";
import { rounded } from "./rounded.ts";

/**
 * What a correction on this roll asks of a part, without its blanks; null where it cannot be laid out, or is not
 * round. For a page that corrects while somebody types.
 */
export function trialCase(part: NamedPart, context: Context): FormingCase | null {
  const laid = layOut(part, context);
  if (laid.kind === "refused") return null;
  const item = formingCase(part, laid);
  return item.tightestRadiusMm ? { ...item, blanks: [], bendZones: [] } : null;
}

/**
 * The next setting of a part's first pass after trials on one roll of the shop.
 *
 * @param machine name of the roll; may be left out where the shop has one initial-pinch roll only
 */
export function correctPart(
  part: NamedPart,
  context: Context,
  machine: string | undefined,
  seen: readonly AnyTold[],
): ToldAnswer | { readonly kind: "refused"; readonly issues: readonly Refusal[] } {
  const laid = layOut(part, context);
  if (laid.kind === "refused") return laid;
  const rolls = (context.shop?.machines ?? []).filter((one): one is PlateRoll => one.kind === "plate roll");
  const pinch = rolls.filter(({ arrangement }) => arrangement === "initial-pinch");
  const roll = machine === undefined ? pinch[0] : rolls.find(({ name }) => name === machine);
  const names = pinch.map(({ name }) => name).join(", ");
  if (!roll)
    return {
      kind: "none",
      why:
        machine === undefined
          ? "the shop has no initial-pinch roll"
          : `the shop has no plate roll called ${machine}; it has ${names || "none"}`,
    };
  if (machine === undefined && pinch.length > 1)
    return { kind: "none", why: `say on which roll it was tried with --machine: ${names}` };
  const item = formingCase(part, laid);
  const say = sayIn(part.units);
  // A setting for a job that the roll is refused would be followed all the same.
  const refusal = rollChecks({ item, say }, roll).find(({ verdict }) => verdict === "fail");
  if (refusal) return { kind: "none", why: `${roll.name} does not take this part. ${refusal.advice}` };
  return rounded(correctTold({ item, roll, say }, seen));
}
