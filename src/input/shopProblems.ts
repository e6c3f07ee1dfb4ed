import type { Shop } from "../forming/machine.ts";
import type { Loose } from "../shapes/loose.ts";
import type { FieldProblem } from "./plainTree.ts";
import { rollRules } from "./rollRules.ts";
import { shown } from "./reading.ts";

type Machine = NonNullable<NonNullable<Loose<Shop>["machines"]>[number]>;

/** What does not go together in a shop, told as far as its file is right. */
export function shopProblems({ units, machines = [] }: Loose<Shop>): FieldProblem[] {
  return [
    ...sameNames(machines),
    ...machines.flatMap((machine, i) =>
      machine?.kind === "plate roll"
        ? rollRules(machine, units).map((rule) => ({ ...rule, path: ["machines", i, ...rule.path] }))
        : [],
    ),
  ];
}

/** Answers are given by a machine's name, so no two machines may share one. */
function sameNames(machines: readonly (Machine | undefined)[]): FieldProblem[] {
  const seen = new Map<string, number>();
  return machines.flatMap((machine, i) => {
    const name = machine?.name;
    if (name === undefined) return [];
    const key = name.toLowerCase();
    const before = seen.get(key);
    if (before === undefined) seen.set(key, i);
    if (before === undefined) return [];
    return [
      {
        path: ["machines", i, "name"],
        problem: `${shown(name)} is the name of machine ${before + 1} too`,
        remedy: "give each machine a name of its own",
      },
    ];
  });
}
