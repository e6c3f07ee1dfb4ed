import { expect, it } from "vitest";
import type { Shop } from "../../src/forming/machine.ts";
import { sayIn } from "../../src/forming/say.ts";
import { develop } from "../../src/report/develop.ts";
import { checkFigures } from "../../src/site/words/forming.ts";
import { figureWords } from "../../src/site/forming/figureWords.ts";
import { plannedWords } from "../../src/site/forming/planned.ts";
import { catalogue, named } from "../parts.ts";

const shop = (units: "mm" | "in"): Shop => ({
  name: "A shop",
  units,
  machines: [
    {
      kind: "press brake",
      name: "Brake",
      bedLength: 3050,
      forceKN: 1600,
      throat: 400,
      dies: [16, 25, 40, 63, 100],
    },
  ],
});

const part = {
  ...named({
    shape: "square-to-round",
    thickness: 4.76,
    rectangularEnd: { length: 609.6, width: 508, measured: "outside" },
    roundEnd: { diameter: 406.4, measured: "outside" },
    height: 457.2,
    pieces: 2,
  }),
  units: "in",
} as const;

function bent(units: "mm" | "in") {
  const made = develop(part, { catalogue, shop: shop(units) });
  if (made.kind === "refused") throw new Error(JSON.stringify(made.issues));
  return made.report.forming;
}
const plain = (text: string | null | undefined) => text?.replaceAll("\u00a0", " ") ?? "";

it("says a shop's length as its file has it, with the part's units beside", () => {
  expect(sayIn("in", "mm").shops(40)).toBe("40 mm (1.575 in)");
  expect(sayIn("mm", "in").shops(38.1)).toBe("1.5 in (38.1 mm)");
  expect(sayIn("in").shops(38.1)).toBe("1.5 in");
  expect(sayIn("mm", "mm").shops(40)).toBe("40 mm");
});

it("die, bed and throat of a shop in mm are told in mm to whoever makes a part in inches", () => {
  const { checks, plans } = bent("mm");
  const figures = (id: string) =>
    plain(
      checkFigures(
        checks.find((one) => one.id === id)!,
        "in",
      ),
    );
  expect(figures("die-opening")).toMatch(/^40 mm \(1\.575 in\), at least 1\.499 in \(/);
  expect(figures("brake-bed")).toMatch(/ in, at most 3050 mm \(120\.079 in; .* to spare\)$/);
  expect(figures("brake-throat")).toMatch(/ in, at most 400 mm \(15\.748 in; /);
  const advice = checks.map((one) => one.advice).join("\n");
  expect(advice).toContain("Bend over the 40 mm (1.575 in) die; this thickness wants at least 1.499 in.");
  expect(advice).not.toMatch(/(?<!\()(?:1\.575|15\.748) in/);
  const step = plans[0]!.steps.find(({ id }) => id === "tooling")!;
  expect(step.text).toMatch(/^Die opening 40 mm \(1\.575 in\) /);
  const die = step.figures.find(({ label }) => label === "die opening")!;
  expect(plain(figureWords(die, "in"))).toBe("40 mm (1.575 in)");
  const { planned, inShop } = step.toNote.find(({ label }) => label === "die used")!;
  expect(plannedWords(planned!, "mm", "in", inShop)).toBe("40 mm (1.575 in)");
});

it("where shop and part count alike nothing stands beside", () => {
  const { checks, plans } = bent("in");
  expect(
    plain(
      checkFigures(
        checks.find(({ id }) => id === "brake-bed")!,
        "in",
      ),
    ),
  ).toMatch(/, at most 120\.079 in \(.* to spare\)$/);
  expect(JSON.stringify([checks, plans])).not.toMatch(/ofShop|inShop/);
  const words = [...checks.map(({ advice }) => advice), ...plans[0]!.steps.map(({ text }) => text)].join(
    "\n",
  );
  expect(words).toContain("1.575 in die");
  expect(words).not.toMatch(/\d mm/);
});
