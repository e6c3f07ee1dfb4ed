import { expect, it } from "vitest";
import * as z from "zod/mini";
import { yamlOf } from "./read.ts";

const text = () => z.string().check(z.minLength(1));
const Glossary = z.record(
  text(),
  z.strictObject({ text: text(), also: z.optional(z.array(text()).check(z.minLength(1))) }),
);
const glossary = Glossary.parse(yamlOf("content/glossary.yaml"));
const entries = Object.entries(glossary).map(([word, entry]) => ({ word, ...entry }));

/** Longer than this is a lesson. */
const MOST_WORDS = 45;

it.each(entries)("explains $word in one or two plain sentences", ({ text: said }) => {
  const sentences = said.match(/[.?!](?= [A-Z0-9]|$)/g) ?? [];
  expect(sentences.length, said).toBeGreaterThanOrEqual(1);
  expect(sentences.length, said).toBeLessThanOrEqual(2);
  expect(said.endsWith(".")).toBe(true);
  expect(said.split(/\s+/).length, said).toBeLessThanOrEqual(MOST_WORDS);
});

it("never gives a word that has an entry of its own as another word for itself", () => {
  for (const { word, also = [] } of entries) {
    expect(also, word).not.toContain(word);
    expect(new Set(also).size, word).toBe(also.length);
  }
});

it("has the words that the pages and the cards use", () => {
  const used =
    "pattern, blank, development, stretchout, girth, element line, true length, seam, slant height, half angle, large end, small end, offset, valley, bend line, tangent plane, normal, neutral surface, middle surface, springback, pinch, plate roll, top roll, bending roll, cone attachment, closure, share of the bend, gauge, laying out, shortfall, air bend, die opening, butt, lap, level edges, square edges, kerf, dross, yoke, lean, zone, crown, hit, aligning groove, end A, end B, trim allowance";
  expect(used.split(", ").filter((word) => !(word in glossary))).toEqual([]);
});
