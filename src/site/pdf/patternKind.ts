import type { ShareKind } from "../../output/pdf/share.ts";

/** What of a pattern is printed at full size where it is not all of it: a share, or the sheets with marking points alone. */
export type PatternKind = ShareKind | "points";
