import type { AnyTold } from "../../forming/settleTrials.ts";
import type { Report } from "../../report/report.ts";
import { workHref } from "../binder/href.ts";
import { siteHref } from "../bits/siteHref.ts";
import { possible, questionOf } from "../trials/question.ts";
import { keptHere } from "../trials/keptTrials.ts";
import type { TrialAsked } from "../trials/trialForm.ts";
import { triedSteps } from "../trials/triedSteps.ts";

/** A report whose steps start from these trials, as if they were kept beside the part. */
export function reportAfter(report: Report, asked: TrialAsked, seen: readonly AnyTold[]): Report {
  const question = questionOf(asked);
  const changed = triedSteps(question, possible(question, seen))?.changed ?? [];
  const { forming } = report;
  return {
    ...report,
    forming: {
      ...forming,
      plans: forming.plans.map((plan) =>
        plan.machine === asked.roll.name
          ? {
              ...plan,
              steps: plan.steps.map((step) => {
                const own = changed.find(({ id }) => id === step.id);
                // What is lifted is lifted by trials too.
                return own ? { ...own, number: step.number, cautions: step.cautions } : step;
              }),
            }
          : plan,
      ),
    },
  };
}

/** A part's report as its printed work sheet has it in this browser: by the trials that were kept in it, where there are any. */
export async function triedReport(report: Report): Promise<Report> {
  const { machine } = report.forming;
  const seen = machine === null ? undefined : keptHere(report.part.name, machine);
  const asked = seen && (await askedOf(report.part.name));
  return seen && asked?.roll.name === machine ? reportAfter(report, asked, seen) : report;
}

/** What the form on the part's work sheet is given, from this page or from that one. */
async function askedOf(part: string): Promise<TrialAsked | undefined> {
  const address = siteHref(workHref(part));
  const here = new URL(address, location.href).pathname === location.pathname;
  const page = here ? document : await fetched(address);
  const text = page.querySelector<HTMLElement>("[data-trial-form]")?.dataset["asked"];
  return text === undefined ? undefined : (JSON.parse(text) as TrialAsked);
}

async function fetched(address: string): Promise<Document> {
  const answer = await fetch(address);
  if (!answer.ok) throw new RangeError(`${address}: ${answer.status}`);
  return new DOMParser().parseFromString(await answer.text(), "text/html");
}
