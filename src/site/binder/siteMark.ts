import { resolve } from "node:path";
import { loadCatalogue } from "../../input/loadCatalogue.ts";
import { loadContent } from "../../input/loadContent.ts";
import { fileMark } from "../pdf/binder/mark.ts";
import { type Binder, readBinder } from "./binder.ts";
import { projectVersion } from "./projectFiles.ts";

const known = new WeakMap<Binder, string>();

/** Which version and files this site is made from: the same mark that a PDF of the same files carries on every page. */
export function siteMark(): string {
  const binder = readBinder();
  const found = known.get(binder);
  if (found !== undefined) return found;
  const folder = resolve("content");
  const mark = fileMark(projectVersion(), loadContent(folder), loadCatalogue(folder), binder);
  known.set(binder, mark);
  return mark;
}
