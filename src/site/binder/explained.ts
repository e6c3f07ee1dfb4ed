import { getCollection } from "astro:content";

/** Words that the glossary explains, in small letters. */
export const explainedWords = async (): Promise<ReadonlySet<string>> =>
  new Set((await getCollection("glossary")).map(({ id }) => id));
