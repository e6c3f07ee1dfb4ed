import { curvaturePlot } from "../../drawing/forming/curvaturePlot.ts";
import { springbackCurve } from "../../drawing/forming/springbackCurve.ts";
import type { FormingPlan } from "../../forming/plan.ts";
import { beside, type Block, stack } from "../../output/pdf/block.ts";
import type { Pdf } from "../../output/pdf/document.ts";
import { paragraph } from "../../output/pdf/words.ts";
import type { Report } from "../../report/report.ts";
import { PLOT_PAPER } from "../forming/papers.ts";
import { evennessNote, springbackNote } from "../forming/sheetWords.ts";
import { basisRun } from "./basisRun.ts";
import { heading, picture } from "./blocks.ts";

/** What springback asks, and how unevenly the skin is curved, side by side. */
export function springbackPlots(
  pdf: Pdf,
  report: Report,
  { plan, known }: { plan: FormingPlan; known: ReadonlyMap<string, string> },
): Block[] {
  const { springback, evenness } = report.forming;
  const rolled = plan.route !== "brake";
  const curve = springbackCurve(report, { paper: PLOT_PAPER });
  const plot = curvaturePlot(report, { paper: PLOT_PAPER, zones: plan.settings?.zones ?? [] });
  const both = [
    ...(rolled && springback && curve
      ? [
          stack([
            heading(pdf, "Springback"),
            picture(pdf, curve),
            paragraph(pdf, [
              { text: `${springbackNote(springback, report.part.units)} ` },
              basisRun(known, springback.basis),
            ]),
          ]),
        ]
      : []),
    ...(evenness && plot
      ? [
          stack([
            heading(pdf, "Curvature round the part"),
            picture(pdf, plot),
            paragraph(pdf, [
              { text: `${evennessNote(evenness.reason, rolled)} ` },
              basisRun(known, evenness.basis),
            ]),
          ]),
        ]
      : []),
  ];
  return both.length > 0 ? [beside(both, [1, 1])] : [];
}
