/** The units that a file is written in, and what is made from it is lettered in. */
export type Units = "mm" | "in";

/** Exact by definition. [mm] */
export const MM_PER_INCH = 25.4;
/** Exact by definition, the avoirdupois pound. [kg] */
export const KG_PER_POUND = 0.45359237;

const STANDARD_GRAVITY = 9.80665;
/** The weight of a pound under standard gravity. [N] */
export const N_PER_POUND_FORCE = KG_PER_POUND * STANDARD_GRAVITY;
/** 2,000 lbf. [kN] */
export const KN_PER_SHORT_TON = 2 * N_PER_POUND_FORCE;
/** 1,000 lbf on a square inch. [MPa] */
export const MPA_PER_KSI = (1000 * N_PER_POUND_FORCE) / MM_PER_INCH ** 2;
