import type { Report } from "../report/report.ts";

/** Parts that go on no machine, and a word on them: their files are there all the same, and plate is cut only once. */
export interface NotHere {
  readonly names: readonly string[];
  readonly sentence: string;
}

interface Asked {
  readonly parts: readonly { readonly report: Report }[];
  readonly shop: unknown;
}

/** Which parts of a job do not go here; undefined where all go. */
export function notHere({ parts, shop }: Asked): NotHere | undefined {
  const names = parts
    .filter(({ report }) => report.forming.verdict === "fail")
    .map(({ report }) => report.part.name);
  if (names.length === 0) return undefined;
  const one = names.length === 1;
  const why = shop ? "on no machine of the shop" : "by the checks that need no machine";
  return {
    names,
    sentence: `${one ? "1 part does" : `${names.length} parts do`} not go here, ${why}: ${names.join(", ")}. ${one ? "Its" : "Their"} files were made all the same; do not cut before that is settled`,
  };
}
