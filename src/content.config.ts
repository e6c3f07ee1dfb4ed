import { defineCollection } from "astro:content";
import { file, glob } from "astro/loaders";
import { z } from "astro/zod";

/** Where the numbers and rules come from; ids are what a check's basis names. */
const sources = defineCollection({
  loader: file("content/sources.yaml"),
  schema: z.strictObject({
    title: z.string(),
    /** Who wrote it or what it is called, and the year: what stands beside a figure on paper. */
    short: z.string(),
    where: z.string().optional(),
    kind: z.enum(["book", "paper", "standard", "statute", "web page", "common practice"]),
    read: z.enum(["read", "read in a reproduction", "from memory"]),
    note: z.string().optional(),
  }),
});

/** Words of the trade; the id is the word itself. */
const glossary = defineCollection({
  loader: file("content/glossary.yaml"),
  schema: z.strictObject({ text: z.string(), also: z.array(z.string()).default([]) }),
});

/** One page a shape. The example is a part file as a user would write it; the binder reads it like one. */
const shapes = defineCollection({
  loader: glob({ base: "content/shapes", pattern: "*.md" }),
  schema: z.strictObject({
    shape: z.string(),
    title: z.string(),
    summary: z.string(),
    example: z.record(z.string(), z.unknown()),
    sources: z.array(z.string()).min(1),
  }),
});

const safety = defineCollection({
  loader: glob({ base: "content/safety", pattern: "*.md" }),
  schema: z.strictObject({
    title: z.string(),
    summary: z.string(),
    sources: z.array(z.string()).default([]),
  }),
});

export const collections = { sources, glossary, shapes, safety };
