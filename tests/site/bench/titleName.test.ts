import fc from "fast-check";
import { expect, it } from "vitest";
import { nameProblem } from "../../../src/site/bench/files/nameProblem.ts";
import { titleName } from "../../../src/site/bench/titleName.ts";
import { runs } from "../../arbitraries.ts";

it.each([
  ["Hopper bottom, 2nd line", "hopper-bottom-2nd-line"],
  ["Trémie Ø 400", "tremie-o-400"],
  ["../../x", "x"],
  ["CON", "part-con"],
  ["Index", "part-index"],
  ["a\r\n0\r\nLINE", "a-0-line"],
  ["漏斗", undefined],
  ["   ", undefined],
  ["x".repeat(81), undefined],
  ["page.html", undefined],
  [true, undefined],
])("calls a part of the title %j %j", (title, name) => expect(titleName(title)).toBe(name));

it("names no part so that no file is made under it, whatever its title", () => {
  const titles = fc.oneof(fc.string({ unit: "binary" }), fc.string({ unit: "grapheme" }));
  fc.assert(
    fc.property(titles, (title) => {
      const name = titleName(title);
      if (name !== undefined) expect(nameProblem(name), JSON.stringify(title)).toBeUndefined();
    }),
    runs(2000),
  );
});
