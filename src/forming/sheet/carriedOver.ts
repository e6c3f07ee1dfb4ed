import { MM_PER_INCH } from "../../geometry/units.ts";
import { byHand } from "../byHand.ts";
import { setting, settable } from "../rollPlaces.ts";
import type { Say } from "../say.ts";
import { isPipe } from "../skin.ts";
import { listedZones } from "../zoneWords.ts";
import { zoneByHand } from "../zoneByHand.ts";
import type { RollSheetAsked } from "./asked.ts";
import { down, type ModelTable, modelTables } from "./modelTable.ts";
import { type Figure, type PlanStep, scaled } from "./step.ts";

interface Carried extends Pick<PlanStep, "model"> {
  readonly text: string;
  readonly figures: readonly Figure[];
}

const bare = (mm: number, say: Say): string => say.bare(settable(mm, say.units)).replace("-", "−");
/** "+ 4.7" as it stands in a sum. */
const added = (mm: number, say: Say): string => `${mm < 0 ? "−" : "+"} ${bare(Math.abs(mm), say)}`;

/** Marks on a tape or a template: a round number that lies between two columns. [mm] */
const ROUND = { mm: 10, in: MM_PER_INCH / 2 } as const;

/**
 * One reckoning with this part's own numbers: the plan's start corrected once by the table of the first pass, come out about
 * half-way between the first two columns of the window, as far down as nobody could take it for one of them.
 */
function worked(asked: RollSheetAsked, table: ModelTable, lastMm: number): string {
  const { say } = asked;
  const { at, mostMm } = table;
  const [open, next] = at;
  if (!open || !next) return "";
  const of = ({ gapMm, insideMm }: typeof open) => settable(gapMm ?? insideMm ?? 0, say.units);
  const [openMm, nextMm] = [of(open), of(next)];
  const middleMm = (openMm + nextMm) / 2;
  const rounded = Math.round(middleMm / ROUND[say.units]) * ROUND[say.units];
  const leftMm = rounded < openMm && rounded > nextMm ? rounded : middleMm;
  // Reckoned with the numbers that stand there, so that whoever does it again gets the same.
  const [last, least, most] = [lastMm, open.largeMm, next.largeMm].map((mm) => settable(mm, say.units)) as [
    number,
    number,
    number,
  ];
  const share = (openMm - leftMm) / (openMm - nextMm);
  const told = settable(least + share * (most - least), say.units);
  const over = Math.min(last - told, down(mostMm));
  const out = open.gapMm === null ? `R ${say.tape(leftMm)}` : `a gap of ${say.tape(leftMm)}`;
  return `${bare(last, say)} left ${out} (table: ${bare(told, say)}): ${bare(last, say)} − ${bare(told, say)} = ${added(last - told, say).replace(" ", "")}, so ${isPipe(asked.item) ? "the raise" : "both ends"} by ${added(over, say).replace(" ", "")}`;
}

/** Raise at the large edge after the first correction by the sheet's own table, from the plan's start. [mm] */
function correctedOnce(asked: RollSheetAsked): number | null {
  const { item, roll, settings, say } = asked;
  const start = settings?.zones[0]?.passes.find(({ id }) => id === "trial")?.start;
  if (!roll || !start) return null;
  const ranges = item.cone ? byHand({ item, roll, say }) : (zoneByHand({ item, roll, say })[0]?.ranges ?? []);
  return start.largeMm + (ranges.filter(({ moreMm }) => moreMm > 0).at(-1)?.moreMm ?? 0);
}

/** How the first pass's correction is carried over to the second, without a screen. */
export function carriedOver(asked: RollSheetAsked): Carried {
  const { item, roll, say } = asked;
  const model = roll ? modelTables({ item, roll, say }) : [];
  const [first] = model;
  const lastMm = correctedOnce(asked);
  if (!first || lastMm === null) return { text: "", figures: [] };
  const pipe = isPipe(item);
  const several = model.length > 1;
  const by =
    first.zones.length === 0 ? `gap${pipe ? "" : " at the large end"}` : "inside radius at the large end";
  const most = model
    .map(({ zones, mostMm }) => `${setting(down(mostMm), say)}${several ? ` in ${listedZones(zones)}` : ""}`)
    .join(", ");
  const example = worked(asked, first, lastMm);
  const whose = several ? `in ${listedZones(first.zones)}, ` : "";
  const each = several ? "Zone by zone carry" : "Carry";
  return {
    text: `${each} over what the first pass taught: its last ${pipe ? "raise" : "raise at the large edge"} less the table's for the ${by} that it left (between columns in proportion). Move ${pipe ? "the raise" : "both ends"} by that (a minus is down), never up by more than ${most} (more: ask first), and write it into the boxes. Example, not yours: ${whose}${example}. `,
    figures: model.flatMap(({ zones, at }) =>
      zones.length > 0
        ? []
        : at.map(({ gapMm, largeMm }) =>
            scaled(
              `by the model for a gap of ${say.length(gapMm ?? 0)}, ${pipe ? "raise" : "setting at the large edge"}`,
              largeMm,
            ),
          ),
    ),
    model,
  };
}
