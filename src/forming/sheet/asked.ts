import type { PlateRoll } from "../machine.ts";
import type { RollSettings } from "../rollSettings.ts";
import type { Tried } from "../tried.ts";
import type { LiftAsked } from "./lifting.ts";

/** What the steps of a roll's work sheet are written from. */
export interface RollSheetAsked extends LiftAsked {
  /** Null where no shop is given. */
  readonly roll: PlateRoll | null;
  readonly settings: RollSettings | null;
  /** Why there are none, in words. */
  readonly noSettings: string | null;
  /** Present where trials are kept. */
  readonly tried?: Tried | undefined;
}
