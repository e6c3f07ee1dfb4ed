import { createHash } from "node:crypto";
import type { Content } from "../../../input/loadContent.ts";
import type { Tables } from "../../../input/context.ts";
import type { Binder } from "../../binder/makeBinder.ts";

/** Digits of the mark: enough to tell two binders apart. */
const DIGITS = 10;

/** Tells from which files a binder was made: the same files and version have the same mark, and no clock has a say in it. */
export function fileMark(
  version: string,
  content: Content,
  tables: Tables,
  binder: Binder | undefined,
): string {
  const files = binder && {
    shop: binder.shopWritten,
    job: binder.job,
    parts: binder.parts.map(({ report, written, trials }) => [report.part.name, written, trials]),
  };
  const hash = createHash("sha256").update(JSON.stringify([version, content, tables, files]));
  return `Slantwork ${version}, files ${hash.digest("hex").slice(0, DIGITS)}`;
}
