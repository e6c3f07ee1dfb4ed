import { fileURLToPath } from "node:url";

/** What the bundler knows of a module. */
interface Known {
  readonly importedIds: readonly string[];
}
interface Modules {
  readonly getModuleInfo: (id: string) => Known | null;
}

const ours = (...paths: readonly string[]): string[] =>
  paths.map((path) => fileURLToPath(new URL(`../../${path}`, import.meta.url)));

/** What a bench begins with. */
const START = ours("site/bench/start.ts");
/** What every shape takes. */
const SHAPES = ours(
  "shapes/shape.ts",
  "shapes/words.ts",
  "shapes/limits.ts",
  "shapes/pieces.ts",
  "geometry/rim.ts",
);
/** What is drawn above the form where the screen is narrow: there from the beginning. */
const LOW = ours("site/bench/drawings/LowPattern.svelte");
/** What is drawn beside the form. */
const VIEWS = ours("site/bench/PartViews.svelte");
/** Whether it goes: loaded with the views for the first hand on the page. */
const VERDICT = ours("report/judged.ts", "site/bench/withReport.ts");
/** What a verdict is joined by: it is asked for with it or right after. */
const JOINING = ours("forming/onMachine.ts", "site/bench/ownTrials.ts", "site/bench/cares.ts");
/** Files, links and the tray: loaded with it too. */
const FILING = ours("site/bench/files/filing.ts");
/** What comes without a verdict. */
const WITHOUT = [...FILING, ...ours("site/pdf/startPdf.ts")];
/** Scripts that a page runs without a bench: they load nothing that is made for benches. */
const PAGES = ours(
  "site/bench/open.ts",
  "site/trials/trialForm.ts",
  "site/pdf/open.ts",
  "site/pdf/startPdf.ts",
  "site/offline/register.ts",
);

/** Modules with all that they load at once. */
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

const CHUNKS = ["shared", "bench", "low", "views", "filing", "forming", "verdict"] as const;
type Chunk = (typeof CHUNKS)[number];

/** The chunk that a module goes into; undefined for what is neither begun with nor loaded by itself. */
function chunkOf(): (id: string, modules: Modules) => Chunk | undefined {
  let known:
    | Readonly<
        Record<"start" | "low" | "views" | "filing" | "verdict" | "without" | "pages", ReadonlySet<string>>
      >
    | undefined;
  return (id, modules) => {
    known ??= {
      start: closure(modules, [...START, ...SHAPES]),
      low: closure(modules, LOW),
      views: closure(modules, VIEWS),
      filing: closure(modules, FILING),
      verdict: closure(modules, [...VERDICT, ...JOINING]),
      without: closure(modules, WITHOUT),
      pages: closure(modules, PAGES),
    };
    const { start, low, views, filing, verdict, without, pages } = known;
    // What is asked for by its name is a chunk of its own.
    if ([...START, ...VERDICT].includes(id)) return undefined;
    if (id.includes("/node_modules/"))
      return start.has(id) && /\/node_modules\/(?:svelte|esm-env|clsx)\//.test(id) ? "bench" : undefined;
    if (start.has(id)) return pages.has(id) ? "shared" : "bench";
    if (low.has(id)) return pages.has(id) ? "shared" : "low";
    if (views.has(id)) return pages.has(id) ? "shared" : "views";
    if (filing.has(id)) return pages.has(id) ? "shared" : "filing";
    if (verdict.has(id) && !without.has(id)) return pages.has(id) ? "forming" : "verdict";
    return undefined;
  };
}

/** Scripts that come by themselves or with the first hand, and the one that a hand on a drawing waits for, each named after its module. */
const IN_HASTE = /\/(?:start|low|views|judged|withReport|filing|d3Zoom)\.[^/]*$/;

/**
 * What is fetched along with a script that is loaded later on, before the script itself says so: for one in haste all it takes,
 * for others their styles alone. The names of all those files would weigh as much as a drawing.
 */
const early = (script: string, files: string[]): string[] =>
  IN_HASTE.test(script) ? files : files.filter((file) => file.endsWith(".css"));

/**
 * Puts what a bench loads by itself into few files: cut by who else loads which module it comes in two dozen, which together
 * weigh a twentieth more, because each is packed for itself.
 */
export function benchInOne() {
  const chunk = chunkOf();
  const group = (name: Chunk) => ({
    debugName: name,
    name: (id: string, modules: Modules) => (chunk(id, modules) === name ? name : null),
  });
  return {
    name: "bench-in-one",
    applyToEnvironment: ({ name }: { readonly name: string }) => name === "client",
    configEnvironment: (name: string) =>
      name === "client"
        ? { build: { modulePreload: { polyfill: false, resolveDependencies: early } } }
        : undefined,
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
        groups: CHUNKS.map(group),
      },
    }),
  };
}
