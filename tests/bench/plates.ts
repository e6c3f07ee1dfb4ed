import { loadCatalogue } from "../../src/input/loadCatalogue.ts";
import { readFolder } from "../../src/input/readFolder.ts";
import { enclose } from "../../src/nesting/enclose.ts";
import { layPlates } from "../../src/nesting/layPlates.ts";
import type { LayItem, Stock } from "../../src/nesting/model.ts";
import { contourOf, cutPatterns } from "../../src/output/contour.ts";
import { develop } from "../../src/report/develop.ts";

/** Spacing and margin of the demo shop. [mm] */
const [SPACING, EDGE] = [10, 10];

/** Blanks of the demo job by material and thickness, with the plates there are. */
function groups(): { items: LayItem[]; stock: Stock[] }[] {
  const tables = loadCatalogue();
  const { parts, shop } = readFolder("demo-data", tables);
  const sorted = new Map<string, { items: LayItem[]; stock: Stock[] }>();
  for (const { part } of parts) {
    const developed = develop(part, { catalogue: tables.catalogue, ...(shop && { shop }) });
    if (developed.kind === "refused") continue;
    const key = `${part.material} ${part.thickness.toFixed(2)}`;
    const stock = (shop?.stock ?? [])
      .filter((one) => `${one.material} ${one.thickness.toFixed(2)}` === key)
      .map(({ length, width, grain = false }) => ({ lengthMm: length, widthMm: width, grain }));
    const group = sorted.get(key) ?? { items: [], stock };
    sorted.set(key, group);
    for (const { blank, count } of cutPatterns(developed.report))
      group.items.push({
        part: part.name,
        piece: blank.piece,
        count,
        areaMm2: blank.areaMm2,
        outline: enclose(contourOf(blank)),
      });
  }
  return [...sorted.values()];
}

/** How well the demo job lies on its plates by true shapes, against the rectangles round the same blanks. */
export function benchPlates(): void {
  const all = groups();
  for (const effort of [0.1, 1, 10]) {
    const before = performance.now();
    const laid = all.map(({ items, stock }) =>
      layPlates(items, stock, { spacingMm: SPACING, edgeMm: EDGE, effort, seed: 1 }),
    );
    const seconds = (performance.now() - before) / 1000;
    const sum = (of: (one: (typeof laid)[number]) => number) =>
      laid.reduce((total, one) => total + of(one), 0);
    const mean = (of: (one: (typeof laid)[number]) => number) => sum(of) / laid.length;
    const plates = sum((one) => one.plates.reduce((count, plate) => count + plate.count, 0));
    const rectangles = sum((one) => one.bounds.rectanglePlates);
    console.log(
      `plates, effort ${effort}: ${plates} (${sum((one) => one.bounds.areaPlates)} at least by area, ${rectangles} by rectangles); ` +
        `used/rectangles ${mean((one) => one.utilisation / one.bounds.rectangleUtilisation).toFixed(2)}, ` +
        `up to the last blank ${mean((one) => one.usedShare / one.bounds.rectangleUsedShare).toFixed(2)}; ${seconds.toFixed(1)} s`,
    );
  }
}
