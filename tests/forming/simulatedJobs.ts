import fc from "fast-check";
import { even } from "../even.ts";
import { aluminium, coneCase, roll, s235, s355 } from "./cases.ts";
import type { FormingCase } from "../../src/forming/case.ts";
import type { PlateRoll } from "../../src/forming/machine.ts";
import { sectionOf } from "../../src/forming/rollSetting.ts";
import { rollSettings } from "../../src/forming/rollSettings.ts";
import { sayIn } from "../../src/forming/say.ts";
import { plateOf } from "../../src/forming/springback.ts";
import { realFree, type Unlike } from "./simulatedRoll.ts";

/** Any sound initial-pinch roll and a cone or pipe that it can bend. */
export const jobs = fc
  .record({
    top: even(60, 200),
    bendingShare: even(0.7, 1.1),
    across: even(1.05, 1.5),
    angle: even(45, 80),
    thick: even(0.03, 0.1),
    rated: even(1, 2),
    small: even(1.9, 4),
    grow: fc.oneof(even(0, 0.2), even(0.2, 1.4)),
    halfAngle: even(4, 45),
    material: fc.constantFrom(s235, s355, aluminium),
    dropRad: even(0, 0.03),
    armShare: even(-0.05, 0.05),
    frame: even(0, 0.04),
    stronger: even(1, 1.4),
    hardening: even(0, 0.15),
  })
  .map((one) => {
    const thicknessMm = one.thick * one.top;
    const bending = one.bendingShare * one.top;
    const rated = one.rated * thicknessMm;
    const machine = roll({
      workingWidth: 8000,
      rating: { thickness: rated, yieldMPa: 250 },
      rolls: { topDiameter: 2 * one.top, bendingDiameter: 2 * bending },
      slide: {
        origin: [one.across * (one.top + bending), -(one.top + rated + bending)],
        angle: one.angle,
        travel: 3000,
      },
      coneAttachment: { range: [20, 300] },
    });
    const smallRadiusMm = one.small * one.top;
    const largeRadiusMm = smallRadiusMm * (1 + one.grow);
    const taper = largeRadiusMm - smallRadiusMm;
    const heightMm = Math.max(300, taper / Math.tan((one.halfAngle * Math.PI) / 180));
    const item = coneCase(
      { largeRadiusMm, smallRadiusMm, heightMm, thicknessMm },
      { material: one.material },
    );
    const { dropRad, armShare, stronger, hardening } = one;
    const unlike: Unlike = { dropRad, armShare, stronger, hardening, frameMm: one.frame * one.top };
    return { machine, item, unlike };
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
