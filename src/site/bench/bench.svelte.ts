import type { Shop } from "../../forming/machine.ts";
import type * as OnMachine from "../../forming/onMachine.ts";
import type { Tables } from "../../input/context.ts";
import type { FieldPath } from "../../input/problem.ts";
import { typedWith, type Typed, type TypedGroup } from "../../input/typed.ts";
import type * as Formed from "../../report/formed.ts";
import type { LaidOut, NamedPart } from "../../report/lay.ts";
import type { Report, Shaped } from "../../report/report.ts";
import { shapedOf } from "../../report/shaped.ts";
import { afterDrawn } from "./afterDrawn.ts";
import { begin, change, goOn, kept, redo, settle, undo, type History } from "./history.ts";
import type { Keeper } from "./keep.ts";
import type { NamedTyped } from "./asTyped.ts";
import type { Carried, ownTrials } from "./ownTrials.ts";
import { PartWork, type ShapeAtBench, type Worked } from "./partWork.ts";
import { BenchShop, type PublishedShop } from "./shop.svelte.ts";
import type { Complaint } from "./typedReading.ts";

/** A part that could be laid out, and how. */
interface Drawn {
  readonly part: NamedPart;
  readonly made: LaidOut;
  readonly shaped: Shaped;
}

type Outcome =
  | { readonly kind: "drawn"; readonly drawn: Drawn }
  | { readonly kind: "problems"; readonly problems: readonly Complaint[] }
  /** What reads it is still on its way. */
  | { readonly kind: "unread" };

function outcomeOf(worked: Worked | undefined): Outcome {
  if (!worked) return { kind: "unread" };
  if (worked.kind === "problems") return worked;
  const { part, made } = worked;
  return { kind: "drawn", drawn: { part, made, shaped: shapedOf(part, made) } };
}

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
  private formed:
    | {
        readonly of: Drawn;
        readonly shop: Shop | undefined;
        readonly forming: Report["forming"];
        /** The same on a machine of choice. */
        readonly on: (machine: string) => Report["forming"];
      }
    | undefined = $state.raw(undefined);
  /** The machine whose plan is asked for; undefined where nobody has chosen another than the first choice. */
  machineAsked: string | undefined = $state();
  /** The shop that is asked. */
  readonly shop: BenchShop;
  /** Path of the field that was typed in last, until anything else is done. */
  typedLast: string | undefined = $state();
  /** Said to whoever works here: what was opened, what is not kept. */
  message = $state("");
  private readonly tables: Tables;
  private readonly work: PartWork;
  private readonly draft: Keeper<readonly NamedTyped[]>;
  private readonly machineDraft: Keeper<string>;
  private isToBeKept = false;
  private asked = 0;
  private formers: Promise<readonly [typeof Formed, typeof OnMachine]> | undefined;
  /** What tells trials of the page's own part; it comes with the first verdict. */
  private ownTrials: typeof ownTrials | undefined;
  private readonly published: NamedTyped;
  /** Trials that the sheet starts from, with what they hold for. */
  private heldTrials: Carried | undefined = $state.raw(undefined);
  /** Why trials of this part hold no longer, in a sentence; empty where they do, and where there are none. */
  trialsTold = $state("");
  /** What is typed has been read, or why it cannot be is said. */
  isRead: Promise<void> = Promise.resolve();
  private readonly first: string;

  constructor(
    first: NamedTyped,
    options: {
      readonly tables: Tables;
      readonly own: ShapeAtBench;
      readonly shop: PublishedShop | undefined;
      readonly draft: Keeper<readonly NamedTyped[]>;
      readonly shopDraft: Keeper<TypedGroup>;
      readonly machineDraft: Keeper<string>;
    },
  ) {
    this.first = textOf(first);
    this.published = first;
    this.tables = options.tables;
    this.work = new PartWork(options.own, options.tables);
    this.draft = options.draft;
    this.machineDraft = options.machineDraft;
    this.machineAsked = options.machineDraft.read();
    this.shop = new BenchShop({
      tables: options.tables,
      published: options.shop,
      draft: options.shopDraft,
      onTaken: () => this.judge(),
      onUnkept: () => this.tellUnkept(),
    });
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
    const seen = (trials: Carried | undefined) => JSON.stringify(trials?.seen ?? []);
    return this.formed !== undefined && seen(this.heldTrials) !== seen(this.published.trials);
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
    if (!this.formed) return undefined;
    const { of, forming, on } = this.formed;
    const { notes, ...shaped } = of.shaped;
    return {
      ...shaped,
      forming: this.machineAsked === undefined ? forming : on(this.machineAsked),
      notes,
    };
  }
  /** The machine that would be taken if nobody chose; null where none takes the part. */
  get firstMachine(): string | null {
    return this.formed?.forming.machine ?? null;
  }
  /** Would sheets printed from here say anything else than those that the page came with? */
  get printsOwn(): boolean {
    return this.isChanged || this.isTriedOtherwise || this.shop.isChanged || this.isOtherMachine;
  }
  /** Is the plan that is shown that of another machine than the first choice? */
  get isOtherMachine(): boolean {
    return this.report !== undefined && this.report.forming.machine !== this.firstMachine;
  }
  /** Is the report that of what is drawn? */
  get isJudged(): boolean {
    return this.formed?.of === this.lastDrawn && this.formed?.shop === this.shop.now;
  }

  /** Something typed into a field. */
  put(path: FieldPath, value: Typed | undefined, about: string | undefined = JSON.stringify(path)): void {
    this.message = "";
    this.typedLast = path.join();
    const part = typedWith(this.typed, path, value) as TypedGroup;
    this.show(change(this.history, { ...this.now, part }, about));
  }
  /** Another machine of those that take the part; the first choice is none that was asked for, so that it can change. */
  chooseMachine(machine: string): void {
    this.machineAsked = machine === this.firstMachine ? undefined : machine;
    if (!this.machineDraft.write(this.machineAsked)) this.tellUnkept();
  }
  rename(name: string): void {
    const trials = this.carried;
    this.show(change(this.history, { name, part: this.typed, ...(trials && { trials }) }, "name"));
  }
  /** Another part altogether; the one before stays one step back. */
  take(part: NamedTyped): void {
    this.message = "";
    this.typedLast = undefined;
    const trials = part.trials ?? (part.name === this.name ? this.now.trials : undefined);
    this.show(change(this.history, { ...part, ...(trials && { trials }) }));
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
    this.read();
    if (!keep || this.isToBeKept) return;
    this.isToBeKept = true;
    afterDrawn(() => this.keepNow());
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
    this.judge();
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

  /** Trials of what is at the bench: those that came with it, else those of the page's own part. */
  private get carried(): Carried | undefined {
    const { now, published } = this;
    if (now.trials && now.trials !== published.trials && now.trials.fit) return now.trials;
    return now.name === published.name || now.trials
      ? this.ownTrials?.(published.name, this.shop.published, published.trials)
      : undefined;
  }

  /** The part as it goes on the tray, with the trials that hold for it. */
  get withTrials(): NamedTyped {
    const { name, part } = this.now;
    return { name, part, ...(this.heldTrials && { trials: this.heldTrials }) };
  }

  private tellUnkept(): void {
    this.message = "This browser keeps nothing: save the part before you leave the page.";
  }

  /** Trials that stand for the part, and what tells whether they hold: loaded where there are any. */
  private async trialsToLookAt() {
    this.ownTrials ??= (await import("./ownTrials.ts")).ownTrials;
    const carried = this.carried;
    return { carried, tried: carried && (await import("./trialsHere.ts")) };
  }

  /** What forms a part: asked for by name once, and again where it did not come. */
  private judges(): Promise<readonly [typeof Formed, typeof OnMachine]> {
    this.formers ??= Promise.all([
      import("../../report/formed.ts"),
      import("../../forming/onMachine.ts"),
    ]).catch((error: unknown) => {
      this.formers = undefined;
      throw error;
    });
    return this.formers;
  }

  /** Checks and plans take longer than a pattern, so they come after it has been drawn; only the last asked counts. */
  private judge(): void {
    const asked = ++this.asked;
    if (!this.lastDrawn) return;
    void Promise.all([this.judges(), this.trialsToLookAt(), this.shop.isRead]).then(
      ([[{ formedOf }, { onMachine }], { carried, tried }]) => {
        afterDrawn(() => {
          const [of, shop] = [this.lastDrawn, this.shop.now];
          if (asked !== this.asked || !of) return;
          const here =
            carried &&
            tried?.trialsHere(
              carried,
              { part: this.published, shop: this.shop.published },
              { part: of.part, made: of.made, shop },
              this.tables,
            );
          this.trialsTold = here?.told ?? "";
          this.heldTrials = here?.trials && { ...here.trials, ...(here.fit && { fit: here.fit }) };
          const forming = formedOf(of.part, of.made, { shop, trials: here?.trials });
          this.formed = { of, shop, forming, on: (machine) => onMachine(forming, machine) };
        });
      },
    );
  }
}
