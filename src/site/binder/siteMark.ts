import { readFileSync } from "node:fs";
import { resolve } from "node:path";
import { loadCatalogue } from "../../input/loadCatalogue.ts";
import { loadContent } from "../../input/loadContent.ts";
import { fileMark } from "../pdf/binder/mark.ts";
import { type Binder, readBinder } from "./binder.ts";

const known = new WeakMap<Binder, string>();

/** Which version and files this site is made from: the same mark that a PDF of the same files carries on every page. */
export function siteMark(): string {
  const binder = readBinder();
  const { version } = JSON.parse(readFileSync("package.json", "utf8")) as { version: string };
  const folder = resolve("content");
  const mark = known.get(binder) ?? fileMark(version, loadContent(folder), loadCatalogue(folder), binder);
  known.set(binder, mark);
  return mark;
}
