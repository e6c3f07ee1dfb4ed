import { slug } from "../output/slug.ts";

/** Longer names are cut off by some systems. */
const LONGEST = 60;

/** A job's title as the name of the archive of its cutting files, safe on every system. */
export const archiveName = (title: string): string =>
  `${slug(title).slice(0, LONGEST).replace(/-$/, "") || "job"}-cutting-files.zip`;
