import { expect, it } from "vitest";
import { csvText } from "../../src/output/csvText.ts";

const line = (text: string): string =>
  csvText([["before", text]])
    .split("\r\n")[0]!
    .slice(1);

it.each([
  ["=1+1", "before,'=1+1"],
  ["+41", "before,'+41"],
  ["-5", "before,'-5"],
  ["@x", "before,'@x"],
  ["  =1+1", "before,'  =1+1"],
  ["\t=1", "before,'\t=1"],
  ["\tcone", "before,'\tcone"],
  // Where the decimal sign is a comma a spreadsheet parts cells at semicolons.
  ["a;=1+1", "before,a;'=1+1"],
  ["a; =1+1;b", "before,a;' =1+1;b"],
  // Signs of full width.
  ["＝1+1", "before,'＝1+1"],
])("keeps %j text, which a spreadsheet would take for a formula", (text, written) => {
  expect(line(text)).toBe(written);
});

it.each([
  ["1 - 2", "before,1 - 2"],
  ["Ø 400; inside", "before,Ø 400; inside"],
  ['3" pipe', 'before,"3"" pipe"'],
  ["a, b", 'before,"a, b"'],
])("leaves %j as it is but for quotes", (text, written) => {
  expect(line(text)).toBe(written);
});

it("writes numbers below nought bare", () => {
  expect(csvText([[-1.5, 0]])).toBe("\uFEFF-1.5,0\r\n");
});

it("keeps every row to one line, whatever stands in a cell", () => {
  expect(csvText([["part", "a\r\n0\r\nLINE\u2028x"]])).toBe("\uFEFFpart,a 0 LINE x\r\n");
});
