import type { Blank, Report } from "../../report/report.ts";

/** What stands along the line of a lap. */
export const LAP_TO_HERE = "lap to here";

/** Where seam edge 1 comes to lie on a lap: the line of seam 2, past which the plate runs on. It is the last line of its blank. */
export const lapLine = (
  { part }: Pick<Report, "part">,
  { lines }: Pick<Blank, "lines">,
): Blank["lines"][number] | undefined => (part.seam?.joint === "lap" ? lines.at(-1) : undefined);
