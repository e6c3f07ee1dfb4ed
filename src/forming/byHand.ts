import { MM_PER_INCH } from "../geometry/units.ts";
import type { RollAsked } from "./asked.ts";
import type { FormingCase } from "./case.ts";
import { closedOfGap } from "./closedOfGap.ts";
import { endRolled } from "./closure.ts";
import { closureOfShare, shareOfClosure } from "./firstPass.ts";
import type { PlateRoll } from "./machine.ts";
import { careful } from "./trialCorrection.ts";
import { trialModel } from "./trialModel.ts";

/** One column of the table for a correction without a screen: the gaps that it is for, and what is done. */
export interface ByHand {
  /** Widest gap of the range at the large end; null: any wider, and a blank that sprang back flat. [mm] */
  readonly fromMm: number | null;
  /** Narrowest; null: any narrower. [mm] */
  readonly toMm: number | null;
  /** Raise both ends by so much from where they were set; 0 to leave it, below 0 for the next blank, this one being closed too far. [mm] */
  readonly moreMm: number;
}

/** Shares of the bend at the start of the window that part the gaps wider than it: from hardly bent to nearly there. */
const SHARES = [0.25, 0.5, 0.75];
/** Gaps are round numbers that are found on a tape: 10 mm, or half an inch. [mm] */
const TAPE = { mm: 10, in: MM_PER_INCH / 2 } as const;

/** The step that corrects and the one that carries over ask for the same table of the same roll. */
const known = new WeakMap<FormingCase, { readonly roll: PlateRoll; readonly table: readonly ByHand[] }>();

/**
 * The first correction as a table: for ranges of gaps, widest first, how much more to raise, by the offset alone, as much
 * as the narrowest gap of the range wants, never further than the liveliest machine may go below the cap, never past the
 * plan's own high, and never more than a wider gap gets: a blank that has hardly bent says little of the machine. It serves after every trial, from the last setting; after the second one
 * the correction with both trials comes nearer. The last but one range is the window, the last what is closed further,
 * by what a blank at the cap wants.
 *
 * @returns nothing where there is no model to correct by
 * @see derived here
 */
export function byHand(asked: RollAsked): readonly ByHand[] {
  const { item, roll } = asked;
  const before = known.get(item);
  if (before?.roll === roll) return before.table;
  const table = tableOf(asked);
  known.set(item, { roll, table });
  return table;
}

function tableOf(asked: RollAsked): ByHand[] {
  const answer = trialModel(asked);
  if (answer.kind === "none") return [];
  const { model } = answer;
  const { aim, cone, window, leadMm } = model;
  const settingMm = model.pass("trial")?.start?.largeMm;
  if (settingMm === undefined) return [];
  const { halfAngleRad, largeRadiusMm: radiusMm } = cone;
  const gapAt = (closed: number) => endRolled(asked.item, cone, { radiusMm, closed, leadMm }).insideGapMm;
  const tape = TAPE[asked.item.units ?? "mm"];
  const fromShare = shareOfClosure({ halfAngleRad, closed: window.from }) ?? 0;
  const [widestMm, narrowestMm] = [gapAt(window.from), gapAt(window.to)];
  const round = SHARES.map((share) => {
    const gapMm = gapAt(closureOfShare({ halfAngleRad, share: share * fromShare }));
    return tape * Math.round(gapMm / tape);
  });
  const gaps = [...new Set(round)].filter((gapMm) => gapMm > widestMm);
  const more = (closed: number) => careful(model.read({ settingMm, closed }), aim) - settingMm;
  const flatMm = careful(model.read({ settingMm, flat: true }), aim) - settingMm;
  let mostMm = Math.max(0, Math.min(flatMm, aim.highMm - settingMm));
  const raises: ByHand[] = [];
  for (const toMm of [...gaps, widestMm]) {
    const moreMm = Math.min(mostMm, more(closedOfGap(asked.item, cone, { gapMm: toMm, leadMm })));
    // Held to the same raise, two ranges are one.
    const before = raises.at(-1)?.moreMm === moreMm ? raises.pop() : raises.at(-1);
    raises.push({ fromMm: before?.moreMm === moreMm ? before.fromMm : (before?.toMm ?? null), toMm, moreMm });
    mostMm = moreMm;
  }
  return [
    ...raises,
    { fromMm: widestMm, toMm: narrowestMm, moreMm: 0 },
    { fromMm: narrowestMm, toMm: null, moreMm: more(window.cap) },
  ];
}
