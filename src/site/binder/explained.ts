import { getCollection } from "astro:content";

/** Words that the glossary explains, in small letters. */
export const explainedWords = async (): Promise<ReadonlySet<string>> =>
  new Set((await getCollection("glossary")).map(({ id }) => id));

/** What the glossary says, by its entries. */
export const glossaryTexts = async (): Promise<ReadonlyMap<string, string>> =>
  new Map((await getCollection("glossary")).map(({ id, data }) => [id, data.text]));
