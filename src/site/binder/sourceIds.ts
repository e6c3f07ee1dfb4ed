import { getCollection } from "astro:content";
import { shortName } from "../words/sources.ts";

/** The sources that have an entry, by id, with the name that stands beside a figure; any other basis is told in its own words. */
export const sourceIds = async (): Promise<ReadonlyMap<string, string>> =>
  new Map((await getCollection("sources")).map(({ id, data }) => [id, shortName(data)]));
