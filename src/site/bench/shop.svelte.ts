import type { Shop } from "../../forming/machine.ts";
import type { Tables } from "../../input/context.ts";
import type { TypedGroup } from "../../input/typed.ts";
import type { Keeper } from "./keep.ts";
import type { readTypedShop } from "./readTypedShop.ts";
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
  /** The last one that was right, beside what is typed. */
  readonly rightDraft: Keeper<TypedGroup>;
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
  /** Another shop is asked from now on, once it has been read. */
  onTaken: () => void = () => undefined;
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

  /** Is the binder's own shop asked? */
  get asksOwn(): boolean {
    return this.now !== undefined && this.now === this.options.published?.shop;
  }

  /** The shop as somebody typed it. */
  take(typed: TypedGroup | undefined, keep = false): void {
    const { published, draft, rightDraft, tables, onUnkept } = this.options;
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
        if (reading?.kind === "problems") {
          this.problems = reading.problems;
          this.now ??= this.lastRight((kept) => readTypedShop(kept, tables));
          return;
        }
        this.problems = [];
        this.now = reading?.value;
        rightDraft.write(typed);
      });
    this.onTaken();
  }

  /** A page that is opened on a shop with mistakes asks the last one that was right: that kept beside it, else the binder's own. */
  private lastRight(read: (kept: TypedGroup) => ReturnType<typeof readTypedShop>): Shop | undefined {
    const { rightDraft, published } = this.options;
    const kept = rightDraft.read();
    const reading = kept && read(kept);
    return reading?.kind === "read" ? reading.value : published?.shop;
  }

  /** The binder's own shop, now and the next time the page is opened. */
  takeOwn(): void {
    this.take(this.published);
    this.options.draft.write(undefined);
    this.options.rightDraft.write(undefined);
  }
}
