import { mount } from "svelte";
import type { Tables } from "../../input/context.ts";
import type { Job } from "../../input/readJob.ts";
import type { TypedGroup } from "../../input/typed.ts";
import { isShapeId } from "../../shapes/registry.ts";
import { setRoot, siteHref } from "../bits/siteHref.ts";
import { Bench } from "./bench.svelte.ts";
import BenchPage from "./Bench.svelte";
import { draftKey, keeper, keyOf } from "./keep.ts";
import { asDraft, asTypedGroup, partInLink, type NamedTyped } from "./link.ts";

/** What every bench of a binder needs, published once beside the pages. */
export interface BenchTables {
  readonly tables: Tables;
  readonly shop: TypedGroup | null;
  /** Ids of the sources that have an entry with their short names, and words that the glossary explains. */
  readonly known: readonly (readonly [string, string])[];
  readonly explained: readonly string[];
  readonly job: Job | null;
}

/** Puts the bench in the place of what the page was published with. */
export async function startBench(place: HTMLElement): Promise<void> {
  const first = JSON.parse(place.dataset["part"] ?? "") as NamedTyped;
  setRoot(place.dataset["root"] ?? "");
  const binder = siteHref("/");
  const answer = await fetch(siteHref("/bench.json"));
  if (!answer.ok) throw new RangeError(`bench.json: ${answer.status}`);
  const { tables, shop, known, explained, job } = (await answer.json()) as BenchTables;
  const bench = new Bench(first, {
    tables,
    shop: shop ?? undefined,
    draft: keeper(draftKey(binder, first.name), asDraft),
    shopDraft: keeper(keyOf(binder, "shop"), asTypedGroup),
  });
  takeLink(bench);
  addEventListener("hashchange", () => takeLink(bench));
  addEventListener("storage", ({ key, newValue }) => {
    if (key === draftKey(binder, first.name) && newValue !== null) bench.warnOfOther();
  });
  const shape = first.part["shape"];
  if (!isShapeId(shape)) throw new RangeError(`shape: ${JSON.stringify(shape)}`);
  printedUnlessChanged(place, bench);
  mount(BenchPage, {
    target: place,
    props: {
      bench,
      shape,
      tables,
      job,
      known: new Map(known),
      explained: new Set(explained),
      headed: place.dataset["bench"] === "on demand",
    },
  });
}

/** A part that came in the address; one of another shape has its bench on that shape's page. */
function takeLink(bench: Bench): void {
  const link = partInLink(location.hash);
  if (link.kind === "none") return;
  if (link.kind === "broken") {
    bench.message = `The link holds no part that can be read: ${link.why}. Nothing was changed.`;
    return;
  }
  const shape = link.value.part["shape"];
  if (isShapeId(shape) && shape !== bench.typed["shape"]) {
    location.assign(`${siteHref(`/shapes/${shape}/`)}${location.hash}`);
    return;
  }
  history.replaceState(null, "", location.pathname + location.search);
  if (!isShapeId(shape)) {
    bench.message = "The link holds a part of no known shape. Nothing was changed.";
    return;
  }
  bench.take(link.value);
  bench.message = "The part that was sent here is on the bench. Undo brings back what was here.";
}

/** What was published in the bench's place leaves the screen, and is printed as long as nothing of it has been changed. */
function printedUnlessChanged(place: HTMLElement, bench: Bench): void {
  const published = [...place.childNodes];
  place.replaceChildren();
  addEventListener("beforeprint", () => {
    if (!bench.isChanged && !bench.isTriedOtherwise) place.append(...published);
  });
  addEventListener("afterprint", () => published.forEach((node) => node.remove()));
}
