export const TURN = 2 * Math.PI;

/** [degrees] → [rad] */
export const radians = (deg: number): number => (deg * Math.PI) / 180;
/** [rad] → [degrees] */
export const degrees = (rad: number): number => (rad * 180) / Math.PI;

/** The same direction within 0 … one turn. [rad] */
export function wrap(angleRad: number): number {
  const rest = angleRad % TURN;
  const positive = rest < 0 ? rest + TURN : rest;
  return positive >= TURN ? 0 : positive;
}
