import { expect, it } from "vitest";
import { caresBeside } from "../../../src/site/bench/cares.ts";
import { loadCatalogue } from "../../../src/input/loadCatalogue.ts";
import { develop } from "../../../src/report/develop.ts";
import { readBinder } from "../../../src/site/binder/binder.ts";

const { parts, shop } = readBinder();
const { catalogue } = loadCatalogue();
const FIELDS = new Set(["thickness", "largeEnd.diameter", "smallEnd.diameter", "height"]);
const cone = parts.find(({ report }) => report.part.shape === "right-cone" && report.part.units === "mm")!;

/** Where it stands that the blank has no plate, of a shop with these plates. */
function besideOf(stock: NonNullable<NonNullable<typeof shop>["stock"]>): string | undefined {
  const developed = develop(cone.report.part, { catalogue, shop: { ...shop!, stock } });
  if (developed.kind === "refused") throw new Error("it can be laid out");
  const cares = caresBeside(developed.report.forming.checks, FIELDS, "height");
  return [...cares].find(([, said]) => said.some(({ text }) => text.startsWith("Blank on stock plate")))?.[0];
}

it("says beside the thickness that no plate of it is there, and beside the size that all are too small", () => {
  const { material, thickness } = cone.report.part;
  expect(besideOf([])).toBe("thickness");
  expect(besideOf([{ material, thickness, width: 90, length: 90 }])).toBe("largeEnd.diameter");
});
