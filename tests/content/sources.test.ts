import { existsSync, globSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import * as z from "zod/mini";
import { pagesOf, yamlOf } from "./read.ts";

const text = () => z.string().check(z.minLength(1));
const Sources = z.record(
  z.string().check(z.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/)),
  z.strictObject({
    title: text(),
    short: z.string().check(z.minLength(1), z.maxLength(40)),
    where: text(),
    kind: z.enum(["standard", "book", "paper", "web page", "statute", "common practice"]),
    read: z.enum(["read", "read in a reproduction", "from memory"]),
    note: text(),
  }),
);
const sources = Sources.parse(yamlOf("content/sources.yaml"));

/** Bases that need no entry. */
const NO_SOURCE = ["common practice, no source", "derived here", "as drawn"];

/** Ids that rules and tables of the code were written against. */
const RELIED_ON = [
  ..."en-10025-2 astm-a36 astm-a240-memory en-485-2 en-10088-memory en-1993-1-1-memory en-1999-1-1-memory".split(
    " ",
  ),
  ..."en-10088-1-memory jis-basic-weight 15-usc-206 msg-rule galvanised-gauge-rule-memory awg-rule".split(
    " ",
  ),
  ..."asme-viii-1-ucs-79 groover-memory benson-bump-bending metalforming-step-bending astm-a6-x4-2".split(
    " ",
  ),
  ..."iso-13920 atkins-1908 longfield-1921 kittredge-1901 kidder-1920 coey-2021 navedtra-14251".split(" "),
  ..."net-of-a-frustum mathforum-55017 gosper-2010 finch-2012 msc-4634599 demaine-price-2010 wallner".split(
    " ",
  ),
  ..."do-carmo-memory gardiner-1957-memory wagoner-2006 ansi-b11-3 ansi-b11-12 en-12622".split(" "),
  ..."osha-1910-212 osha-1910-147 osha-1910-146 iso-12100-memory iso-128-memory en-10029-1991".split(" "),
];

/** Every string that is, or stands in a list, under the key `sources` anywhere in the data. */
function namedIn(data: unknown, under = false): string[] {
  if (typeof data === "string") return under ? [data] : [];
  if (Array.isArray(data)) return data.flatMap((one) => namedIn(one, under));
  if (typeof data !== "object" || data === null) return [];
  return Object.entries(data).flatMap(([key, value]) => namedIn(value, under || key === "sources"));
}

it("has an entry for every source relied on", () => {
  expect(RELIED_ON.filter((id) => !(id in sources))).toEqual([]);
});

it("says of every recalled source, by its id and by its entry, that it is recalled", () => {
  for (const [id, { read }] of Object.entries(sources))
    expect(id.endsWith("-memory"), `${id}: ${read}`).toBe(read === "from memory");
});

it.each(["content/materials.yaml", "content/gauges.yaml"].filter((path) => existsSync(path)))(
  "knows every source named in %s",
  (path) => {
    const named = namedIn(yamlOf(path));
    expect(named.length).toBeGreaterThan(0);
    expect(named.filter((id) => !(id in sources))).toEqual([]);
  },
);

it.each([...pagesOf("content/shapes"), ...pagesOf("content/safety")])(
  "knows every source named on the page $name",
  ({ front }) => {
    const named = namedIn(front);
    expect(named.length).toBeGreaterThan(0);
    expect(named.filter((id) => !(id in sources))).toEqual([]);
    expect(new Set(named).size, "named once each").toBe(named.length);
  },
);

it("knows every basis and every source that the code names", () => {
  const files = globSync("src/**/*.ts");
  expect(files.length).toBeGreaterThan(0);
  for (const file of files) {
    const code = readFileSync(file, "utf8");
    for (const [, basis = ""] of code.matchAll(/\bbasis: "([^"]+)"/g))
      expect(basis in sources || NO_SOURCE.includes(basis), `${file}: basis "${basis}"`).toBe(true);
    for (const [, id = ""] of code.matchAll(/sources\.yaml#([a-z0-9-]+)/g))
      expect(id in sources, `${file}: sources.yaml#${id}`).toBe(true);
  }
});
