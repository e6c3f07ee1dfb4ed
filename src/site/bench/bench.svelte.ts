import type { Tables } from "../../input/context.ts";
import type { FieldPath } from "../../input/problem.ts";
import { typedWith, type Typed, type TypedGroup } from "../../input/typed.ts";
import type { LaidOut } from "../../report/lay.ts";
import { isShapeId } from "../../shapes/ids.ts";
import type { Report, Shaped } from "../../report/report.ts";
import { afterDrawn } from "./afterDrawn.ts";
import { begin, change, goOn, kept, redo, settle, undo, type History } from "./history.ts";
import type { Keeper } from "./keep.ts";
import type { NamedTyped } from "./asTyped.ts";
import { PartWork, type ShapeAtBench } from "./partWork.ts";
import { type Drawn, type Outcome, outcomeOf } from "./drawn.ts";
import { BenchShop, type PublishedShop } from "./shop.svelte.ts";
import { titleName } from "./titleName.ts";
import { BenchTrials } from "./trials.svelte.ts";
import type { Complaint } from "./typedReading.ts";
import { BenchVerdict } from "./verdict.svelte.ts";

/** A part without the trials that go with it. */
const textOf = ({ name, part }: NamedTyped): string => JSON.stringify({ name, part });

/**
 * What is at the bench: the part as it is typed, the last one that could be drawn, and the shop it is asked of.
 * Pattern and views come with every key; whether it goes follows as soon as the page has been drawn.
 */
export class Bench {
  private history: History<NamedTyped> = $state.raw(begin({ name: "part", part: {} }));
  private outcome: Outcome = $state.raw({ kind: "problems", problems: [] });
  private lastDrawn: Drawn | undefined = $state.raw(undefined);
  /** The same once its pattern is to be seen: nothing else is made anew before that. */
  private followed: Drawn | undefined = $state.raw(undefined);
  /** The shop that is asked. */
  readonly shop: BenchShop;
  /** Whether it goes, as far as that is known, and by which machine. */
  readonly verdict: BenchVerdict;
  /** The trials that its sheet starts from. */
  private readonly trials: BenchTrials;
  /** Path of the field that was typed in last, until anything else is done. */
  typedLast: string | undefined = $state();
  /** Said to whoever works here: what was opened, what is not kept. */
  message = $state("");
  private readonly work: PartWork;
  private readonly draft: Keeper<readonly NamedTyped[]>;
  private isToBeKept = false;
  private readonly published: NamedTyped;
  /** What is typed has been read, or why it cannot be is said. */
  isRead: Promise<void> = Promise.resolve();
  private readonly first: string;
  /** Comes when more is wanted than what the page was published with shows: views, verdict, files. */
  readonly wanted: Promise<void>;

  constructor(
    first: NamedTyped,
    options: {
      readonly tables: Tables;
      readonly own: ShapeAtBench;
      readonly wanted: Promise<void>;
      readonly shop: PublishedShop | undefined;
      readonly draft: Keeper<readonly NamedTyped[]>;
      readonly shopDraft: Keeper<TypedGroup>;
      readonly shopRightDraft: Keeper<TypedGroup>;
      readonly machineDraft: Keeper<string>;
    },
  ) {
    this.first = textOf(first);
    this.published = first;
    this.wanted = options.wanted;
    this.work = new PartWork(options.own, options.tables);
    this.draft = options.draft;
    this.shop = new BenchShop({
      tables: options.tables,
      published: options.shop,
      draft: options.shopDraft,
      rightDraft: options.shopRightDraft,
      onUnkept: () => this.tellUnkept(),
    });
    this.trials = new BenchTrials({
      tables: options.tables,
      published: first,
      shop: this.shop,
      now: () => this.now,
    });
    this.verdict = new BenchVerdict({
      wanted: options.wanted,
      drawn: () => this.lastDrawn,
      shop: this.shop,
      trials: this.trials,
      machineDraft: options.machineDraft,
      onUnkept: () => this.tellUnkept(),
    });
    this.shop.onTaken = () => this.verdict.judge();
    // What the page came with stays the first step, so that "undo" leads to it.
    this.show(goOn(first, options.draft.read() ?? []), false);
  }

  get typed(): TypedGroup {
    return this.history.now.part;
  }
  get name(): string {
    return this.history.now.name;
  }
  get now(): NamedTyped {
    return this.history.now;
  }
  /** Is it another part than the one that the page came with? */
  get isChanged(): boolean {
    return textOf(this.now) !== this.first;
  }
  /** Does the sheet start from other trials than those of the file next to the part's own? */
  get isTriedOtherwise(): boolean {
    return this.verdict.report !== undefined && this.trials.areOthers;
  }
  get canUndo(): boolean {
    return this.history.past.length > 0;
  }
  get canRedo(): boolean {
    return this.history.future.length > 0;
  }
  get problems(): readonly Complaint[] {
    return this.outcome.kind === "problems" ? this.outcome.problems : [];
  }
  /** What is said of a problem, in words of the form. */
  inWords(text: string): string {
    return this.work.inWords(text);
  }
  /** The last sizes that could be drawn: those typed now, or where they are half typed those before. */
  get shaped(): Shaped | undefined {
    return this.lastDrawn?.shaped;
  }
  get laidOut(): LaidOut | undefined {
    return this.lastDrawn?.made;
  }
  /** The sizes that views and figures show: those of the pattern, as soon as that has been drawn. */
  get following(): Shaped | undefined {
    return this.followed?.shaped;
  }
  /** Do the drawings show what is typed? */
  get isCurrent(): boolean {
    return this.outcome.kind === "drawn";
  }
  /** Is what is typed wrong, so that the drawings stay behind it? For a moment it may be neither read nor wrong. */
  get isWrong(): boolean {
    return this.outcome.kind === "problems";
  }
  /** With forming, on the machine that was chosen where it takes the part; for a moment that of the sizes before. */
  get report(): Report | undefined {
    return this.verdict.report;
  }
  /** Why trials of this part hold no longer, in a sentence; empty where they do, and where there are none. */
  get trialsTold(): string {
    return this.trials.told;
  }
  /** Would sheets printed from here say anything else than those that the page came with? */
  get printsOwn(): boolean {
    return this.isChanged || this.isTriedOtherwise || this.shop.isChanged || this.isOtherMachine;
  }
  /** Is the plan that is shown that of another machine than the first choice? */
  get isOtherMachine(): boolean {
    return this.report !== undefined && this.report.forming.machine !== this.verdict.firstMachine;
  }
  /** Does the report have the steps of the work sheets? */
  get hasSheets(): boolean {
    return this.verdict.hasSheets;
  }
  /** Is the report that of what is drawn? */
  get isJudged(): boolean {
    return this.verdict.isJudgedOf(this.lastDrawn);
  }
  /** Is it that of what views and figures show? It looks behind only once it stays behind them. */
  get looksJudged(): boolean {
    return this.isJudged || this.verdict.isJudgedOf(this.followed);
  }

  /** Something typed into a field. */
  put(path: FieldPath, value: Typed | undefined, about: string | undefined = JSON.stringify(path)): void {
    this.message = "";
    this.typedLast = path.join();
    const part = typedWith(this.typed, path, value) as TypedGroup;
    const called = path.join() === "title" ? this.calledAfter(value) : {};
    this.show(change(this.history, { ...this.now, ...called, part }, about));
  }
  /** The name that goes with a title: an example's, which has none of its own, follows it. */
  private calledAfter(title: Typed | undefined): Partial<NamedTyped> {
    const { name: example } = this.published;
    if (!isShapeId(example) || (this.name !== example && this.now.isTitled !== true)) return {};
    const own = titleName(title);
    return { name: own ?? example, isTitled: own !== undefined };
  }
  rename(name: string): void {
    const trials = this.trials.carried;
    this.show(change(this.history, { name, part: this.typed, ...(trials && { trials }) }, "name"));
  }
  /** Another part altogether; the one before stays one step back. */
  take({ name, part, trials: own }: NamedTyped): void {
    this.message = "";
    this.typedLast = undefined;
    const trials = own ?? (name === this.name ? this.now.trials : undefined);
    this.show(change(this.history, { name, part, ...(trials && { trials }) }));
  }
  /** What the page came with; what was here stays one step back. */
  takePublished(): void {
    this.take(this.published);
    this.message = "The sizes that this page came with are back. Undo brings back yours.";
  }
  /** Another window of this browser works on the same part or shop, and what is typed last is what is kept. */
  async warnOfOther(what: "part" | "shop"): Promise<void> {
    const { otherWindow } = await import("./otherWindow.ts");
    this.message = otherWindow(what);
  }
  /** The field was left: the next change is a step of its own. */
  leave(): void {
    this.history = settle(this.history);
  }
  undo(): void {
    this.message = "";
    this.typedLast = undefined;
    this.show(undo(this.history));
  }
  redo(): void {
    this.message = "";
    this.typedLast = undefined;
    this.show(redo(this.history));
  }

  private show(history: History<NamedTyped>, keep = true): void {
    this.history = history;
    try {
      this.read();
    } finally {
      // What cannot be shown, by a mistake of ours, is kept all the same.
      if (keep && !this.isToBeKept) {
        this.isToBeKept = true;
        afterDrawn(() => this.keepNow());
      }
    }
  }

  /** Writes what waits to be kept till it has been drawn: a page that is left does not wait. */
  keepNow(): void {
    if (!this.isToBeKept) return;
    this.isToBeKept = false;
    if (!this.draft.write(kept(this.history))) this.tellUnkept();
  }

  private read(): void {
    this.outcome = outcomeOf(this.work.of(this.now));
    if (this.outcome.kind === "unread") this.isRead = this.readWhole();
    if (this.outcome.kind === "drawn") this.draw(this.outcome.drawn);
    else if (this.outcome.kind === "problems" && !this.lastDrawn) this.drawBefore();
  }

  private draw(drawn: Drawn): void {
    this.lastDrawn = drawn;
    if (this.followed) afterDrawn(() => (this.followed = this.lastDrawn));
    else this.followed = drawn;
    this.verdict.judge();
  }

  /** A page that is opened on something half typed shows the last step before it that can be drawn. */
  private drawBefore(): void {
    for (const before of this.history.past.toReversed()) {
      const outcome = outcomeOf(this.work.of(before));
      if (outcome.kind !== "drawn") continue;
      this.draw(outcome.drawn);
      return;
    }
  }

  /** The rules that read whatever is typed are loaded for the first hand that comes to the form. */
  async expectTyping(): Promise<void> {
    // Without them plain sizes are read all the same, and what wants them asks again.
    await this.work.load().catch(() => undefined);
  }

  private async readWhole(): Promise<void> {
    let lacking: Complaint | undefined;
    try {
      await this.work.load();
    } catch (error) {
      lacking = {
        path: [],
        problem: `what is typed cannot be read now (${String(error)})`,
        remedy: "reload the page with the network on; what you typed is kept",
      };
    }
    // Meanwhile something else may have been typed, and read.
    if (this.outcome.kind !== "unread") return;
    if (!lacking) {
      this.read();
      return;
    }
    this.outcome = { kind: "problems", problems: [lacking] };
    if (!this.lastDrawn) this.drawBefore();
  }

  /** The part as it goes on the tray, with the trials that hold for it. */
  get withTrials(): NamedTyped {
    const [{ name, part }, { held }] = [this.now, this.trials];
    return { name, part, ...(held && { trials: held }) };
  }

  private tellUnkept(): void {
    this.message = "This browser keeps nothing: save the part before you leave the page.";
  }

  /** The steps of the work sheets are wanted: no verdict needs them, and they weigh as much as all its checks. */
  loadSheets(): Promise<void> {
    return this.verdict.loadSheets();
  }
}
