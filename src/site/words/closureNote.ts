import type { Report } from "../../report/report.ts";
import { numbersIn } from "./numbers.ts";

/** How the closure table is measured, and what its gaps are reckoned with. */
export function closureNote({ forming, part }: Pick<Report, "forming" | "part">): string {
  const leadMm = Math.max(0, ...forming.closure.map((row) => row.leadMm));
  const led =
    leadMm === 0
      ? ""
      : `, with the first pass’s straight lead of ${numbersIn(part.units).length(leadMm)} (closed: none)`;
  return `Inside template radii and gap from inside corner to inside corner${led}, piece released and supported.`;
}
