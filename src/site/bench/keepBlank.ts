import { tick } from "svelte";

const topOf = (id: string): number | undefined => document.getElementById(id)?.getBoundingClientRect().top;

/**
 * Whoever has read on to the blank that was published finds the bench's own in the same place of the screen, though the
 * verdict that comes above it is longer. Asked for right before the one takes the place of the other.
 */
export function keepBlank(): void {
  const before = topOf("blank");
  if (before === undefined || before > innerHeight / 2) return;
  void tick().then(() => scrollBy(0, (topOf("blank") ?? before) - before));
}
