import { expect, it } from "vitest";
import { depthCell } from "../../src/site/words/depthCell.ts";
import { alikeName } from "../../src/site/words/alikeName.ts";
import { askewHood, reportOf } from "../parts.ts";

const askew = reportOf(askewHood);

it("has beside a letter what a line wants more or less than the strip of that letter", () => {
  const plan = askew.forming.plans[0]!.brake!;
  const cells = plan.lines.map((line) => {
    const { fromDeg, toDeg, perDegreeMm } = plan.depths.find(({ letter }) => letter === line.depth)!;
    const mm = (line.bendDeg - (fromDeg + toDeg) / 2) * perDegreeMm;
    const cell = depthCell(plan, line, "mm");
    const [letter, more = "0"] = cell.replace("−", "-").split(" ");
    expect(letter).toBe(line.depth);
    if (toDeg - fromDeg > 0.5) expect(Math.abs(Number(more) - mm)).toBeLessThanOrEqual(0.005 + 1e-9);
    else expect(cell).toBe(line.depth);
    return cell;
  });
  expect(cells.some((one) => one.includes("+"))).toBe(true);
  expect(cells.some((one) => one.includes("−"))).toBe(true);
});

it("names pieces that are alike together", () => {
  const [one, two] = [1, 2].map((piece) => ({ piece, sameAs: piece === 2 ? 1 : null }));
  const report = (...blanks: object[]) => ({ blanks }) as unknown as typeof askew;
  expect(alikeName(report(one!), one!)).toBe("");
  expect(alikeName(report(one!, two!), one!)).toBe("Pieces 1 and 2, alike");
  expect(alikeName(report(one!, { ...two, sameAs: null }), one!)).toBe("Piece 1");
});
