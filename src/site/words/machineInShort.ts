import type { Units } from "../../drawing/format.ts";
import type { Forming, MachineAnswer } from "../../forming/answer.ts";
import { ownCares } from "../../forming/ownChecks.ts";
import type { FormingPlan } from "../../forming/plan.ts";
import { refusal } from "./forming.ts";

/** What a machine would make of the part, in a line: how, and what wants care; or why it does not take it. */
export function machineInShort(
  { checks, kind }: MachineAnswer,
  { plan, units, forming }: { plan: FormingPlan | undefined; units: Units; forming: Forming },
): string {
  if (!plan) return `Does not take it: ${refusal(checks, units)}.`;
  const care = checks.filter(({ verdict }) => verdict === "caution").map(({ title }) => title);
  const cared = care.length > 0 ? ` Care: ${care.join("; ")}.` : "";
  const own = ownCares(forming);
  return `${wayOf(kind, plan)}.${cared}${own.length > 0 ? ` On any machine: ${own.join("; ")}.` : ""}`;
}

/** "Big brake: bent in 32 hits": how the part is formed by a plan, in a few words. */
export function wayInShort(plan: FormingPlan): string {
  const way = wayOf(plan.route === "brake" ? "press brake" : "plate roll", plan);
  return plan.machine === null ? way : `${plan.machine}: ${way.charAt(0).toLowerCase()}${way.slice(1)}`;
}

function wayOf(kind: MachineAnswer["kind"], { settings, brake }: FormingPlan): string {
  if (kind === "press brake") {
    const hits = brake?.lines.length;
    return hits === undefined ? "Bent" : `Bent in ${hits === 1 ? "one hit" : `${hits} hits`}`;
  }
  if (!settings) return "Rolled in two passes; the setting is found by trial";
  const zones = settings.zones.length;
  return zones > 1
    ? `Rolled in two passes, set anew in ${zones} zones`
    : "Rolled in two passes, one setting all round";
}
