import { expect, it } from "vitest";
import { onMachine } from "../../src/forming/onMachine.ts";
import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import { readFolder } from "../../src/input/readFolder.ts";
import { develop } from "../../src/report/develop.ts";
import type { NamedPart } from "../../src/report/lay.ts";
import type { Shop } from "../../src/forming/machine.ts";

const tables = loadCatalogue();
const { parts, shop } = readFolder("demo-data", tables);

function formed(part: NamedPart, own: Shop) {
  const made = develop(part, { ...tables, shop: own });
  if (made.kind === "refused") throw new Error(part.name);
  return made.report.forming;
}

it("says of each machine that takes a part what a shop with that machine alone would", () => {
  let others = 0;
  for (const { part } of parts) {
    const all = formed(part, shop!);
    for (const machine of shop!.machines) {
      const here = onMachine(all, machine.name);
      if (!all.plans.some((plan) => plan.machine === machine.name)) {
        expect(here).toBe(all);
        continue;
      }
      const alone = formed(part, { ...shop!, machines: [machine] });
      others += Number(machine.name !== all.machine);
      const { route, verdict, checks } = alone;
      expect(here, `${part.name} on ${machine.name}`).toEqual({
        ...all,
        machine: machine.name,
        route,
        verdict,
        checks,
      });
      expect(here.plans.find((plan) => plan.machine === machine.name)).toEqual(alone.plans[0]);
    }
  }
  expect(others).toBeGreaterThan(10);
});

it("leaves what no machine takes as it is, and a machine that nobody has", () => {
  const none = parts.find(({ part }) => part.name === "crusher-throat")!.part;
  const forming = formed(none, shop!);
  expect(forming.machine).toBeNull();
  expect(onMachine(forming, "Brake")).toBe(forming);
  expect(onMachine(formed(parts[0]!.part, shop!), "Nobody’s")).toEqual(formed(parts[0]!.part, shop!));
});
