import { fileURLToPath } from "node:url";

/** What the bundler knows of a module. */
interface Known {
  readonly importedIds: readonly string[];
}
interface Modules {
  readonly getModuleInfo: (id: string) => Known | null;
}

const ours = (path: string): string => fileURLToPath(new URL(`../${path}`, import.meta.url));

/** What a bench begins with. */
const BENCH = ours("bench/start.ts");
/** Scripts that a page runs without a bench: they load nothing that is made for benches. */
const PAGES = [
  "bench/open.ts",
  "trials/trialForm.ts",
  "pdf/open.ts",
  "pdf/startPdf.ts",
  "offline/register.ts",
].map(ours);

/** A module with all that it loads at once. */
function closure(modules: Modules, ids: readonly string[]): ReadonlySet<string> {
  const seen = new Set<string>();
  const go = (id: string): void => {
    if (seen.has(id)) return;
    seen.add(id);
    modules.getModuleInfo(id)?.importedIds.forEach(go);
  };
  ids.forEach(go);
  return seen;
}

/** The chunk that a module goes into, of those that a bench begins with. */
function chunks(): (id: string, modules: Modules) => "runtime" | "shared" | "bench" | undefined {
  let bench: ReadonlySet<string> | undefined;
  let pages: ReadonlySet<string> | undefined;
  return (id, modules) => {
    bench ??= closure(modules, [BENCH]);
    pages ??= closure(modules, PAGES);
    // The bench's own module is asked for by name; of d3 it takes one module, the rest comes when it is asked for.
    if (!bench.has(id) || id === BENCH) return undefined;
    if (/\/node_modules\/(?:svelte|esm-env|clsx)\//.test(id)) return "runtime";
    if (id.includes("/node_modules/") && !id.includes("/node_modules/d3-path/")) return undefined;
    return pages.has(id) ? "shared" : "bench";
  };
}

/**
 * Puts what a bench begins with into few files: cut by who else loads which module it comes in a dozen, which together weigh
 * a twentieth more, because each is packed for itself.
 */
export function benchInOne() {
  const chunkOf = chunks();
  const group = (name: "runtime" | "shared" | "bench") => ({
    debugName: name,
    name: (id: string, modules: Modules) => (chunkOf(id, modules) === name ? name : null),
  });
  return {
    name: "bench-in-one",
    applyToEnvironment: ({ name }: { readonly name: string }) => name === "client",
    // Nobody imports what a page runs, so that its chunk may export more than it says.
    options: <T extends object>(options: T) => ({
      ...options,
      preserveEntrySignatures: "allow-extension" as const,
    }),
    outputOptions: <T extends object>(options: T) => ({
      ...options,
      codeSplitting: {
        // Else all of d3 would come along with the one function that a drawing takes of it.
        includeDependenciesRecursively: false,
        groups: [group("runtime"), group("shared"), group("bench")],
      },
    }),
  };
}
