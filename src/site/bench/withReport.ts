/** What a bench shows of a report: it comes when there is one. */
export { default as Verdict } from "./Verdict.svelte";
export { default as CutLater } from "./CutLater.svelte";
