/** Under which what springback asks of a part is asked. */
export const SPRINGBACK = "springback";
