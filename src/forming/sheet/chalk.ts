import { TURN } from "../../geometry/angle.ts";
import { MM_PER_INCH } from "../../geometry/units.ts";
import { acrossSpansMm, type RimSpan } from "../../geometry/spannedRim.ts";
import type { FormingCase } from "../case.ts";
import { DERIVED } from "../judge.ts";
import { passPoints } from "../passPoints.ts";
import { rollSetting, sectionOf } from "../rollSetting.ts";
import { plateOf } from "../springback.ts";
import { isPipe } from "../skin.ts";
import type { RollSheetAsked } from "./asked.ts";
import { type Figure, mm } from "./step.ts";
import { gapWindows, leadMmOf } from "./touch.ts";

type Cone = NonNullable<FormingCase["cone"]>;

/** What the chalk's way is told by: 100 mm, or an inch. [mm] */
const TAPE = { mm: 100, in: MM_PER_INCH } as const;
/** Stretches that a growing bend is cut into, each bent alike. */
const STRETCHES = 12;

interface Growing {
  readonly radiusMm: number;
  readonly closed: number;
  readonly leadMm: number;
  /** Over which the bend grows from nothing to the whole, along this edge. */
  readonly growsMm: number;
  /** How much of the raise is on for each of so many even steps of the bend, the first one for none. [-] */
  readonly raised: readonly number[];
}

/** Where nobody knows more, the bend grows as the raise does. */
const EVENLY = Array.from({ length: STRETCHES + 1 }, (_, i) => i / STRETCHES);

/**
 * The raise goes on evenly, and the first of it bends nothing: the plate springs back flat. So the bend of what goes by
 * lags behind the raise, by what the model asks for each share of it.
 */
function raisedFor({ item, roll }: RollSheetAsked, { largeRadiusMm, halfAngleRad }: Cone, share: number) {
  const section = roll && sectionOf(roll);
  if (!section) return EVENLY;
  const squareMm = largeRadiusMm / Math.cos(halfAngleRad);
  const raises = EVENLY.map((of) => rollSetting(section, plateOf(item), squareMm / (of * share)));
  const wholeMm = raises.at(-1);
  if (wholeMm?.kind !== "setting") return EVENLY;
  return raises.map((one, i) => (one.kind === "setting" ? one.bestMm / wholeMm.bestMm : (EVENLY[i] ?? 1)));
}

/** From seam edge to seam edge of a blank whose bend has grown after its straight lead. [mm] */
function acrossMm(item: FormingCase, { halfAngleRad }: Cone, growing: Growing): number {
  const { radiusMm, closed } = growing;
  const reachMm = radiusMm / Math.sin(halfAngleRad);
  const levelMm = radiusMm / closed;
  const rimMm = (TURN * radiusMm) / item.pieces;
  // A short end has no room for all of it.
  const leadMm = Math.min(growing.leadMm, rimMm);
  const growsMm = Math.min(growing.growsMm, rimMm - leadMm);
  // 1/r² − 1/reach² is the square of the bend; half-way through each stretch.
  const bend = Math.sqrt(1 / levelMm ** 2 - 1 / reachMm ** 2);
  const { raised } = growing;
  const spans = raised.slice(1).map((on, i): RimSpan => ({
    arcMm: growsMm * (on - (raised[i] ?? 0)),
    levelMm: 1 / Math.hypot((bend * (i + 0.5)) / STRETCHES, 1 / reachMm),
  }));
  const whole = { arcMm: rimMm - leadMm - growsMm, levelMm };
  const straight = { arcMm: leadMm + growsMm * (raised[0] ?? 0), levelMm: Infinity };
  return acrossSpansMm({ reachMm, spans: [whole, ...spans.toReversed(), straight] }, 0);
}

/** By how much the gap of the first pass is wider for each length that the chalk had gone before the raise was all on. */
interface ChalkTaken {
  /** What the way of the chalk is counted in. [mm] */
  readonly everyMm: number;
  /** End by end. [mm] */
  readonly ends: readonly { readonly end: string; readonly widerMm: number }[];
}

/**
 * The raise goes on while the plate travels: what passes the pinch meanwhile is bent little by little, and stands off as the
 * straight lead does. Told for the end of the window, where it is most and a blank may soon be closed too far, over half of
 * the way that the chalk may go; nearly the same over all of it.
 *
 * @returns null where no gap or no lead is known
 * @see derived here
 */
function chalkTaken(asked: RollSheetAsked): ChalkTaken | null {
  const { item, say } = asked;
  const { cone } = item;
  const leadMm = leadMmOf(asked);
  const end = passPoints(item).find(({ id }) => id === "end");
  const closed = end?.closed ?? null;
  if (!cone || !end || closed === null || leadMm === 0 || gapWindows(asked).length === 0) return null;
  const everyMm = TAPE[say.units];
  const raised = raisedFor(asked, cone, end.share);
  const wider = (radiusMm: number) => {
    // Chalk stands on the large edge, and a small one goes less far.
    const growsMm = (leadMm / 2) * (radiusMm / cone.largeRadiusMm);
    const across = (grows: number) =>
      acrossMm(item, cone, { radiusMm, closed, leadMm, growsMm: grows, raised });
    return ((across(growsMm) - across(0)) * everyMm) / (leadMm / 2);
  };
  const ends = isPipe(item)
    ? [{ end: "ends", widerMm: wider(cone.largeRadiusMm) }]
    : [
        { end: "large end", widerMm: wider(cone.largeRadiusMm) },
        { end: "small end", widerMm: wider(cone.smallRadiusMm) },
      ];
  return { everyMm, ends };
}

/** The same in words behind what is measured, and as figures; nothing where it is not known. */
export function chalkWords(asked: RollSheetAsked): {
  readonly text: string;
  readonly figures: readonly Figure[];
} {
  const { say } = asked;
  const taken = chalkTaken(asked);
  if (!taken) return { text: "", figures: [] };
  const { everyMm, ends } = taken;
  // It is a word to be warned by, not a size to be met.
  const near = (one: number) => (say.units === "mm" ? Math.round(one) : one);
  const each = ends.map(({ end, widerMm }, i) =>
    i === 0 ? say.length(near(widerMm)) : `(${end} ${say.length(near(widerMm))})`,
  );
  return {
    text: `, less ${each.join(" ")} for every ${say.length(everyMm)} that the chalk had gone`,
    figures: ends.map(({ end, widerMm }) =>
      mm(`gap wider for every ${say.length(everyMm)} of chalk, about, ${end}`, near(widerMm), DERIVED),
    ),
  };
}
