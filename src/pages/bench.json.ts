import type { APIRoute } from "astro";
import type { BenchTables } from "../site/bench/start.ts";
import { readBinder } from "../site/binder/binder.ts";

/** What every live bench reads: materials, gauges, and the shop as its file says it. */
export const GET: APIRoute = () => {
  const { tables, shopWritten } = readBinder();
  const all: BenchTables = { tables, shop: shopWritten ?? null };
  return new Response(JSON.stringify(all), { headers: { "content-type": "application/json" } });
};
