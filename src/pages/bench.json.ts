import type { BenchTables } from "../site/bench/start.ts";
import { partOutlines } from "../site/bench/partOutlines.ts";
import { readBinder } from "../site/binder/binder.ts";
import { explainedWords, glossaryTexts } from "../site/binder/explained.ts";
import { ROLL_WORD_ENTRIES } from "../site/forming/rollWords.ts";
import { sourceIds } from "../site/binder/sourceIds.ts";

/** What every live bench reads: materials, gauges, and the shop as its file says it. */
export const GET = async (): Promise<Response> => {
  const { tables, shop, shopWritten, job } = readBinder();
  const all: BenchTables = {
    tables,
    outlines: partOutlines(),
    shop: shop && shopWritten ? { typed: shopWritten, shop } : null,
    known: [...(await sourceIds())],
    explained: [...(await explainedWords())],
    glossary: [...(await glossaryTexts())].filter(([entry]) => ROLL_WORD_ENTRIES.includes(entry)),
    job: job ?? null,
  };
  return new Response(JSON.stringify(all), { headers: { "content-type": "application/json" } });
};
