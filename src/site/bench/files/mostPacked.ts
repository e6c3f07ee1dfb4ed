/** More than any job of part files, packed. [bytes] */
export const MOST_PACKED = 20_000_000;
