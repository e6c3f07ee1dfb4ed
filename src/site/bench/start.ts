import { mount } from "svelte";
import type { Tables } from "../../input/context.ts";
import type { Shop } from "../../forming/machine.ts";
import type { Outline } from "../../input/outline.ts";
import type { Job } from "../../input/readJob.ts";
import type { TypedGroup } from "../../input/typed.ts";
import { isShapeId } from "../../shapes/ids.ts";
import type { ShapeId } from "../../shapes/part.ts";
import { setRoot, siteHref } from "../bits/siteHref.ts";
import { Bench } from "./bench.svelte.ts";
import BenchPage from "./Bench.svelte";
import { draftKey, keeper, keyOf } from "./keep.ts";
import { loadShape } from "./loadShape.ts";
import { asDraft, asTypedGroup, type NamedTyped } from "./asTyped.ts";

/** What every bench of a binder needs, published once beside the pages. */
export interface BenchTables {
  readonly tables: Tables;
  /** What the file of each shape asks for. */
  readonly outlines: Readonly<Record<ShapeId, Outline>>;
  /** The shop as its file says it, and as it was read. */
  readonly shop: { readonly typed: TypedGroup; readonly shop: Shop } | null;
  /** Ids of the sources that have an entry with their short names, and words that the glossary explains. */
  readonly known: readonly (readonly [string, string])[];
  readonly explained: readonly string[];
  /** What the glossary says of the words that a work sheet explains, by entry. */
  readonly glossary: readonly (readonly [string, string])[];
  readonly job: Job | null;
}

/** Puts the bench in the place of what the page was published with. */
export async function startBench(place: HTMLElement): Promise<void> {
  const first = JSON.parse(place.dataset["part"] ?? "") as NamedTyped;
  const id = first.part["shape"];
  if (!isShapeId(id)) throw new RangeError(`shape: ${JSON.stringify(id)}`);
  setRoot(place.dataset["root"] ?? "");
  const binder = siteHref("/");
  const [answer, shape] = await Promise.all([fetch(siteHref("/bench.json")), loadShape(id)]);
  if (!answer.ok) throw new RangeError(`bench.json: ${answer.status}`);
  const { tables, outlines, shop, known, explained, job } = (await answer.json()) as BenchTables;
  const outline = outlines[id];
  const bench = new Bench(first, {
    tables,
    own: { shape, outline },
    shop: shop ?? undefined,
    draft: keeper(draftKey(binder, first.name), asDraft),
    shopDraft: keeper(keyOf(binder, "shop"), asTypedGroup),
    machineDraft: keeper(keyOf(binder, `machine ${first.name}`), (kept) =>
      typeof kept === "string" ? kept : undefined,
    ),
  });
  await takeLink(bench);
  addEventListener("hashchange", () => void takeLink(bench));
  addEventListener("storage", ({ key, newValue }) => {
    if (key === draftKey(binder, first.name) && newValue !== null) void bench.warnOfOther("part");
    if (key === keyOf(binder, "shop")) void bench.warnOfOther("shop");
  });
  // A draft or a link may hold what has to be read by all the rules; the page stays as published until it is.
  await bench.isRead;
  printedUnlessChanged(place, bench);
  mount(BenchPage, {
    target: place,
    props: {
      bench,
      outline,
      tables,
      job,
      known: new Map(known),
      explained: new Set(explained),
      headed: place.dataset["bench"] === "on demand",
    },
  });
}

/** A part that came in the address; one of another shape has its bench on that shape's page. */
async function takeLink(bench: Bench): Promise<void> {
  if (location.hash === "") return;
  const { onTheBench, partInLink } = await import("./link.ts");
  const link = partInLink(location.hash);
  if (link.kind === "none") {
    await tellOther(bench);
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
  bench.message = onTheBench(link.from ?? "The part that was sent here");
}

const tellBroken = (bench: Bench, why: string): void => {
  bench.message = `The link holds no part that can be read: ${why}. Nothing was changed.`;
};

/** Ids of the page as it was published: places that a link may lead to though the bench has taken theirs. */
const ids = new Set([...document.querySelectorAll("[id]")].map(({ id }) => id));

/** Something else behind #: a place on the page, or what is left of a link. */
async function tellOther(bench: Bench): Promise<void> {
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
