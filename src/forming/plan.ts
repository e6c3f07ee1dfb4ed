import type { BrakePlan } from "./brakePlan.ts";
import type { RollSettings } from "./rollSettings.ts";
import type { NumberedStep } from "./sheet/step.ts";

/** How one machine makes the part, without its sheet. */
export interface MachinePlan {
  /** Its name in the shop file; null where no shop is given. */
  readonly machine: string | null;
  readonly route: "roll" | "brake";
  /** Titles of this machine's checks that ask for care. */
  readonly care: readonly string[];
  /** Plate rolls: where to set the bending roll; null where no sound setting can be given, and on a brake. */
  readonly settings: RollSettings | null;
  /** Why a plate roll has no settings; null where it has them, and on a brake. */
  readonly noSettings: string | null;
  /** Press brakes: lines, angles and hits; null on a roll, and where the blanks are not known. */
  readonly brake: BrakePlan | null;
}

/** What a work sheet says. */
export interface PlanSheet {
  /** The numbered work sheet. */
  readonly steps: readonly NumberedStep[];
  /** In which order a lot goes through, in sentences; empty for a single blank. */
  readonly batch: readonly string[];
}

/** How one machine makes the part, with its sheet; without a shop, how such a machine would. */
export interface FormingPlan extends MachinePlan, PlanSheet {}
