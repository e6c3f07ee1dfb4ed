import type { Shop } from "../../forming/machine.ts";
import type { Tables } from "../../input/context.ts";
import type { NamedTyped } from "./asTyped.ts";
import type { Drawn } from "./drawn.ts";
import type { Carried, ownTrials } from "./ownTrials.ts";
import type { BenchShop } from "./shop.svelte.ts";
import type { TrialsHere } from "./trialsHere.ts";

/** What is at the bench, as far as trials ask. */
interface Options {
  readonly tables: Tables;
  /** The part that the page came with, and its trials. */
  readonly published: NamedTyped;
  readonly shop: BenchShop;
  /** The part as it is typed. */
  readonly now: () => NamedTyped;
}

/** Tells which of the trials that were looked at hold for what is drawn, and remembers them. */
export type Held = (of: Drawn, shop: Shop | undefined) => TrialsHere["trials"];

/** Trials of the part at the bench: those that it brings, whether they still hold, and why not where they do not. */
export class BenchTrials {
  /** Trials that the sheet starts from, with what they hold for. */
  held: Carried | undefined = $state.raw(undefined);
  /** Why trials of this part hold no longer, in a sentence; empty where they do, and where there are none. */
  told = $state("");
  /** What tells trials of the page's own part; it comes with the first verdict. */
  private own: typeof ownTrials | undefined;
  private readonly options: Options;

  constructor(options: Options) {
    this.options = options;
  }

  /** Trials of what is at the bench: those that came with it, else those of the page's own part. */
  get carried(): Carried | undefined {
    const { published, shop } = this.options;
    const now = this.options.now();
    if (now.trials && now.trials !== published.trials && now.trials.fit) return now.trials;
    return now.name === published.name || now.trials
      ? this.own?.(published.name, shop.published, published.trials)
      : undefined;
  }
  /** Are they others than those of the file next to the part's own? */
  get areOthers(): boolean {
    const seen = (trials: Carried | undefined) => JSON.stringify(trials?.seen ?? []);
    return seen(this.held) !== seen(this.options.published.trials);
  }

  /** What tells whether they hold is loaded where there are any. */
  async look(): Promise<Held> {
    this.own ??= (await import("./ownTrials.ts")).ownTrials;
    const { carried } = this;
    const tried = carried && (await import("./trialsHere.ts"));
    return ({ part, made }, shop) => {
      const { published, shop: own, tables } = this.options;
      const here =
        carried &&
        tried?.trialsHere(carried, { part: published, shop: own.published }, { part, made, shop }, tables);
      this.told = here?.told ?? "";
      this.held = here?.trials && { ...here.trials, ...(here.fit && { fit: here.fit }) };
      return here?.trials;
    };
  }
}
