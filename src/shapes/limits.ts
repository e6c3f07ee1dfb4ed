/** Nothing on a shop floor is larger; beyond it a typing error is likelier than a part. [mm] */
export const MAX_LENGTH_MM = 20_000;
/** Sheets thinner than this are foil and are not formed on rolls or brakes. [mm] */
export const MIN_THICKNESS_MM = 0.2;
