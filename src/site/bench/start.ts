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
import { asideKey, draftKey, isKept, keeper, keyOf } from "./keep.ts";
import { loadShape } from "./loadShape.ts";
import { nextHand } from "./onPage.ts";
import { ownDraft } from "./ownDraft.ts";
import type { PublishedVerdict } from "./publishedVerdict.ts";
import { standInOf } from "./standIn.ts";
import type { NamedTyped } from "./asTyped.ts";

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

/**
 * Puts the bench in the place of what the page was published with.
 * @param wanted when its live parts are: until then what was published stands in for them
 */
export async function startBench(place: HTMLElement, wanted: Promise<void>): Promise<void> {
  const hand = nextHand();
  const first = JSON.parse(place.dataset["part"] ?? "") as NamedTyped;
  const id = first.part["shape"];
  if (!isShapeId(id)) throw new RangeError(`shape: ${JSON.stringify(id)}`);
  setRoot(place.dataset["root"] ?? "");
  // The bench asks for them again once it stands, and says so where they do not come.
  wanted.then(() => import("./PartViews.svelte")).catch(() => undefined);
  const binder = siteHref("/");
  const [partKey, shopKey] = [draftKey(binder, first.name), keyOf(binder, "shop")];
  const asShop = (draft: unknown) => kept?.asTypedGroup(draft);
  const [answer, shape, kept] = await Promise.all([
    fetch(siteHref("/bench.json")),
    loadShape(id),
    // What this browser kept is looked through before it is believed; mostly there is nothing.
    [partKey, shopKey].some(isKept) ? import("./asTyped.ts") : undefined,
  ]);
  if (!answer.ok) throw new RangeError(`bench.json: ${answer.status}`);
  const { tables, outlines, shop, known, explained, job } = (await answer.json()) as BenchTables;
  const outline = outlines[id];
  const asDraft = (draft: unknown) => kept?.asDraft(draft);
  const draft = ownDraft(
    keeper(partKey, asDraft),
    keeper(partKey, asDraft, () => sessionStorage),
  );
  const shopDraft = keeper(shopKey, asShop);
  const begin = () =>
    new Bench(first, {
      tables,
      own: { shape, outline },
      wanted,
      shop: shop ?? undefined,
      draft,
      shopDraft,
      shopRightDraft: keeper(keyOf(binder, "shop, last right"), asShop),
      machineDraft: keeper(keyOf(binder, `machine ${first.name}`), (kept) =>
        typeof kept === "string" ? kept : undefined,
      ),
    });
  const setAside = async (why: string | undefined) =>
    (await import("./setAside/draftAside.ts")).setDraftAside(place, { key: partKey, name: first.name, why });
  // What lies there and is no draft would be written over by the next key.
  if (isKept(partKey) && !draft.read()) await setAside("it is not as it was written");
  else if (isKept(asideKey(partKey))) await setAside(undefined);
  const isShopUnread = isKept(shopKey) && !shopDraft.read();
  if (isShopUnread || isKept(asideKey(shopKey)))
    (await import("./setAside/draftAside.ts")).setShopAside(place, shopKey, isShopUnread);
  // Asked for before the bench begins: what does not come is no fault of the draft.
  const link = location.hash === "" ? undefined : await import("./takeLink.ts");
  const told = draft.isOthers() ? (await import("./otherWindow.ts")).OTHER_DRAFT : "";
  const published = [...place.childNodes];
  const headed = place.dataset["bench"] === "on demand";
  const show = (bench: Bench): void => {
    const arrives = !headed && !hand.signal.aborted && isByLink();
    hand.abort();
    place.replaceChildren();
    mount(BenchPage, {
      target: place,
      props: {
        bench,
        standIn: standInOf(published),
        published: (JSON.parse(place.dataset["verdict"] ?? "null") as PublishedVerdict | null) ?? undefined,
        outline,
        tables,
        job,
        known: new Map(known),
        explained: new Set(explained),
        headed,
        arrives,
      },
    });
  };
  let bench: Bench | undefined;
  try {
    bench = begin();
    if (told !== "") bench.message = told;
    link?.takeLink(bench, ids);
    // A draft or a link may hold what has to be read by all the rules; the page stays as published until it is.
    await bench.isRead;
    show(bench);
  } catch (error) {
    bench?.keepNow();
    if (!isKept(partKey)) throw error;
    // A part that stops the page would stop it at every visit: the page goes on without it, and it is offered as a file.
    await setAside(String(error));
    bench = begin();
    show(bench);
  }
  const live = bench;
  printUnlessChanged(place, { bench: live, published });
  addEventListener("hashchange", () => void takeLink(live));
  addEventListener("pagehide", () => live.keepNow());
  addEventListener("storage", ({ key, newValue }) => {
    if (key === partKey && newValue !== null) void live.warnOfOther("part");
    if (key === shopKey) void live.warnOfOther("shop");
  });
}

/** Not by reloading or going back: there the browser knows where the page was left. */
function isByLink(): boolean {
  const [visit] = performance.getEntriesByType("navigation") as PerformanceNavigationTiming[];
  return visit?.type === "navigate";
}

/** Ids of the page as it was published: places that a link may lead to though the bench has taken theirs. */
const ids: ReadonlySet<string> = new Set([...document.querySelectorAll("[id]")].map(({ id }) => id));

/** What stands behind # of the address, which is seldom anything, is read by what is loaded for it. */
async function takeLink(bench: Bench): Promise<void> {
  if (location.hash === "") return;
  const link = await import("./takeLink.ts");
  link.takeLink(bench, ids);
}

/** What was published in the bench's place has left the screen, and is printed as long as the bench says the same. */
function printUnlessChanged(
  place: HTMLElement,
  { bench, published }: { readonly bench: Bench; readonly published: readonly ChildNode[] },
): void {
  addEventListener("beforeprint", () => {
    if (!bench.printsOwn) place.append(...published);
  });
  addEventListener("afterprint", () => published.forEach((node) => node.remove()));
}
