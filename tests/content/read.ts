import { globSync, readFileSync } from "node:fs";
import { basename } from "node:path";
import { parse } from "yaml";

/** A YAML file of the project, as data of any kind. */
export const yamlOf = (path: string): unknown => parse(readFileSync(path, "utf8"));

export interface Page {
  readonly name: string;
  readonly front: unknown;
  readonly body: string;
}

/** Every page of a folder: what stands between the two lines of dashes, and the text after them. */
export function pagesOf(folder: string): Page[] {
  return globSync(`${folder}/*.md`)
    .sort()
    .map((path) => {
      const [, front, body] = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(readFileSync(path, "utf8")) ?? [];
      if (front === undefined || body === undefined) throw new Error(`${path} has no frontmatter`);
      return { name: basename(path, ".md"), front: parse(front) as unknown, body };
    });
}
