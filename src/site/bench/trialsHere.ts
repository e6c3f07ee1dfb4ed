import type { Shop } from "../../forming/machine.ts";
import { misfit, trialFit, type TrialFit } from "../../forming/trialFit.ts";
import type { TrialsKept } from "../../forming/tried.ts";
import type { Tables } from "../../input/context.ts";
import type { TypedGroup } from "../../input/typed.ts";
import { formingCase } from "../../report/formingCase.ts";
import { layOut } from "../../report/layOut.ts";
import type { LaidOut, NamedPart } from "../../report/lay.ts";
import type { NamedTyped } from "./asTyped.ts";
import type { Carried } from "./ownTrials.ts";
import { readTypedPart } from "./readTyped.ts";
import { readTypedShop } from "./readTypedShop.ts";

/** Trials as far as they hold for what is at the bench. */
export interface TrialsHere {
  /** Those that the sheet starts from; undefined where they hold no longer. */
  readonly trials: TrialsKept | undefined;
  readonly fit: TrialFit | undefined;
  /** Why they hold no longer, in a sentence; empty where they do. */
  readonly told: string;
}

/** Fits of published parts by roll: what was published does not change, and every judgement asks for its fit. */
const fits = new WeakMap<NamedTyped, Map<string, TrialFit | null>>();

/** What a part and a roll were when the page was published. */
function fitOf(
  part: NamedTyped,
  shop: TypedGroup | undefined,
  of: { readonly machine: string; readonly tables: Tables },
): TrialFit | null {
  const byMachine = fits.get(part) ?? new Map<string, TrialFit | null>();
  fits.set(part, byMachine);
  const known = byMachine.get(of.machine);
  if (known !== undefined) return known;
  const fit = fitRead(part, shop, of);
  byMachine.set(of.machine, fit);
  return fit;
}

function fitRead(
  { name, part: typed }: NamedTyped,
  shop: TypedGroup | undefined,
  { machine, tables }: { readonly machine: string; readonly tables: Tables },
): TrialFit | null {
  const reading = readTypedPart(typed, tables);
  const shopRead = shop && readTypedShop(shop, tables);
  if (reading.kind === "problems" || !shopRead || shopRead.kind === "problems") return null;
  const part: NamedPart = { ...reading.value, name };
  return fitNow({ part, made: layOut(part, tables), shop: shopRead.value }, machine);
}

function fitNow(
  { part, made, shop }: { part: NamedPart; made: ReturnType<typeof layOut>; shop: Shop | undefined },
  machine: string,
): TrialFit | null {
  const roll = shop?.machines.find(({ name }) => name === machine);
  return made.kind === "laid" && roll?.kind === "plate roll" ? trialFit(formingCase(part, made), roll) : null;
}

/**
 * Which trials the sheet of a part at the bench starts from.
 * @param published part and shop that the page came with, which trials that bring no fit of their own were made with
 */
export function trialsHere(
  { machine, seen, fit }: Carried,
  published: { readonly part: NamedTyped; readonly shop: TypedGroup | undefined },
  now: { readonly part: NamedPart; readonly made: LaidOut; readonly shop: Shop | undefined },
  tables: Tables,
): TrialsHere {
  const then = fit ?? fitOf(published.part, published.shop, { machine, tables });
  const why = then ? misfit(then, fitNow(now, machine)) : "what they were made with cannot be read";
  if (why === null && then) return { trials: { machine, seen }, fit: then, told: "" };
  const count = seen.length === 1 ? "1 trial" : `${seen.length} trials`;
  return {
    trials: undefined,
    fit: undefined,
    told: `${count} of this part on ${machine} no longer ${seen.length === 1 ? "holds" : "hold"}, for ${why ?? ""}: settings are the plan's own start.`,
  };
}

/** Trials of a file with what they were made with; without a shop that is what the part comes to next. */
export function carriedOf(
  { machine, seen }: TrialsKept,
  now: { readonly part: NamedPart; readonly made: LaidOut; readonly shop: Shop | undefined },
): Carried {
  const fit = fitNow(now, machine);
  return { machine, seen, ...(fit && { fit }) };
}
