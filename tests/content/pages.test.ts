import { describe, expect, it } from "vitest";
import * as z from "zod/mini";
import { Part } from "../../src/shapes/part.ts";
import { pagesOf } from "./read.ts";

const text = () => z.string().check(z.minLength(1));
const ShapePage = z.strictObject({
  shape: text(),
  title: text(),
  summary: text(),
  example: z.unknown(),
  sources: z.array(text()).check(z.minLength(1)),
});
const SafetyPage = z.strictObject({
  title: text(),
  summary: text(),
  sources: z.array(text()).check(z.minLength(1)),
});

const HEADINGS = [
  "What it is for",
  "Measuring the drawing",
  "What the pattern looks like and why",
  "Laying it out by hand",
  "Forming",
  "Where it goes wrong",
  "Safety",
];
const pages = pagesOf("content/shapes");
const secondLevel = (body: string) => [...body.matchAll(/^## (.+)$/gm)].map(([, heading]) => heading);
const words = (body: string) => body.match(/[\p{L}\d][\p{L}\d.'’-]*/gu)?.length ?? 0;

it("has a page for every shape there is", () => {
  const shapes = Part.def.options.map((option) => option.shape.shape.def.values[0]).sort();
  expect(pages.map(({ name }) => name)).toEqual(shapes);
});

describe.each(pages)("$name", ({ name, front, body }) => {
  const page = ShapePage.parse(front);

  it("is about the shape that its file is named after", () => {
    expect(page.shape).toBe(name);
  });

  it("shows a complete part of that shape", () => {
    const part = Part.parse(page.example);
    expect(part.shape).toBe(name);
  });

  it("is in the order in which the work is done", () => {
    expect(secondLevel(body)).toEqual(HEADINGS);
  });

  it("can be read in one sitting", () => {
    expect(words(body)).toBeGreaterThanOrEqual(700);
    expect(words(body)).toBeLessThanOrEqual(1250);
  });

  it("lays out by hand in numbered steps, with a check among them", () => {
    const steps = /## Laying it out by hand\n([\s\S]*?)\n## /.exec(body)?.[1] ?? "";
    const numbers = [...steps.matchAll(/^(\d+)\. /gm)].map(([, number]) => Number(number));
    expect(numbers.length).toBeGreaterThanOrEqual(6);
    expect(numbers).toEqual(numbers.map((_, i) => i + 1));
    expect(steps).toMatch(/^\d+\. Check/m);
  });

  it("ends with the caution that leads to the machine's manual and the local codes", () => {
    const caution = body.split("## Safety\n")[1] ?? "";
    for (const word of ["manual", "local codes", "trained", "licensed", "sheet on plate work"])
      expect(caution, word).toContain(word);
  });
});

it.each(pagesOf("content/safety"))(
  "safety sheet $name is complete and defers to the manual first",
  ({ front, body }) => {
    SafetyPage.parse(front);
    const [first = ""] = body.trim().split(/\n\n/);
    expect(first).toContain("manual");
    expect(first).toContain("licensed");
    for (const topic of ["Plate rolls", "Press brakes", "Lifting", "welding", "confined space", "lock"])
      expect(body, topic).toContain(topic);
  },
);
