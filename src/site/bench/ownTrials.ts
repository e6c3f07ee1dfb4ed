import type { AnyTold } from "../../forming/settleTrials.ts";
import type { TrialFit } from "../../forming/trialFit.ts";
import type { TypedGroup } from "../../input/typed.ts";
import { isSeen, keptHere } from "../trials/keptTrials.ts";

/** Trials of a part as they go with it from hand to hand. */
export interface Carried {
  readonly machine: string;
  readonly seen: readonly AnyTold[];
  /** What they hold for; not present where that is what the page came with. */
  readonly fit?: TrialFit;
}

/** Trials of a part, from what a browser kept. */
export function asCarried(value: unknown): Carried | undefined {
  if (typeof value !== "object" || value === null) return undefined;
  const { machine, seen, fit } = value as Record<string, unknown>;
  if (typeof machine !== "string" || !Array.isArray(seen) || !seen.every(isSeen)) return undefined;
  return { machine, seen, ...(isFit(fit) && { fit }) };
}

function isFit(value: unknown): value is TrialFit {
  if (typeof value !== "object" || value === null) return false;
  const { shape, plate, machine } = value as Record<string, unknown>;
  return [shape, plate, machine].every((one) => typeof one === "string");
}

/** Names of the machines of a shop as it was typed. */
export function machineNames(shop: TypedGroup | undefined): string[] {
  const machines = shop?.["machines"];
  if (!Array.isArray(machines)) return [];
  return (machines as readonly unknown[]).flatMap((one) => {
    const name =
      typeof one === "object" && one !== null ? (one as Record<string, unknown>)["name"] : undefined;
    return typeof name === "string" ? [name] : [];
  });
}

/**
 * Trials that stand for a part's own page: what the form of its work sheet kept in this browser, else its file's.
 * @param file those of the file next to the part's own
 */
export function ownTrials(
  part: string,
  shop: TypedGroup | undefined,
  file: Carried | undefined,
): Carried | undefined {
  const names = machineNames(shop);
  const first = file ? [file.machine, ...names.filter((name) => name !== file.machine)] : names;
  for (const machine of first) {
    const seen = keptHere(part, machine) ?? (machine === file?.machine ? file.seen : undefined);
    if (seen && seen.length > 0) return { machine, seen };
  }
  return undefined;
}
