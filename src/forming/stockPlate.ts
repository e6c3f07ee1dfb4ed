import { morePiecesThan } from "../shapes/pieces.ts";
import { AT_LIMIT_REL, SAME_POINT_MM } from "../geometry/tolerance.ts";
import { exactFraction } from "../geometry/inches.ts";
import type { PartAsked, ShopAsked } from "./asked.ts";
import type { FormingCase } from "./case.ts";
import type { Check } from "./check.ts";
import { cuttingOf } from "./cutting.ts";
import { DERIVED, judge, state } from "./judge.ts";
import type { Shop } from "./machine.ts";
import { plateToOrder } from "./plateToOrder.ts";
import type { Say } from "./say.ts";

interface Rectangle {
  readonly lengthMm: number;
  readonly widthMm: number;
}

/** A blank nearer to the plate's size than this leaves too little for mill edge, kerf and clamps to be sure. [-] */
const TIGHT = 0.99;

const area = ({ lengthMm, widthMm }: Rectangle) => lengthMm * widthMm;

const upright = ({ lengthMm, widthMm }: Rectangle) =>
  [Math.max(lengthMm, widthMm), Math.min(lengthMm, widthMm)] as const;

/** The side of the box that comes nearest to the plate's, or furthest beyond it, either way round: long on long. */
function governing(box: Rectangle, plate: Rectangle): { value: number; limit: number } {
  const [long, short] = upright(box);
  const [plateLong, plateShort] = upright(plate);
  return long / plateLong >= short / plateShort
    ? { value: long, limit: plateLong }
    : { value: short, limit: plateShort };
}

const use = ({ value, limit }: { value: number; limit: number }) => value / limit;

/** "6 mm S235", "3/16 in plate of A36": after a number "in" would read as the preposition. */
function plateWords({ thicknessMm, material: { name } }: FormingCase, say: Say): string {
  if (say.units === "mm") return `${say.length(thicknessMm)} ${name}`;
  const fraction = exactFraction(thicknessMm);
  return `${fraction === null ? say.length(thicknessMm) : `${fraction} in`} plate of ${name}`;
}

/** A blank's ways to lie: as drawn first, then turned, each on each plate. */
interface Laid extends Rectangle {
  readonly turnRad: number;
}

const waysOf = (blank: FormingCase["blanks"][number]): readonly Laid[] => [
  { lengthMm: blank.lengthMm, widthMm: blank.widthMm, turnRad: 0 },
  ...(blank.turned ?? []),
];

/** What takes every blank of the part, in the part's units: "1640 × 1020 mm", "any of the 3 blanks". */
function orderWords({ item, say }: PartAsked, shop: Shop): { readonly size: string; readonly whose: string } {
  const { blanks, thicknessMm } = item;
  const { edgeMm } = cuttingOf(shop, thicknessMm);
  const { lengthMm, widthMm } = plateToOrder(blanks.map(waysOf), { edgeMm, units: say.units });
  const each = blanks.length === 1 ? "the blank" : `any of the ${blanks.length} blanks`;
  const whose = `${each}${edgeMm > 0 ? ` with ${say.length(edgeMm)} left along the edges` : ""}`;
  return { size: `${say.bare(lengthMm)} × ${say.length(widthMm)}`, whose };
}

/** The way that suits best: as drawn on the first plate that takes it so, else the way that leaves most room. */
function bestOn(blank: FormingCase["blanks"][number], plates: readonly Rectangle[]) {
  const on = (way: Laid) => plates.map((plate) => ({ way, plate, ...governing(way, plate) }));
  const ways = waysOf(blank);
  const [drawn] = ways;
  const fits = ways
    .slice(0, 1)
    .flatMap(on)
    .filter((one) => use(one) <= 1 + AT_LIMIT_REL);
  const all = fits.length > 0 ? fits : ways.flatMap(on);
  return all
    .toSorted((a, b) => (fits.length > 0 ? area(a.plate) - area(b.plate) : use(a) - use(b)))
    .slice(0, 1)
    .map((one) => ({ ...one, drawn: drawn ?? one.way }));
}

/**
 * Does every blank go on a plate of this material and thickness? Not asked without a shop, and not known where the shop lists
 * no stock; each blank is tried as drawn and at every half degree on the plate that suits it best, and the worst blank
 * answers. Plate can be ordered, so this is never a refusal, whatever the machine says. [mm]
 */
export function stockPlate({ item, shop, say }: ShopAsked): Check | null {
  if (!shop || item.blanks.length === 0) return null;
  const stock = shop.stock ?? [];
  const plates = stock
    .filter(({ material }) => material === item.materialId || material === item.material.name)
    .filter(({ thickness }) => Math.abs(thickness - item.thicknessMm) <= SAME_POINT_MM)
    .map(({ length, width }) => ({ lengthMm: length, widthMm: width }));
  const plate = plateWords(item, say);
  const words = {
    id: "stock-plate",
    title: "Blank on stock plate",
    sense: "at most" as const,
    unit: "mm",
    basis: DERIVED,
    rule: "a rectangle round each blank, as drawn or turned, ≤ a stock plate of its material and thickness",
  };
  const box = (one: Rectangle) =>
    upright(one)
      .map((side) => say.length(side))
      .join(" × ");
  const largestFirst = item.blanks.toSorted((a, b) => b.lengthMm * b.widthMm - a.lengthMm * a.widthMm);
  const best = largestFirst.flatMap((blank) => bestOn(blank, plates));
  const how = ({ turnRad }: Laid) =>
    turnRad === 0
      ? "as drawn"
      : `turned by ${say.angle(Math.abs(turnRad))} ${turnRad > 0 ? "counter-clockwise" : "clockwise"}`;
  const lacks = ({ way, plate: largest }: (typeof best)[number]) =>
    way.turnRad === 0
      ? `, the best being ${box(largest)}`
      : `; ${how(way)}, where least is missing, it takes ${box(way)}, and the best plate is ${box(largest)}`;
  const worst = best.toSorted((a, b) => use(b) - use(a))[0];
  if (!worst) {
    const { size, whose } = orderWords({ item, say }, shop);
    return state({
      ...words,
      rule: "the least plate, in whole 10 mm or half inches, that takes a rectangle round each blank, as drawn or turned, and twice the edge of a plate both ways",
      verdict: "caution",
      advice: !shop.stock
        ? `The shop file lists no stock plates: see that plate of at least ${size} is there, which takes ${whose}.`
        : `The stock list has no ${plate}: order plate of at least ${size}, which takes ${whose}.`,
    });
  }
  const more = morePiecesThan(item.shape, item.pieces).length > 0;
  return judge({
    ...words,
    value: worst.value,
    limit: worst.limit,
    beyond: "caution",
    nearShare: TIGHT,
    advice: (verdict) =>
      verdict === "caution" && worst.value <= worst.limit
        ? `The blank, ${box(worst.way)} ${how(worst.way)}, just goes on a stock plate of ${box(worst.plate)}: measure the plate, for little is left for its edge, the kerf and the clamps${more ? "; or split the part in more pieces" : ""}.`
        : verdict === "pass"
          ? `The blank, ${box(worst.way)} ${how(worst.way)}, goes on a stock plate of ${box(worst.plate)}.`
          : `The blank, ${box(worst.drawn)} as drawn, goes on no ${plate} in stock${lacks(worst)}: order plate${more ? ", or split the part in more pieces" : ""}.`,
  });
}
