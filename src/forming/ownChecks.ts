import type { Forming } from "./answer.ts";
import type { Check } from "./check.ts";

/** What is asked of the part itself, whatever machine makes it: strain, mass of a blank, plate in stock. */
export const ownChecks = ({ checks, machines }: Pick<Forming, "checks" | "machines">): Check[] =>
  checks.filter(({ id }) => !machines.some((one) => one.checks.some((check) => check.id === id)));

/** Those of them that stand in the way on every machine, by their names. */
export const ownCares = (forming: Pick<Forming, "checks" | "machines">): string[] =>
  ownChecks(forming)
    .filter(({ verdict }) => verdict !== "pass")
    .map(({ title }) => title);
