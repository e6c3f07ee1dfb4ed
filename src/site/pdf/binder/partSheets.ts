import { type FootCell, roomOf } from "../../../output/pdf/flow.ts";
import type { Binder } from "../../binder/makeBinder.ts";
import { chosenPlan } from "../../forming/plan.ts";
import { printedCells } from "../../words/titleBlock.ts";
import { cardOnSheets } from "../cardOnSheets.ts";
import { workSheet } from "../workSheet.ts";
import { type BinderSheet, type Making, MARGINS, PLACES } from "./model.ts";

/** The card of every part, each with its work sheet behind it where a machine takes it. */
export function partSheets({ pdf, paper, known }: Making, { parts, shop, job }: Binder): BinderSheet[] {
  return parts.map(({ report, material, gauge }): BinderSheet => {
    const { part } = report;
    const around = { shop, job, material: material.name, gauge };
    const cells: FootCell[] = printedCells(report, around);
    const card: BinderSheet = {
      title: part.title,
      place: PLACES.part(part.name),
      cells,
      blocks: () => cardOnSheets(pdf, report, { ...around, known }, { paper, cells, margins: MARGINS }),
    };
    if (!chosenPlan(report)) return card;
    return {
      ...card,
      with: {
        title: "Work sheet",
        place: `work sheet ${part.name}`,
        cells,
        blocks: () =>
          workSheet(pdf, report, { shop, known, room: roomOf({ paper, cells, margins: MARGINS }) }) ?? [],
      },
    };
  });
}
