import { mount } from "svelte";
import type { Report } from "../../report/report.ts";
import { reportHref } from "../binder/href.ts";
import { siteHref } from "../bits/siteHref.ts";
import type { PartAround } from "../words/titleBlock.ts";
import PdfFiles from "./PdfFiles.svelte";

/** By trials that were kept in this browser; what reckons with them is loaded where a sheet is asked for. */
const tried = async (report: Report): Promise<Report> =>
  (await import("./triedReport.ts")).triedReport(report);

/** The report of the part on this page, and what can be made of it. */
export async function startPdf(place: HTMLElement): Promise<void> {
  const address = siteHref(reportHref(place.dataset["pdf"] ?? ""));
  const answer = await fetch(address);
  if (!answer.ok) throw new RangeError(`${address}: ${answer.status}`);
  const report = (await answer.json()) as Report;
  const around = JSON.parse(place.dataset["around"] ?? "") as PartAround;
  place.replaceChildren();
  mount(PdfFiles, { target: place, props: { report, around, tried } });
}
