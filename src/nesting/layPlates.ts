import { placer } from "../geometry/placed.ts";
import { LAY_GRID_MM } from "../geometry/tolerance.ts";
import { liesApart } from "./apart.ts";
import type { Put } from "./fill.ts";
import { formsOf, named } from "./forms.ts";
import { freeRectangle } from "./freeRectangle.ts";
import { type Filled, lengthOf, reachOf } from "./layout.ts";
import type { Bounds, LaidPlate, LaidPlates, LayItem, LayOptions, Left, Placing, Stock } from "./model.ts";
import { layRectangles } from "./rectangles.ts";
import { grown, gridRing, ringMm } from "./ring.ts";
import { search } from "./search.ts";
import { type Kind, kindsOf, roomOf } from "./variant.ts";

/** Plates of one size with what is laid on them. */
interface OnStock {
  readonly stock: Stock;
  readonly filled: readonly Filled[];
}

/**
 * Lays blanks of one material and thickness on as little plate as a search finds: true shapes, each at least the spacing
 * from the others and the margin from the edges. Where there are several sizes, each is tried for all blanks that go on
 * it, the rest on others; then each plate is changed for the smallest that still takes its blanks; the least plate wins.
 *
 * Distances hold to within `LAY_TOUCH_MM`. The same items, stock and options give the same answer on every machine.
 */
export function layPlates(
  wanted: readonly LayItem[],
  stock: readonly Stock[],
  options: LayOptions,
): LaidPlates {
  const { spacingMm, edgeMm } = options;
  if (!(spacingMm >= 0) || !(edgeMm >= 0)) throw new RangeError(`spacing ${spacingMm}, edge ${edgeMm}`);
  const forms = formsOf(wanted);
  const items = forms.map(({ item }) => item);
  const sizes = stock
    .filter((one) => roomOf(one, edgeMm).xMm > 0 && roomOf(one, edgeMm).yMm > 0)
    .map((one) => ({ stock: one, kinds: kindsOf(items, one, options) }));
  const fits = items.map((_, i) => sizes.some(({ kinds }) => goesOn(kinds, i)));
  const counts = items.map(({ count }, i) => (fits[i] ? count : 0));
  const share = { effort: options.effort / Math.max(1, sizes.length), seed: options.seed };
  const byShape = leastPlate(sizes, counts, edgeMm, (kinds, one) =>
    search(kinds, roomOf(one, edgeMm), share),
  );
  const byBox = leastPlate(sizes, counts, edgeMm, (kinds, one) =>
    layRectangles(kinds, roomOf(one, edgeMm), spacingMm),
  );
  const told = (used: readonly OnStock[]) =>
    used.flatMap(({ stock: one, filled }) => filled.map((each) => laidPlate(items, one, each, options)));
  const shaped = told(byShape);
  // A search may miss what a simpler laying finds; and what does not keep its distance is no laying at all.
  const isBest =
    usedArea(byShape, edgeMm) <= usedArea(byBox, edgeMm) &&
    shaped.every(({ placings }) =>
      liesApart(
        placings.map(({ outline }) => outline),
        spacingMm,
      ),
    );
  const best = isBest ? byShape : byBox;
  const plates = isBest ? shaped : told(byBox);
  const area = items.reduce((sum, { areaMm2 }, i) => sum + areaMm2 * (counts[i] as number), 0);
  return {
    plates: named(
      plates.toSorted((a, b) => b.utilisation - a.utilisation),
      forms,
    ),
    left: forms.flatMap(({ members }, i) =>
      fits[i] ? [] : members.map((item) => leftOf(item, stock, options)),
    ),
    utilisation: ratio(area, plateArea(best)),
    usedShare: ratio(area, usedArea(best, edgeMm)),
    bounds: boundsOf(
      area,
      sizes.map((one) => one.stock),
      { boxes: byBox, edgeMm },
    ),
  };
}

type Size = { readonly stock: Stock; readonly kinds: readonly Kind[] };
type Lay = (kinds: readonly Kind[], stock: Stock) => Filled[];

const goesOn = (kinds: readonly Kind[], item: number): boolean => (kinds[item]?.variants.length ?? 0) > 0;
const ratio = (part: number, whole: number): number => (whole > 0 ? part / whole : 0);
const areaOf = ({ lengthMm, widthMm }: Stock): number => lengthMm * widthMm;
const counted = (kinds: readonly Kind[], counts: readonly number[]): Kind[] =>
  kinds.map((kind, i) => ({ ...kind, count: counts[i] as number }));

/** Every size as the main one, the smallest first; of all ways the one that uses the least plate. */
function leastPlate(sizes: readonly Size[], wanted: readonly number[], edgeMm: number, lay: Lay): OnStock[] {
  const smallestFirst = sizes.toSorted((a, b) => areaOf(a.stock) - areaOf(b.stock));
  let best: OnStock[] | undefined;
  for (const main of smallestFirst) {
    const others = smallestFirst.filter((one) => one !== main);
    let rest = wanted;
    const used: OnStock[] = [];
    for (const { stock, kinds } of [main, ...others]) {
      const here = rest.map((count, i) => (goesOn(kinds, i) ? count : 0));
      rest = rest.map((count, i) => count - (here[i] as number));
      if (here.every((count) => count === 0)) continue;
      used.push(...lay(counted(kinds, here), stock).map((one) => smaller(one, stock, smallestFirst, lay)));
    }
    if (!best || usedArea(used, edgeMm) < usedArea(best, edgeMm)) best = used;
  }
  return best ?? [];
}

/** The smallest size that takes all blanks of one plate on a single plate too. */
function smaller(plate: Filled, stock: Stock, sizes: readonly Size[], lay: Lay): OnStock {
  for (const other of sizes) {
    if (areaOf(other.stock) >= areaOf(stock)) continue;
    const counts = other.kinds.map((_, i) => plate.puts.filter(({ variant }) => variant.item === i).length);
    if (counts.some((count, i) => count > 0 && !goesOn(other.kinds, i))) continue;
    const area = other.kinds.reduce((sum, { areaMm2 }, i) => sum + areaMm2 * (counts[i] as number), 0);
    if (area > areaOf(other.stock)) continue;
    const [only, ...more] = lay(counted(other.kinds, counts), other.stock);
    if (only?.count === 1 && more.length === 0)
      return { stock: other.stock, filled: [{ ...only, count: plate.count }] };
  }
  return { stock, filled: [plate] };
}

const plateArea = (used: readonly OnStock[]): number =>
  used.reduce(
    (sum, { stock, filled }) => sum + filled.reduce((n, { count }) => n + count, 0) * areaOf(stock),
    0,
  );

/** Area of plates, of the plate with the longest strip left only what is used. [mm²] */
const usedArea = (used: readonly OnStock[], edgeMm: number): number => {
  const strips = used.map(({ stock, filled }) => {
    const room = roomOf(stock, edgeMm);
    const whole = filled.reduce((sum, { count }) => sum + count * room.xMm, 0);
    return (whole - lengthOf(filled, room)) * stock.widthMm;
  });
  return plateArea(used) - Math.max(0, ...strips);
};

function laidPlate(
  items: readonly LayItem[],
  stock: Stock,
  { puts, count }: Filled,
  { spacingMm, edgeMm }: LayOptions,
): LaidPlate {
  const placings = puts.map((put) => placingOf(items, put, edgeMm));
  const usedAreaMm2 = puts.reduce((sum, { variant }) => sum + (items[variant.item]?.areaMm2 ?? 0), 0);
  return {
    stock,
    count,
    placings,
    usedAreaMm2,
    utilisation: usedAreaMm2 / areaOf(stock),
    usedLengthMm: reachOf(puts) + 2 * edgeMm,
    free: freeRectangle(
      { ...stock, edgeMm },
      placings.map(({ outline }) => ringMm(grown(gridRing(outline, 0), spacingMm))),
    ),
  };
}

function placingOf(items: readonly LayItem[], { variant, at }: Put, edgeMm: number): Placing {
  const { part, piece, outline } = items[variant.item] as LayItem;
  const lies = { rotationDeg: variant.turnDeg, at: [at[0] + edgeMm, at[1] + edgeMm] as const };
  return { part, piece, ...lies, outline: outline.map(placer(lies)) };
}

function leftOf(
  { part, piece, count, outline }: LayItem,
  stock: readonly Stock[],
  { edgeMm, spacingMm }: LayOptions,
): Left {
  const free = stock.map((one) => ({ ...one, grain: false }));
  const item = [{ part, piece, count, outline, areaMm2: 0 }];
  return {
    part,
    piece,
    count,
    grainOnly: free.some((one) => goesOn(kindsOf(item, one, { spacingMm, edgeMm }), 0)),
  };
}

function boundsOf(
  areaMm2: number,
  stock: readonly Stock[],
  { boxes, edgeMm }: { boxes: readonly OnStock[]; edgeMm: number },
): Bounds {
  const largest = Math.max(...stock.map((one) => roomOf(one, edgeMm)).map(({ xMm, yMm }) => xMm * yMm));
  return {
    areaPlates: Math.ceil(ratio(areaMm2, largest) * (1 - LAY_GRID_MM ** 2)),
    rectanglePlates: boxes.reduce(
      (sum, { filled }) => sum + filled.reduce((n, { count }) => n + count, 0),
      0,
    ),
    rectangleUtilisation: ratio(areaMm2, plateArea(boxes)),
    rectangleUsedShare: ratio(areaMm2, usedArea(boxes, edgeMm)),
  };
}
