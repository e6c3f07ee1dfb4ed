import { endRolled } from "../closure.ts";
import { AS_DRAWN, DERIVED } from "../judge.ts";
import { isPipe } from "../skin.ts";
import { isTurnedRound } from "../stopRoom.ts";
import type { FormingCase } from "../case.ts";
import { inspectionOf } from "../inspection.ts";
import type { Say } from "../say.ts";
import { listed } from "../words.ts";
import { MOST_ZONES } from "../zones.ts";
import type { RollSheetAsked } from "./asked.ts";
import { stripOff } from "./ledLast.ts";
import { ROLL_ENDS } from "./rollEnds.ts";
import { type NoteBox, type PlanStep, taped } from "./step.ts";
import { feelerWords } from "./touch.ts";

/** Which edge of a lapped seam lies where. */
export const LAPPED = "seam edge 1 inside, up to the lap line";

/** When a piece has its shape, and the lines for what was found. */
export function closedWords(asked: RollSheetAsked): Pick<PlanStep, "text" | "figures" | "toNote"> {
  const { item, say } = asked;
  if (item.pieces > 1) return ofPieces(asked);
  const { seamGapMm: weld = 0, seamLapMm: lap = 0 } = item;
  const both = (what: string, planned: number): NoteBox[] =>
    ["large end", "small end"].map((end) => ({
      label: `${what}, ${end}`,
      unit: "mm",
      ...(planned > 0 && { planned }),
    }));
  if (lap > 0)
    return {
      text: `Close until the templates fit. The seam edges then lap by ${say.tape(lap)}: ${LAPPED}. Stop before the lap comes between the rolls; what is missing is drawn over off the rolls`,
      figures: [taped("lap", lap, AS_DRAWN)],
      toNote: both("lap", lap),
    };
  const meet = weld > 0 ? `stand ${feelerWords(weld, say)} apart (weld gap, by feeler blade)` : "meet";
  // Where the strip that led is known, templates say when it is closed: its edge stands off the other one.
  const strip = stripOff(asked);
  return strip.length === 0
    ? {
        text: `Close until the seam edges ${meet} over their whole length, both ends level`,
        figures: [],
        toNote: both("gap left", weld),
      }
    : {
        text: "Close until the templates fit at both ends, seam edges level",
        figures: [],
        toNote: strip.map(({ end }) => ({
          label: `edge out${end === "ends" ? "" : `, ${end}`}`,
          unit: "mm",
        })),
      };
}

/** A piece of a part never closes: templates say when it is right. */
function ofPieces(asked: RollSheetAsked): Pick<PlanStep, "text" | "figures" | "toNote"> {
  const { pieces } = asked.item;
  const text = `A piece, one of ${pieces}, stays open: roll until the templates fit at both ends`;
  // Where another pass follows, the edges stand where they are to only after that.
  const stands = isTurnedRound(asked.roll?.arrangement)
    ? { text: "", figures: [], toNote: [] }
    : standsOpen(asked.item, asked.say);
  return {
    text: `${text}${stands.text}`,
    figures: stands.figures,
    toNote: [...stands.toNote, { label: "template, tight or open", unit: "-" }],
  };
}

/** How far the seam edges of a piece of a right cone stand apart when it is right: a tape finds that beside the templates. */
export function standsOpen(item: FormingCase, say: Say): Pick<PlanStep, "text" | "figures" | "toNote"> {
  const { cone } = item;
  if (!cone) return { text: "", figures: [], toNote: [] };
  const at = (radiusMm: number) => endRolled(item, cone, { radiusMm, closed: 1, leadMm: 0 }).insideGapMm;
  const ends = isPipe(item)
    ? [{ end: "both ends", mm: at(cone.largeRadiusMm) }]
    : [
        { end: "the large end", mm: at(cone.largeRadiusMm) },
        { end: "the small end", mm: at(cone.smallRadiusMm) },
      ];
  const across = ends.map(({ end, mm }) => `${say.tape(mm)} at ${end}`).join(", ");
  return {
    text: `; its seam edges then stand ${across}${within(item, say)}. Tighter: ask the foreman`,
    figures: ends.map(({ end, mm }) => taped(`seam edges apart when right, ${end}`, mm, DERIVED)),
    toNote: ends.map(({ end, mm: planned }) => ({
      label: `apart, ${end.replace("the ", "")}`,
      unit: "mm",
      planned,
    })),
  };
}

/** How near that is to be: as near as the finished diameters are. */
function within(item: FormingCase, say: Say): string {
  const limits = inspectionOf(item)?.rows.flatMap(({ id, withinMm }) =>
    id === "diameter" && withinMm !== null ? [`± ${say.bare(withinMm)}`] : [],
  );
  return limits && limits.length > 0 ? ` (${listed(limits)}, as diameters)` : "";
}

/** What the roll stood at when the piece was right: at both bearings, where the scales are. */
export function raiseAtEnd({ item, roll, settings }: RollSheetAsked): NoteBox[] {
  const zones = settings?.zones ?? [];
  // So many are not corrected one by one.
  if (zones.length > MOST_ZONES) return [{ label: "all zones raised by", unit: "mm" }];
  if (zones.length > 1) return zones.map((_, i) => ({ label: `zone ${i + 1} raised by`, unit: "mm" }));
  if (!settings || roll?.bearings === undefined || isPipe(item))
    return [{ label: "raise at the end, set", unit: "mm" }];
  return ROLL_ENDS.map(({ name }) => ({ label: `scale at the end, ${name}`, unit: "mm" }));
}
