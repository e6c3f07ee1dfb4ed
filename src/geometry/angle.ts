export const TURN = 2 * Math.PI;

/** [degrees] → [rad] */
export const radians = (deg: number): number => (deg * Math.PI) / 180;
/** [rad] → [degrees] */
export const degrees = (rad: number): number => (rad * 180) / Math.PI;

/** The same plan angle within 0 … 360, to a hundredth: less is nothing on a wall, and a hundredth is read without noise. [degrees] */
export const planHundredths = (deg: number): number =>
  (Math.round(100 * (((deg % 360) + 360) % 360)) / 100) % 360;

/** The same direction within 0 … one turn. [rad] */
export function wrap(angleRad: number): number {
  const rest = angleRad % TURN;
  const positive = rest < 0 ? rest + TURN : rest;
  return positive >= TURN ? 0 : positive;
}
