import fc from "fast-check";
import { even } from "../even.ts";
import { aluminium, coneCase, s235, s355 } from "./cases.ts";
import type { FormingCase } from "../../src/forming/case.ts";
import type { PlateRoll } from "../../src/forming/machine.ts";
import { sectionOf } from "../../src/forming/rollSetting.ts";
import { rollSettings } from "../../src/forming/rollSettings.ts";
import { sayIn } from "../../src/forming/say.ts";
import { plateOf } from "../../src/forming/springback.ts";
import { realFree, type Unlike } from "./simulatedRoll.ts";
import { ROLL, simulatedRoll, UNLIKE, unlikeOf } from "./anyRoll.ts";

/** Any sound initial-pinch roll and a cone or pipe that it can bend. */
export const jobs = fc
  .record({
    ...ROLL,
    small: even(1.9, 4),
    grow: fc.oneof(even(0, 0.2), even(0.2, 1.4)),
    halfAngle: even(4, 45),
    material: fc.constantFrom(s235, s355, aluminium),
    ...UNLIKE,
  })
  .map((one) => {
    const thicknessMm = one.thick * one.top;
    const machine = simulatedRoll(one);
    const smallRadiusMm = one.small * one.top;
    const largeRadiusMm = smallRadiusMm * (1 + one.grow);
    const taper = largeRadiusMm - smallRadiusMm;
    const heightMm = Math.max(300, taper / Math.tan((one.halfAngle * Math.PI) / 180));
    const item = coneCase(
      { largeRadiusMm, smallRadiusMm, heightMm, thicknessMm },
      { material: one.material },
    );
    return { machine, item, unlike: unlikeOf(one) };
  });

interface Job {
  readonly machine: PlateRoll;
  readonly item: FormingCase;
  readonly unlike: Unlike;
}

/** The plan's start for one moment on this job's roll. */
export function startOf({ machine, item }: Job, id: "trial" | "end" | "finished") {
  const answer = rollSettings({ item, roll: machine, say: sayIn("mm") });
  if (answer.kind === "none") throw new Error(answer.why);
  const pass = answer.settings.zones[0]!.passes.find((one) => one.id === id)!;
  return { start: pass.start, highMm: pass.large.highMm! };
}

/** The blank's closure when the large edge is set here and the tilt is that of the start: the mean bend over the slant, by Simpson. */
export function closedAt(
  { machine, item, unlike }: Job,
  start: NonNullable<ReturnType<typeof startOf>["start"]>,
  settingMm: number,
): number {
  const { halfAngleRad, largeRadiusMm, smallRadiusMm } = item.cone!;
  const [section, plate] = [sectionOf(machine)!, plateOf(item)];
  const places = [
    [1, settingMm, largeRadiusMm],
    [4, settingMm + start.middleMm - start.largeMm, (largeRadiusMm + smallRadiusMm) / 2],
    [1, settingMm + start.smallMm - start.largeMm, smallRadiusMm],
  ] as const;
  const share = places.reduce(
    (sum, [weight, raise, level]) =>
      sum + (weight / 6) * realFree(section, plate, unlike, raise) * (level / Math.cos(halfAngleRad)),
    0,
  );
  return Math.hypot(Math.sin(halfAngleRad), share * Math.cos(halfAngleRad));
}
