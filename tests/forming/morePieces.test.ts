import { expect, it } from "vitest";
import { morePieces } from "../../src/forming/piecesToClear.ts";
import { offThePunch } from "../../src/forming/offThePunch.ts";
import { sayIn } from "../../src/forming/say.ts";
import { formingCase } from "../../src/report/formingCase.ts";
import { layOut } from "../../src/report/layOut.ts";
import type { NamedPart } from "../../src/report/lay.ts";
import { catalogue, named } from "../parts.ts";

const caseOf = (part: NamedPart) => {
  const laid = layOut(part, { catalogue });
  if (laid.kind === "refused") throw new Error(JSON.stringify(laid.issues));
  return formingCase(part, laid);
};
const advice = (part: NamedPart): string => {
  const item = caseOf(part);
  return offThePunch({ item, say: sayIn("mm") }).advice;
};

/** Turned by more than half of its way round on one side: in two pieces one of them closes. */
const shifted = named({
  shape: "square-to-round",
  thickness: 12,
  rectangularEnd: { length: 600, width: 150, measured: "outside" },
  roundEnd: { diameter: 200, measured: "inside", offset: [250, 80] },
  height: 150,
});
const bag = named({
  shape: "square-to-round",
  thickness: 20,
  rectangularEnd: { length: 600, width: 1200, measured: "inside" },
  roundEnd: { diameter: 1200, measured: "inside", offset: [0, 450] },
  height: 450,
});

it.each([
  ["the round far to a corner", shifted],
  ["the round far to a side", bag],
  ["a seam in a corner", { ...shifted, seam: { at: 30 } }],
])("the pieces that are named for a square-to-round are pieces that it is made in: %s", (_, part) => {
  const [, pieces, , at] = /\(pieces: (\d+)(, seam\.at: (\d+))?\)/.exec(advice(part)) ?? [];
  expect(["2", "4"]).toContain(pieces);
  const seam = at === undefined ? part.seam : { ...part.seam, at: Number(at) };
  const made = layOut({ ...part, pieces: Number(pieces), ...(seam && { seam }) }, { catalogue });
  expect(made.kind).toBe("laid");
});

it("where a square-to-round in the most pieces does not come off, none are named", () => {
  const item = { ...caseOf(bag), pieces: 4 };
  expect(morePieces(item, Infinity)).toBeNull();
  const told = offThePunch({ item, say: sayIn("mm") }).advice;
  expect(told).toContain("in no greater number of pieces that its shape takes does it come off");
  expect(told).not.toContain("pieces:");
});
