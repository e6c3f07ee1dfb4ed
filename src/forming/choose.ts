import type { Forming, MachineAnswer } from "./answer.ts";
import type { Verdict } from "./check.ts";

type Route = Forming["route"];

export const routeOf = ({ kind }: MachineAnswer): Route => (kind === "plate roll" ? "roll" : "brake");

const count = ({ checks }: MachineAnswer, verdict: Verdict) =>
  checks.filter((check) => check.verdict === verdict).length;

/** The worst margin among the checks that refuse; 0 where none of them has a number. */
const excess = ({ checks }: MachineAnswer) =>
  Math.max(0, ...checks.filter((check) => check.verdict === "fail").map(({ margin }) => -(margin ?? 0)));

/** Compare by one key after the other, smaller first. */
const byKeys =
  (keys: (answer: MachineAnswer) => readonly number[]) =>
  (a: MachineAnswer, b: MachineAnswer): number => {
    const other = keys(b);
    return (
      keys(a)
        .map((key, i) => key - (other[i] ?? 0))
        .find((difference) => difference !== 0) ?? 0
    );
  };

/**
 * The machine it is made on: one that takes it, on the usual route if any does, with the fewest cautions, first in the
 * shop's own order. Null where none takes it.
 */
export function chosen(machines: readonly MachineAnswer[], usual: Route): MachineAnswer | null {
  const takes = machines.filter(({ verdict }) => verdict !== "fail");
  return takes.toSorted(byKeys((one) => [Number(routeOf(one) !== usual), count(one, "caution")]))[0] ?? null;
}

/** The machine that comes nearest where none takes it: on the usual route if there is one, fewest refusals, least excess. */
export function nearestMiss(machines: readonly MachineAnswer[], usual: Route): MachineAnswer | null {
  return (
    machines.toSorted(
      byKeys((one) => [
        Number(routeOf(one) !== usual),
        count(one, "fail"),
        excess(one),
        count(one, "caution"),
      ]),
    )[0] ?? null
  );
}
