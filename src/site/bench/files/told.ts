/** Something to choose, below what is told. */
export interface Choice {
  readonly label: string;
  readonly act: () => void;
}

/** Where something was asked for, and so where it is answered. */
export type Place = "bar" | "part" | "tray";

/** What came of a file, a link or the tray. */
export interface Told {
  readonly words: string;
  /** Problems as the build prints them. */
  readonly lines?: readonly string[];
  readonly choices?: readonly Choice[];
  readonly isWrong?: boolean;
  /** A link that has to be copied by hand. */
  readonly link?: string;
}

/** "1 part", "3 parts". */
export const partCount = (parts: readonly unknown[]): string =>
  `${parts.length} ${parts.length === 1 ? "part" : "parts"}`;
