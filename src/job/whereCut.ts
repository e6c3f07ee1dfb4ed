import { VERDICTS } from "../report/verdictWords.ts";
import { worst } from "../forming/check.ts";
import { type FileUnits, perUnit } from "../output/contour.ts";
import { notGoing } from "../output/notToCut.ts";
import { blankName, type PlateSheet } from "../output/plateSheet.ts";
import type { Report } from "../report/report.ts";
import type { PlateGroup } from "./plates.ts";

/** Lengths of a plate are told this near. */
const DECIMALS = { mm: 0, in: 2 } as const;

/** Whether a part goes; without machines only the checks that need none have been made. */
export const goes = ({ forming }: Report): string =>
  forming.machines.length > 0
    ? VERDICTS[forming.verdict]
    : `${VERDICTS[forming.verdict]}, no machine was asked`;

/** Whether all that lies on a plate goes, and what does not. */
export function allGo({ blanks }: PlateSheet): string {
  const reports = [...new Set(blanks.map(({ report }) => report))];
  const bad = notGoing(reports);
  if (bad.length > 0) return `holds what ${VERDICTS.fail}: ${bad.join(", ")}`;
  return VERDICTS[worst(reports.map(({ forming }) => forming.verdict))];
}

/** What asks for care or does not go, by the checks: "Depth behind the bend line: up to …". */
export const toMind = ({ forming }: Report): string =>
  notPassed(forming)
    .map(({ title, advice }) => `${title}: ${advice}`)
    .join(" ");

/** The same for all that lies on a plate, by the names of the checks: "hood: Depth behind the bend line, Mass of a blank; …". */
export function allToMind({ blanks }: PlateSheet): string {
  const reports = [...new Set(blanks.map(({ report }) => report))];
  return reports
    .flatMap(({ part, forming }) => {
      const titles = notPassed(forming).map(({ title }) => title);
      return titles.length > 0 ? [`${part.name}: ${titles.join(", ")}`] : [];
    })
    .join("; ");
}

const notPassed = ({ checks }: Report["forming"]) => checks.filter(({ verdict }) => verdict !== "pass");

/** The plates that the blanks of a part lie on, by the names of their files: "s235-4-mm-plate-1 (2 alike): 3 each; s235-4-mm-plate-3: 1". */
export function liesOn(groups: readonly PlateGroup[], part: string, piece: number | null): string {
  const isIt = (one: { readonly part: string; readonly piece: number }) =>
    one.part === part && (piece === null || one.piece === piece);
  const sheets = groups.flatMap(({ plates }) => plates.map(({ sheet }) => sheet));
  const on = sheets.flatMap(({ name, copies, blanks }) => {
    const count = blanks.filter(({ report, blank }) =>
      isIt({ part: report.part.name, piece: blank.piece }),
    ).length;
    if (count === 0) return [];
    return [copies === 1 ? `${name}: ${count}` : `${name} (${copies} alike): ${count} each`];
  });
  const left = groups
    .flatMap(({ laid }) => laid.left)
    .filter(isIt)
    .reduce((sum, { count }) => sum + count, 0);
  return [...on, ...(left > 0 ? [`${left} on no plate`] : [])].join("; ");
}

/** What lies on one plate: "small-cone: 3; hood piece 2: 1". */
export function holds({ blanks }: PlateSheet): string {
  const counts = new Map<string, number>();
  for (const one of blanks) {
    const name = blankName(one);
    counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  return [...counts].map(([name, count]) => `${name}: ${count}`).join("; ");
}

/** "3000 x 1500 mm": in the shop's units, and in inches of a file in inches. */
export function plateSize({ lengthMm, widthMm, units: shops }: PlateSheet, file: FileUnits | null): string {
  const units = file === "in" ? "in" : shops;
  const say = (mm: number) => String(Number((mm / perUnit(units)).toFixed(DECIMALS[units])));
  return `${say(lengthMm)} x ${say(widthMm)} ${units}`;
}
