import type { Report } from "../../report/report.ts";
import { chosenPlan } from "../forming/plan.ts";

export const workSheetFile = ({ part }: Report): string => `${part.name}-work-sheet.pdf`;

/** What of a part is read on paper: its card, and its work sheet where a machine takes it. */
export const readableFiles = (
  report: Report,
): { readonly kind: "card" | "work-sheet"; readonly file: string; readonly what: string }[] => [
  {
    kind: "card",
    file: `${report.part.name}-card.pdf`,
    what: "part card: sizes, checks, pattern and marking table",
  },
  ...(chosenPlan(report)
    ? [
        {
          kind: "work-sheet" as const,
          file: workSheetFile(report),
          what: "work sheet: the steps, with room to write on",
        },
      ]
    : []),
];
