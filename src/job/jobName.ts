import { slug } from "../output/slug.ts";

/** Longer names are cut off by some systems. */
const LONGEST = 60;

/** A job's title as the name of a file without its ending, safe on every system. */
export const jobSlug = (title: string): string => slug(title).slice(0, LONGEST).replace(/-$/, "") || "job";

/** The same for the archive of its cutting files. */
export const archiveName = (title: string): string => `${jobSlug(title)}-cutting-files.zip`;
