import type { Report } from "../report/report.ts";
import { VERDICTS } from "../report/verdictWords.ts";

/** Those of some parts that go on no machine, by name, each once. */
export const notGoing = (reports: readonly Report[]): string[] => [
  ...new Set(reports.filter(({ forming }) => forming.verdict === "fail").map(({ part }) => part.name)),
];

/** What stands beside a blank or a plate in every file that may be cut from alone: nothing where all goes. */
export const notToCut = (bad: readonly string[]): string[] =>
  bad.length === 0
    ? []
    : [`DO NOT CUT YET. ${bad.join(", ")}: ${VERDICTS.fail}; do not cut before that is settled`];
