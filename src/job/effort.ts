/** More would take hours for what minutes show. */
const MOST = 100;

/** How long plates are searched for, from SLANTWORK_EFFORT; 1 where it is left out, undefined where it is no such number. */
export function effortOf(given: string | undefined): number | undefined {
  const value = Number(given ?? 1);
  return value > 0 && value <= MOST ? value : undefined;
}

/** What is wrong with it, and what would be right. */
export const effortProblem = (given: string | undefined): string =>
  `SLANTWORK_EFFORT=${given ?? ""}: give a number up to ${MOST}, as in 20`;
