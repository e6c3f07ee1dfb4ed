import type { PlateRoll } from "../../src/forming/machine.ts";
import { even } from "../even.ts";
import { roll } from "./cases.ts";
import type { Unlike } from "./simulatedRoll.ts";

/** Any sound initial-pinch roll, in shares of its top roll's radius, and the plate for it. */
export const ROLL = {
  top: even(60, 200),
  bendingShare: even(0.7, 1.1),
  across: even(1.05, 1.5),
  angle: even(45, 80),
  thick: even(0.03, 0.1),
  rated: even(1, 2),
};

/** How much a real one differs from the model. */
export const UNLIKE = {
  dropRad: even(0, 0.03),
  armShare: even(-0.05, 0.05),
  frame: even(0, 0.04),
  stronger: even(1, 1.4),
  hardening: even(0, 0.15),
};

type Drawn = Readonly<Record<keyof typeof ROLL | keyof typeof UNLIKE, number>>;

export function simulatedRoll(one: Drawn): PlateRoll {
  const bending = one.bendingShare * one.top;
  const rated = one.rated * one.thick * one.top;
  return roll({
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
}

export const unlikeOf = ({ dropRad, armShare, stronger, hardening, frame, top }: Drawn): Unlike => ({
  dropRad,
  armShare,
  stronger,
  hardening,
  frameMm: frame * top,
});
