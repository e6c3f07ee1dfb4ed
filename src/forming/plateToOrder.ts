import { SAME_POINT_MM } from "../geometry/tolerance.ts";
import { MM_PER_INCH, type Units } from "../geometry/units.ts";

/** Its long side and its short one, either way round where it is asked about. [mm] */
interface Rectangle {
  readonly lengthMm: number;
  readonly widthMm: number;
}

/** Plate is ordered by whole sizes: 10 mm, or half an inch. [mm] */
const STEP_MM: Readonly<Record<Units, number>> = { mm: 10, in: MM_PER_INCH / 2 };

/**
 * The one size of plate that takes every blank, each at whatever angle suits it: of all lengths at which all go, with the
 * width that the widest of them then wants, the least area. Margins are added, and both sides are whole sizes.
 *
 * @param blanks of each blank the rectangles that hold it at some angle; none better than another in both sides
 * @param edgeMm what is left along each edge of the plate
 */
export function plateToOrder(
  blanks: readonly (readonly Rectangle[])[],
  { edgeMm, units }: { readonly edgeMm: number; readonly units: Units },
): Rectangle {
  const step = STEP_MM[units];
  const whole = (mm: number) => step * Math.ceil((mm + 2 * edgeMm - SAME_POINT_MM) / step);
  const sized = blanks.map((ways) =>
    ways.map(({ lengthMm, widthMm }) => ({
      lengthMm: whole(Math.max(lengthMm, widthMm)),
      widthMm: whole(Math.min(lengthMm, widthMm)),
    })),
  );
  let best: Rectangle = { lengthMm: Infinity, widthMm: Infinity };
  for (const lengthMm of new Set(sized.flat().map((one) => one.lengthMm))) {
    const widths = sized.map((ways) =>
      Math.min(...ways.filter((one) => one.lengthMm <= lengthMm).map((one) => one.widthMm)),
    );
    const widthMm = Math.max(...widths);
    const [area, least] = [lengthMm * widthMm, best.lengthMm * best.widthMm];
    if (area < least || (area === least && widthMm < best.widthMm)) best = { lengthMm, widthMm };
  }
  return best;
}
