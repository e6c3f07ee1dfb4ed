import type { PartAsked } from "../asked.ts";
import type { PlateRoll } from "../machine.ts";
import type { RollPlaces } from "../rollPlaces.ts";
import type { RollSettings } from "../rollSettings.ts";

/** What trials of this part on this roll came to. */
export interface Tried {
  /** In few words what was set last, what came out, and what to do. */
  readonly words: string;
  /** Where to set now; null where something is to be looked at first. */
  readonly set: RollPlaces | null;
}

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
