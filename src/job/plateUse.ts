import type { PlateGroup } from "./plates.ts";

/** How many plates and blanks there are of a kind of plate. */
interface PlateUse {
  readonly plates: number;
  /** Blanks that lie on them. */
  readonly laid: number;
  /** Blanks that are wanted. */
  readonly blanks: number;
  readonly byArea: number;
  readonly byRectangles: number;
}

export function useOf({ plates, blanks, laid }: PlateGroup): PlateUse {
  return {
    plates: plates.reduce((sum, { sheet }) => sum + sheet.copies, 0),
    laid: plates.reduce((sum, { sheet }) => sum + sheet.copies * sheet.blanks.length, 0),
    blanks,
    byArea: laid.bounds.areaPlates,
    byRectangles: laid.bounds.rectanglePlates,
  };
}

/** The same over all kinds of plate. */
export const totalUse = (groups: readonly PlateGroup[]): PlateUse =>
  groups.map(useOf).reduce(
    (sum, one) => ({
      plates: sum.plates + one.plates,
      laid: sum.laid + one.laid,
      blanks: sum.blanks + one.blanks,
      byArea: sum.byArea + one.byArea,
      byRectangles: sum.byRectangles + one.byRectangles,
    }),
    { plates: 0, laid: 0, blanks: 0, byArea: 0, byRectangles: 0 },
  );
