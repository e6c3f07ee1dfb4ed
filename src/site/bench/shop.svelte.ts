import type { Shop } from "../../forming/machine.ts";
import type { Tables } from "../../input/context.ts";
import type { TypedGroup } from "../../input/typed.ts";
import type { Keeper } from "./keep.ts";
import type { Complaint } from "./typedReading.ts";

/** The shop that a binder was built with: as its file says it, and as it was read. */
export interface PublishedShop {
  readonly typed: TypedGroup;
  readonly shop: Shop;
}

interface Options {
  readonly tables: Tables;
  readonly published: PublishedShop | undefined;
  readonly draft: Keeper<TypedGroup>;
  /** Another shop is asked from now on, once it has been read. */
  readonly onTaken: () => void;
  /** This browser keeps nothing. */
  readonly onUnkept: () => void;
}

/** The shop that a bench asks: as it was typed last, and as it could be read last. */
export class BenchShop {
  typed: TypedGroup | undefined = $state.raw(undefined);
  problems: readonly Complaint[] = $state.raw([]);
  /** Is it another than the binder's own? */
  isChanged = $state(false);
  /** The last one without mistakes, which is asked; one with mistakes waits. */
  now: Shop | undefined = $state.raw(undefined);
  /** What is typed has been read. */
  isRead: Promise<void> = Promise.resolve();
  private readonly options: Options;

  constructor(options: Options) {
    this.options = options;
    const kept = options.draft.read();
    this.take(kept ?? options.published?.typed);
    this.isChanged = kept !== undefined;
  }

  /** The shop that the binder was built with. */
  get published(): TypedGroup | undefined {
    return this.options.published?.typed;
  }

  /** The shop as somebody typed it. */
  take(typed: TypedGroup | undefined, keep = false): void {
    const { published, draft, tables, onTaken, onUnkept } = this.options;
    this.typed = typed;
    this.isChanged = keep;
    if (keep && !draft.write(typed)) onUnkept();
    if (typed === published?.typed) {
      this.isRead = Promise.resolve();
      this.problems = [];
      this.now = published?.shop;
    } else
      this.isRead = import("./readTypedShop.ts").then(({ readTypedShop }) => {
        // Meanwhile another may have been typed.
        if (typed !== this.typed) return;
        const reading = typed && readTypedShop(typed, tables);
        this.problems = reading?.kind === "problems" ? reading.problems : [];
        if (reading?.kind !== "problems") this.now = reading?.value;
      });
    onTaken();
  }

  /** The binder's own shop, now and the next time the page is opened. */
  takeOwn(): void {
    this.take(this.published);
    this.options.draft.write(undefined);
  }
}
