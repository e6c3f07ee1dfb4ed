import { brakeBends } from "../../output/bendLines.ts";
import type { Report } from "../../report/report.ts";
import { bentFrom } from "./shapes.ts";

/** Which lines the files for the cutting table have on their layers BEND and ELEMENT. */
export function bendWords(report: Report): string {
  const [blank] = report.blanks;
  return blank && brakeBends(report, blank)
    ? `BEND lines are those of the work sheet of the brake, with the same numbers (on MARK), each from the ${bentFrom(report.part.shape)} to where its hit stops; ELEMENT lines are those of the marking table, for layout by hand, and are not bent.`
    : report.blanks.some(({ lines }) => lines.some(({ kind }) => kind === "bend"))
      ? "BEND lines are those of the marking table, with its numbers (on NUMBER): no brake has been planned for."
      : "ELEMENT lines are those of the marking table, with its numbers (on NUMBER); nothing is bent along them.";
}
