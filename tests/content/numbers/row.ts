/** A phrase of a page with its number left open, and what that number must be. */
export type Row = readonly [phrase: string, value: number];

export const rad = (degrees: number) => (degrees * Math.PI) / 180;
export const deg = (radians: number) => (radians * 180) / Math.PI;
