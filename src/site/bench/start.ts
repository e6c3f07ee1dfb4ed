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
    machineDraft: keeper(keyOf(binder, `machine ${first.name}`), (kept) =>
      typeof kept === "string" ? kept : undefined,
    ),
  });
  takeLink(bench);
  addEventListener("hashchange", () => takeLink(bench));
  addEventListener("storage", ({ key, newValue }) => {
    if (key === draftKey(binder, first.name) && newValue !== null) void bench.warnOfOther("part");
    if (key === keyOf(binder, "shop")) void bench.warnOfOther("shop");
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
  if (link.kind === "none") {
    void tellOther(bench);
    return;
  }
  if (link.kind === "broken") {
    tellBroken(bench, link.why);
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

const tellBroken = (bench: Bench, why: string): void => {
  bench.message = `The link holds no part that can be read: ${why}. Nothing was changed.`;
};

/** Ids of the page as it was published: places that a link may lead to though the bench has taken theirs. */
const ids = new Set([...document.querySelectorAll("[id]")].map(({ id }) => id));

/** Something else behind #: a place on the page, or what is left of a link. */
async function tellOther(bench: Bench): Promise<void> {
  if (location.hash === "") return;
  const { otherHash } = await import("./otherHash.ts");
  const why = otherHash(location.hash, (id) => ids.has(id) || document.getElementById(id) !== null);
  if (why !== undefined) tellBroken(bench, why);
}

/** What was published in the bench's place leaves the screen, and is printed as long as the bench says the same. */
function printedUnlessChanged(place: HTMLElement, bench: Bench): void {
  const published = [...place.childNodes];
  place.replaceChildren();
  addEventListener("beforeprint", () => {
    if (!bench.printsOwn) place.append(...published);
  });
  addEventListener("afterprint", () => published.forEach((node) => node.remove()));
}
