import { getCollection } from "astro:content";

/** The ids that have an entry on the page of sources; any other basis is told in its own words. */
export const sourceIds = async (): Promise<ReadonlySet<string>> =>
  new Set((await getCollection("sources")).map(({ id }) => id));
