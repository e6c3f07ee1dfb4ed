import { globSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";

const EXAMPLE = /@example (.+?) \/\/ → (-?[\d.]+)/g;
const examples = globSync("src/forming/**/*.ts").flatMap((file) =>
  [...readFileSync(file, "utf8").matchAll(EXAMPLE)].map(([, call = "", value = ""]) => ({
    file,
    call,
    value,
  })),
);

it("finds the examples", () => expect(examples.length).toBeGreaterThan(10));

it.each(examples)("$file: $call is $value", async ({ file, call, value }) => {
  const module = (await import(/* @vite-ignore */ `../../${file}`)) as Record<string, unknown>;
  // eslint-disable-next-line @typescript-eslint/no-implied-eval -- the text under test is our own source
  const run = new Function(...Object.keys(module), `return ${call}`) as (...args: unknown[]) => number;
  expect(run(...Object.values(module))).toBeCloseTo(Number(value), value.split(".")[1]?.length ?? 0);
});
