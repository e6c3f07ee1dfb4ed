import { benchBinder } from "./binder.ts";
import { benchForming } from "./forming.ts";
import { benchPages } from "./pages.ts";
import { benchParts } from "./parts.ts";
import { benchPlates } from "./plates.ts";
import { keystrokes, printKeystrokes } from "./keystroke.ts";

const BENCHMARKS: Readonly<Record<string, () => void | Promise<void>>> = {
  forming: benchForming,
  parts: benchParts,
  plates: benchPlates,
  binder: benchBinder,
  pages: benchPages,
  keystrokes: async () => printKeystrokes(await keystrokes()),
};

/** Those that are named, in the order of the list above; all where none is. */
const named = process.argv.slice(2);
const unknown = named.filter((name) => !Object.hasOwn(BENCHMARKS, name));
if (unknown.length > 0) {
  console.error(
    `No benchmark is called ${unknown.join(", ")}. There are: ${Object.keys(BENCHMARKS).join(", ")}.`,
  );
  process.exit(1);
}
for (const [name, run] of Object.entries(BENCHMARKS))
  if (named.length === 0 || named.includes(name)) await run();
