import type { Placed } from "../geometry/placed.ts";
import type { Blank, Report } from "../report/report.ts";

/** One blank where it lies on a plate, from the plate's lower left corner. [mm] */
export interface BlankOnPlate extends Placed {
  readonly report: Report;
  readonly blank: Blank;
  /** What it is called on this plate; blanks of one form have one number. */
  readonly number: number;
}

/** A plate with its blanks, as files and drawings want it. */
export interface PlateSheet {
  /** How its files begin. */
  readonly name: string;
  /** Which plate it is: material, thickness, number. */
  readonly title: string;
  readonly lengthMm: number;
  readonly widthMm: number;
  /** How many plates are laid like this. */
  readonly copies: number;
  readonly units: "mm" | "in";
  readonly blanks: readonly BlankOnPlate[];
}

/** A blank's name: that of its part, with its piece where the pieces of the part differ. */
export const blankName = ({ report, blank }: Pick<BlankOnPlate, "report" | "blank">): string =>
  report.blanks.some(({ piece, sameAs }) => piece > 1 && sameAs === null)
    ? `${report.part.name} piece ${blank.piece}`
    : report.part.name;
