import type { PartAsked } from "../asked.ts";
import type { PlateRoll } from "../machine.ts";
import type { RollSettings } from "../rollSettings.ts";
import type { Tried } from "../tried.ts";

/** What the steps of a roll's work sheet are written from. */
export interface RollSheetAsked extends PartAsked {
  /** Heavier blanks are lifted by machine. [kg] */
  readonly handLiftKg: number;
  /** Null where no shop is given. */
  readonly roll: PlateRoll | null;
  readonly settings: RollSettings | null;
  /** Why there are none, in words. */
  readonly noSettings: string | null;
  /** Present where trials are kept. */
  readonly tried?: Tried | undefined;
}
