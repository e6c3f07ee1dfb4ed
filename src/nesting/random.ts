/** Numbers 0 ≤ x < 1 that look random and are the same for the same seed on every machine. */
export type Random = () => number;

/** A 32-bit generator: a counter of odd step, its bits mixed by multiplications (the "mulberry32" recipe, from memory). */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let bits = Math.imul(state ^ (state >>> 15), state | 1);
    bits ^= bits + Math.imul(bits ^ (bits >>> 7), bits | 61);
    return ((bits ^ (bits >>> 14)) >>> 0) / 4294967296;
  };
}
