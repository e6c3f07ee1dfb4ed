import type { Bench } from "./bench.svelte.ts";

const today = (): string => {
  const now = new Date();
  const two = (value: number) => String(value).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};

/** What whoever holds a sheet printed from the bench has to know of it, in sentences: it looks like an issued one. */
export function remarks(bench: Bench): string[] {
  return [
    ...(bench.isCurrent
      ? []
      : [
          "NOT what is typed: something typed was wrong, and these are the last sizes that could be laid out.",
        ]),
    ...(bench.isChanged ? [`Made at the bench on ${today()}, not from the binder's own file.`] : []),
    ...(bench.isTriedOtherwise && bench.trialsTold === ""
      ? ["Settings by trials kept in one browser, not by the binder's own file."]
      : []),
    ...(bench.trialsTold === "" ? [] : [bench.trialsTold]),
    ...(bench.shop.isChanged ? ["Machines and plates as changed in one browser."] : []),
    ...(bench.isOtherMachine
      ? [
          `For ${bench.report?.forming.machine}, chosen at the bench; the first choice is ${bench.verdict.firstMachine}.`,
        ]
      : []),
  ];
}
