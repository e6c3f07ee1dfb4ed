import type { Blank, Report } from "../../report/report.ts";
import { listed } from "../../forming/words.ts";

/** Which pieces a pattern is of: "Piece 2", "Pieces 1 and 2, alike"; nothing where there is but one. */
export function alikeName({ blanks }: Pick<Report, "blanks">, { piece }: Pick<Blank, "piece">): string {
  if (blanks.length === 1) return "";
  const alike = blanks
    .filter((one) => one.piece === piece || one.sameAs === piece)
    .map((one) => `${one.piece}`);
  return alike.length === 1 ? `Piece ${piece}` : `Pieces ${listed(alike)}, alike`;
}
