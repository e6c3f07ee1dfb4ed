import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, resolve } from "node:path";

/** Where the notices lie in the finished binder. */
export const LICENCES = "licences.txt";

/** A piece of a script that the build writes, as far as it matters here. */
interface Chunk {
  readonly type: string;
  readonly modules?: Readonly<Record<string, { readonly renderedLength: number }>>;
}

/** What a build plugin is called with. */
interface Building {
  readonly environment: { readonly name: string };
  readonly emitFile: (file: { type: "asset"; fileName: string; source: string }) => unknown;
}

/** Modules that the builder puts in itself, by how their names begin. */
const OWN_MODULES: Readonly<Record<string, string>> = { "\0vite/": "vite", "\0rolldown/": "rolldown" };
const PACKAGE = /^(.*\/node_modules\/((?:@[^/]+\/)?[^/]+))\//;
/** A builder's file goes on with the licences of what it is built from itself, which reaches no page. */
const BUNDLED = /^# Licenses of bundled dependencies/m;
const LEGAL_NAME = /^(?:licen[cs]e|copying|notice)/i;
const COMMENT = /\/\*[\s\S]*?\*\//g;
const LEGAL = /@license|@licence|@preserve|copyright/i;
const RULE = "-".repeat(72);

/** The folder of the package that a module is of; undefined for the project's own. */
function packageOf(id: string): string | undefined {
  for (const [start, name] of Object.entries(OWN_MODULES))
    if (id.startsWith(start)) return resolve("node_modules", name);
  return PACKAGE.exec(id.replaceAll("\\", "/"))?.[1];
}

/** The notices in a module's own comments: what it was built from by others, whose licences stand nowhere else. */
function commentsIn(id: string): string[] {
  const [file = ""] = id.split("?");
  if (!existsSync(file)) return [];
  return (readFileSync(file, "utf8").match(COMMENT) ?? []).filter((one) => LEGAL.test(one));
}

/** One package's notices. @throws where a package has none: then nobody may pass it on */
export function noticesOf(folder: string, modules: readonly string[]): string {
  const about = JSON.parse(readFileSync(join(folder, "package.json"), "utf8")) as {
    name: string;
    version: string;
    license?: string;
  };
  const files = readdirSync(folder).filter((name) => LEGAL_NAME.test(name));
  if (files.length === 0) throw new Error(`${about.name} ${about.version} comes without a licence file`);
  const texts = files.map((name) => readFileSync(join(folder, name), "utf8").split(BUNDLED)[0]?.trim() ?? "");
  const comments = [...new Set(modules.flatMap(commentsIn))];
  return [`${about.name} ${about.version}, ${about.license ?? "licence below"}`, ...texts, ...comments].join(
    "\n\n",
  );
}

/** The text of all notices: of each package whose code is in the scripts, and of the font. */
export function licencesOf(chunks: readonly Chunk[]): string {
  const packages = new Map<string, string[]>();
  for (const { modules = {} } of chunks)
    for (const [id, { renderedLength }] of Object.entries(modules)) {
      const folder = renderedLength > 0 ? packageOf(id) : undefined;
      if (folder !== undefined) packages.set(folder, [...(packages.get(folder) ?? []), id]);
    }
  const notices = [...packages]
    .map(([folder, modules]) => noticesOf(folder, modules.toSorted()))
    .toSorted((a, b) => (a < b ? -1 : 1));
  const font = `Font of the pages, fonts/OFL.txt\n\n${readFileSync("public/fonts/OFL.txt", "utf8").trim()}`;
  const head =
    "The scripts of this binder hold code of the packages below, and its pages a font. Their licences ask that these notices go with them.";
  return `${[head, ...notices, font].join(`\n\n${RULE}\n\n`)}\n`;
}

/** Writes the notices of all packages that the scripts of a binder are made from; a minifier takes them off the scripts. */
export function licences() {
  return {
    name: "licences",
    generateBundle(this: Building, _: unknown, bundle: Readonly<Record<string, Chunk>>): void {
      if (this.environment.name !== "client") return;
      // The mark in front tells every browser which signs these are.
      const source = `\ufeff${licencesOf(Object.values(bundle))}`;
      this.emitFile({ type: "asset", fileName: LICENCES, source });
    },
  };
}
