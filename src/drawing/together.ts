/** Words that stay on one line. */
export const together = (text: string): string => text.replaceAll(" ", "\u00a0");
