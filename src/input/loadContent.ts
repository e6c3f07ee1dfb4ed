import { readdirSync, readFileSync } from "node:fs";
import { basename, join } from "node:path";
import { fileURLToPath } from "node:url";
import { parse } from "yaml";
import * as z from "zod/mini";

/** A sheet of text, its body as it is written. */
const text = { title: z.string(), summary: z.string() };
const Safety = z.object({ ...text, sources: z._default(z.array(z.string()), []) });
const Shape = z.object({
  ...text,
  shape: z.string(),
  example: z.record(z.string(), z.unknown()),
  sources: z.array(z.string()),
});
const Sources = z.record(
  z.string(),
  z.object({
    title: z.string(),
    short: z.string(),
    where: z.optional(z.string()),
    kind: z.enum(["book", "paper", "standard", "statute", "web page", "common practice"]),
    read: z.enum(["read", "read in a reproduction", "from memory"]),
    note: z.optional(z.string()),
  }),
);
const Glossary = z.record(
  z.string(),
  z.object({ text: z.string(), also: z._default(z.array(z.string()), []) }),
);

type Sheet<T> = T & { readonly id: string; readonly body: string };

/** What the reference half of a binder says, read from the same files as the site's pages. */
export interface Content {
  readonly safety: readonly Sheet<z.infer<typeof Safety>>[];
  readonly shapes: readonly Sheet<z.infer<typeof Shape>>[];
  readonly sources: z.infer<typeof Sources>;
  readonly glossary: z.infer<typeof Glossary>;
}

const CONTENT = new URL("../../content/", import.meta.url);
const FRONT = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/;

/**
 * Safety sheets, shapes, sources and glossary. A mistake in them is a mistake in the project: it throws.
 * @param folder where they lie; to be given where this code runs out of a bundle
 */
export function loadContent(folder: string | URL = CONTENT): Content {
  const path = typeof folder === "string" ? folder : fileURLToPath(folder);
  const byTitle = (a: { title: string }, b: { title: string }) => a.title.localeCompare(b.title, "en");
  return {
    safety: sheets(join(path, "safety"), Safety),
    shapes: sheets(join(path, "shapes"), Shape).toSorted(byTitle),
    sources: z.parse(Sources, parse(readFileSync(join(path, "sources.yaml"), "utf8"))),
    glossary: z.parse(Glossary, parse(readFileSync(join(path, "glossary.yaml"), "utf8"))),
  };
}

/** Every page of a folder, in the order of their names. */
function sheets<T extends z.core.$ZodType>(folder: string, schema: T): Sheet<z.core.output<T>>[] {
  return readdirSync(folder)
    .filter((file) => file.endsWith(".md"))
    .sort()
    .map((file) => {
      const [, front, body] = FRONT.exec(readFileSync(join(folder, file), "utf8")) ?? [];
      if (front === undefined || body === undefined)
        throw new Error(`${join(folder, file)}: no front matter`);
      return { ...(z.parse(schema, parse(front)) as object), id: basename(file, ".md"), body } as Sheet<
        z.core.output<T>
      >;
    });
}
