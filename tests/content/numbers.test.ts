import { describe, expect, it } from "vitest";
import { eccentricCone } from "./numbers/eccentricCone.ts";
import { rightCone } from "./numbers/rightCone.ts";
import type { Row } from "./numbers/row.ts";
import { squareToRound } from "./numbers/squareToRound.ts";
import { pagesOf } from "./read.ts";

/** Numbers of the pages, reckoned a second time from the example's sizes alone, without the code that develops it. */
const tables: Record<string, readonly Row[]> = {
  "right-cone": rightCone,
  "eccentric-cone": eccentricCone,
  "square-to-round": squareToRound,
};

describe.each(pagesOf("content/shapes"))("$name", ({ name, body }) => {
  const plain = body.replaceAll(/[_*]/g, "").replaceAll(/[ ]+/g, " ");
  it.each(tables[name] ?? [])("%s is %d", (phrase, value) => {
    const [before = "", after = ""] = phrase.split("#");
    const escaped = (part: string) => part.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`);
    const found = new RegExp(`${escaped(before)}(\\d+(?:\\.\\d+)?)${escaped(after)}`).exec(plain)?.[1];
    expect(found, "the phrase stands on the page").toBeDefined();
    // Right to the last figure printed, and nothing looser.
    const half = 0.5 * 10 ** -(found!.split(".")[1]?.length ?? 0);
    expect(Math.abs(Number(found) - value)).toBeLessThanOrEqual(half * (1 + 1e-9));
  });
  it("has numbers that are reckoned again here", () => {
    expect(tables[name]?.length ?? 0).toBeGreaterThan(10);
  });
});
