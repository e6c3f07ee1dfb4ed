/** Nothing on a shop floor is larger; beyond it a typing error is likelier than a part. [mm] */
export const MAX_LENGTH_MM = 20_000;
/** Sheets thinner than this are foil and are not formed on rolls or brakes. [mm] */
export const MIN_THICKNESS_MM = 0.2;
/**
 * No side, no end, no height and no lap of a part is smaller than the thinnest sheet: what was typed is a slip, or not in these
 * units, and a drawing in hundredths of a millimetre could not tell its corners apart. [mm]
 */
export const MIN_SIZE_MM = 0.2;
