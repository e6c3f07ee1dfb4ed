import { fixed } from "../drawing/format.ts";
import { AT_LIMIT_REL } from "../geometry/tolerance.ts";

/** A number that is not negative to so many places, an exact half upward as in any printed table: 9.525 is 9.53, whatever its last digits. */
export const halfUp = (value: number, places: number): string => fixed(value * (1 + AT_LIMIT_REL), places);
