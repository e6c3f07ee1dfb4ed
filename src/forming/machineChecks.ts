import { ask, type PartAsked, type Rule, type RollAsked } from "./asked.ts";
import { bendRadius } from "./bendRadius.ts";
import { bendSpacing } from "./bendSpacing.ts";
import { behindPunch } from "./brakeBehind.ts";
import { brakeBends } from "./brakeBends.ts";
import { brakeBed } from "./brakeBed.ts";
import { brakeForce } from "./brakeForce.ts";
import { brakeThroat } from "./brakeThroat.ts";
import { canBeSet, SETTINGS_CHECK } from "./canBeSet.ts";
import { capacity } from "./capacity.ts";
import type { FormingCase } from "./case.ts";
import { type Check, worst } from "./check.ts";
import { coneAttachment } from "./coneAttachment.ts";
import { diesFor, dieOpening, leastOpeningMm } from "./dieOpening.ts";
import { halfAngle } from "./halfAngle.ts";
import { DERIVED, state } from "./judge.ts";
import type { PlateRoll, PressBrake } from "./machine.ts";
import { offThePunch } from "./offThePunch.ts";
import { pinchTrim } from "./pinchTrim.ts";
import { roomBeyondStop } from "./roomBeyondStop.ts";
import { sharpFold } from "./sharpFold.ts";
import { smallEnd, smallestClosed } from "./smallEnd.ts";
import { thicknessLimit } from "./thicknessLimit.ts";
import { travelRatio } from "./travelRatio.ts";
import { workingWidth } from "./workingWidth.ts";

/** What rolling asks of the part on whichever machine. */
const ROLLING: readonly Rule<PartAsked>[] = [halfAngle, travelRatio];

/** What folding asks of it, over the least die for its thickness. */
const folding: Rule<PartAsked> = (part) => {
  const dieMm = leastOpeningMm(part.item.thicknessMm);
  return sharpFold({ ...part, dieMm, bends: brakeBends(part.item, dieMm) });
};

/** What its usual route asks of the part where nobody has described a machine. */
export const WITHOUT_MACHINE: Readonly<Record<FormingCase["usualRoute"], readonly Rule<PartAsked>[]>> = {
  roll: ROLLING,
  brake: [folding],
};

const ROLL: readonly Rule<RollAsked>[] = [
  coneAttachment,
  capacity,
  thicknessLimit,
  workingWidth,
  pinchTrim,
  smallEnd,
  smallestClosed,
  bendRadius,
  roomBeyondStop,
  canBeSet,
  ...ROLLING,
];

/** Everything a plate roll is asked. A skin with flats and corners is not for a roll at all, and nothing else is asked. */
export function rollChecks(part: PartAsked, roll: PlateRoll): Check[] {
  if (part.item.tightestRadiusMm === null)
    return [
      state({
        id: "round-ends",
        title: "Flats and corners",
        unit: "-",
        verdict: "fail",
        basis: DERIVED,
        rule: "a roll bends every element it passes; flats and corners are folded",
        advice:
          "It has flats and corners, which a roll cannot leave straight or fold: bend it on the press brake.",
      }),
    ];
  return withoutSettings(ask(ROLL, { ...part, roll }));
}

/** Where the roll does not take the plate at all, how it would be set is no question. */
function withoutSettings(checks: Check[]): Check[] {
  const others = checks.filter(({ id }) => id !== SETTINGS_CHECK);
  return others.some(({ verdict }) => verdict === "fail") ? others : checks;
}

const SEVERITY = { pass: 0, caution: 1, fail: 2 };

/**
 * The die that answers best: the narrowest of equals, for it bends the sharpest; the widest where all refuse, for it needs
 * the least force. No die is asked after one that passes.
 */
function bestDie(part: PartAsked, brake: PressBrake) {
  const answer = (dieMm: number) => {
    const bends = brakeBends(part.item, dieMm);
    const checks = ask([dieOpening, brakeForce, bendSpacing], { ...part, brake, dieMm, bends });
    return { dieMm, bends, checks, verdict: worst(checks.map((check) => check.verdict)) };
  };
  const [narrowest, ...wider] = diesFor(part.item.thicknessMm, brake);
  let best = answer(narrowest);
  for (const dieMm of wider) {
    if (best.verdict === "pass") break;
    const next = answer(dieMm);
    if (best.verdict === "fail" || SEVERITY[next.verdict] < SEVERITY[best.verdict]) best = next;
  }
  return best;
}

/** Everything a press brake is asked, over the die that answers best. */
export function brakeChecks(part: PartAsked, brake: PressBrake): Check[] {
  const best = bestDie(part, brake);
  const { bends } = best;
  const behind = bends && behindPunch(part.item, bends);
  // Where the plate is hit nowhere it is never between punch and die.
  const throat = bends?.hits.length === 0 ? null : brakeThroat({ ...part, brake, behind });
  // Only the tips are folded over a wider die: that does not choose the die of all other hits.
  const fold = sharpFold({ ...part, brake, dieMm: best.dieMm, bends });
  return [
    brakeBed({ ...part, brake }),
    ...best.checks,
    ...ask([() => fold, () => throat, () => offThePunch({ ...part, brake })], part),
  ];
}
