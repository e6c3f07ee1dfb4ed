import { existsSync, mkdirSync, rmdirSync, statSync } from "node:fs";
import { dirname } from "node:path";

/**
 * Makes a folder and those that it lies in, one by one: where a file system lets nothing be made and says that the
 * folder is missing, as /proc does, Node's own way of making them all never comes to an end.
 *
 * @param takeBack is given a step for each, which takes it away again
 */
export function makeFolder(folder: string, takeBack: (step: () => void) => void = () => undefined): void {
  const missing: string[] = [];
  for (let at = folder; !existsSync(at) && dirname(at) !== at; at = dirname(at)) missing.unshift(at);
  for (const one of missing) {
    mkdirSync(one);
    takeBack(() => rmdirSync(one));
  }
  if (!statSync(folder).isDirectory()) throw Object.assign(new Error(folder), { code: "ENOTDIR" });
}
