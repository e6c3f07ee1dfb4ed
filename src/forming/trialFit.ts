import type { FormingCase } from "./case.ts";
import type { PlateRoll } from "./machine.ts";
import { stopPlace } from "./stopPlace.ts";

/** What trials were made with, each as one text: another text, and they say nothing any more. */
export interface TrialFit {
  /** Sizes, pieces and seam, as far as setting and measuring depend on them. */
  readonly shape: string;
  /** Thickness, grade and certificate. */
  readonly plate: string;
  readonly machine: string;
}

/** A hundredth of a millimetre, or of a degree: nobody sets or measures closer. */
const CLOSE = 100;
const told = (value: unknown): string =>
  JSON.stringify(value, (_, one: unknown) =>
    typeof one === "number" ? Math.round(one * CLOSE) / CLOSE : one,
  );

/** What trials of this part on this roll hold for. */
export function trialFit(item: FormingCase, roll: PlateRoll): TrialFit {
  const { cone, curvature, rimsMm, slantMm, pieces, seamGapMm, seamLapMm, edges } = item;
  const { name, arrangement, rolls, slide, workingWidth, bearings, coneAttachment } = roll;
  const stop = stopPlace({ item, roll });
  return {
    shape: told([
      ...[cone, curvature, rimsMm, slantMm, pieces, seamGapMm, edges],
      ...(seamLapMm === undefined ? [] : [seamLapMm]),
      // Further in than the nearest it stands where the piece's own reach and the room ask for it.
      ...(stop && stop.furtherInMm > 0 ? [stop.mm] : []),
    ]),
    plate: told([item.thicknessMm, item.materialId, item.certificateYieldMPa ?? item.material.yieldMPa]),
    machine: told([name, arrangement, rolls, slide, workingWidth, bearings, coneAttachment?.range]),
  };
}

/** What is another than it was when the trials were made, in words; null where they still hold. */
export function misfit(then: TrialFit, now: TrialFit | null): string | null {
  if (!now || then.machine !== now.machine) return "the machine is not as it was";
  if (then.plate !== now.plate) return "the plate is another";
  return then.shape === now.shape ? null : "sizes, seam, pieces or the place of the stop are others";
}
