import { develop } from "../src/report/develop.ts";
import type { NamedPart } from "../src/report/lay.ts";
import type { Report } from "../src/report/report.ts";
import type { Catalogue } from "../src/shapes/catalogue.ts";
import type { Part } from "../src/shapes/part.ts";

/** One steel, its values as EN 10025-2 and EN 1993-1-1 give them for S235 up to 16 mm. */
export const catalogue: Catalogue = {
  materials: {
    s235: {
      name: "S235",
      family: "steel",
      densityKgM3: 7850,
      yieldMPa: 235,
      tensileMPa: 360,
      youngsGPa: 210,
      poisson: 0.3,
      sources: { strength: "en-10025-2", density: "en-1993-1-1-memory", elastic: "en-1993-1-1-memory" },
    },
  },
};

type Loose<T> = T extends unknown ? Omit<T, "title" | "units" | "material"> : never;

/** A part with the keys that do not matter here filled in. */
export const named = (part: Loose<Part>, name = "part"): NamedPart => ({
  title: "A part",
  units: "mm",
  material: "s235",
  ...part,
  name,
});

/** The report of a part that can be laid out; a refusal is the test's failure. */
export function reportOf(part: NamedPart): Report {
  const developed = develop(part, { catalogue });
  if (developed.kind === "refused") throw new Error(JSON.stringify({ part, issues: developed.issues }));
  return developed.report;
}

/** A wide rectangle under a small round far aside: nearly every line has an angle of its own. */
export const askewHood = named({
  shape: "square-to-round",
  thickness: 1,
  rectangularEnd: { length: 900, width: 500, measured: "inside" },
  roundEnd: { diameter: 300, measured: "inside", offset: [230, 90] },
  height: 250,
});
