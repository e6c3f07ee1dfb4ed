import type { Blank, Shaped } from "../../report/report.ts";
import { listed } from "../../forming/words.ts";
import { degrees, type Numbers, turnWord } from "./numbers.ts";

/** What plate blanks want as they are drawn, and which of them it holds for. */
export interface PlateNeed {
  /** The name of the figure: "Plate as drawn", or for which pieces it is. */
  readonly name: string;
  /** Size across and up. [mm] */
  readonly xMm: number;
  readonly yMm: number;
  /** In the part's own units: "900 × 412". */
  readonly size: string;
  /** The smallest plate when it is turned; null where that saves little. */
  readonly turned: string | null;
  /** Is it the plate that takes any of several different blanks? */
  readonly anyOf: boolean;
}

/** Turned on the plate a blank may want less of it; worth telling from a fiftieth of its area on. */
const WORTH_TURNING = 0.98;
/** So many different sizes are told one by one; of more, the plate that takes any of the blanks. */
const MOST_SIZES = 2;

/** "or 900 × 412, turned 31° clockwise". */
function turnedPlate({ box, asDrawn }: Blank, say: Numbers): string | null {
  if (box.lengthMm * box.widthMm > WORTH_TURNING * asDrawn.xMm * asDrawn.yMm) return null;
  return `or ${say.bare(box.lengthMm)} × ${say.bare(box.widthMm)}, turned ${degrees(Math.abs(box.turnDeg), 0)} ${turnWord(box.turnDeg)}`;
}

/** "piece 2", "pieces 1 and 3". */
const piecesNamed = (pieces: readonly number[]): string =>
  `${pieces.length > 1 ? "pieces" : "piece"} ${listed(pieces)}`;

/** The plates that the blanks of a part want as they are drawn, each size once; none where nothing is cut. */
export function plateNeeds({ blanks }: Pick<Shaped, "blanks">, say: Numbers): readonly PlateNeed[] {
  const sizes: (Omit<PlateNeed, "name" | "anyOf"> & { pieces: number[] })[] = [];
  for (const blank of blanks) {
    const { xMm, yMm } = blank.asDrawn;
    const size = `${say.bare(xMm)} × ${say.bare(yMm)}`;
    const turned = turnedPlate(blank, say);
    const like = sizes.find((one) => one.size === size && one.turned === turned);
    if (like) like.pieces.push(blank.piece);
    else sizes.push({ xMm, yMm, size, turned, pieces: [blank.piece] });
  }
  if (sizes.length > MOST_SIZES) {
    const xMm = Math.max(...sizes.map((one) => one.xMm));
    const yMm = Math.max(...sizes.map((one) => one.yMm));
    const size = `${say.bare(xMm)} × ${say.bare(yMm)}`;
    return [
      { name: `Plate as drawn, for any of ${blanks.length}`, xMm, yMm, size, turned: null, anyOf: true },
    ];
  }
  return sizes.map(({ pieces, ...need }) => ({
    ...need,
    anyOf: false,
    name:
      sizes.length > 1
        ? `Plate as drawn, ${piecesNamed(pieces)}`
        : `Plate as drawn${blanks.length > 1 ? `, each of ${blanks.length}` : ""}`,
  }));
}
