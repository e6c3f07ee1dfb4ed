import { SAME_POINT_MM } from "../geometry/tolerance.ts";
import type { ShopAsked } from "./asked.ts";
import type { Check } from "./check.ts";
import { DERIVED, judge, state } from "./judge.ts";

interface Rectangle {
  readonly lengthMm: number;
  readonly widthMm: number;
}

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

/**
 * Does every blank's box go on a plate of this material and thickness? Not asked without a shop, and answered "not known" where the shop lists no stock; each blank
 * is tried at every half degree on the plate that suits it best, and the worst blank answers. [mm]
 */
export function stockPlate({ item, shop, say }: ShopAsked): Check | null {
  if (!shop || item.blanks.length === 0) return null;
  const stock = shop.stock ?? [];
  const plates = stock
    .filter(({ material }) => material === item.materialId || material === item.material.name)
    .filter(({ thickness }) => Math.abs(thickness - item.thicknessMm) <= SAME_POINT_MM)
    .map(({ length, width }) => ({ lengthMm: length, widthMm: width }));
  const plate = `${say.length(item.thicknessMm)} ${item.material.name}`;
  const words = {
    id: "stock-plate",
    title: "Blank on stock plate",
    sense: "at most" as const,
    unit: "mm",
    basis: DERIVED,
    rule: "a rectangle round each blank, at whatever angle suits best, ≤ a stock plate of its material and thickness",
  };
  const box = (one: Rectangle) =>
    upright(one)
      .map((side) => say.length(side))
      .join(" × ");
  const largestFirst = item.blanks.toSorted((a, b) => b.lengthMm * b.widthMm - a.lengthMm * a.widthMm);
  const largest = largestFirst.slice(0, 1).map(box).join("");
  const best = largestFirst.flatMap((blank) =>
    plates
      .flatMap((one) =>
        (blank.boxes ?? [blank]).map((turned) => ({ blank: turned, plate: one, ...governing(turned, one) })),
      )
      .toSorted((a, b) => use(a) - use(b))
      .slice(0, 1),
  );
  const worst = best.toSorted((a, b) => use(b) - use(a))[0];
  if (!worst)
    return state({
      ...words,
      verdict: "caution",
      advice: !shop.stock
        ? `The shop file lists no stock plates: see that plate of at least ${largest} is there for the largest blank.`
        : `The stock list has no ${plate}: order plate of at least ${largest} for the largest blank.`,
    });
  return judge({
    ...words,
    value: worst.value,
    limit: worst.limit,
    beyond: "fail",
    advice: (verdict) =>
      verdict === "pass"
        ? `A blank of ${box(worst.blank)} goes on a stock plate of ${box(worst.plate)}.`
        : `A blank of ${box(worst.blank)} goes on no stock plate of ${plate}, the best being ${box(worst.plate)}: split the part in more pieces, or order plate.`,
  });
}
