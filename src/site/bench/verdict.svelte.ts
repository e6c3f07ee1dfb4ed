import type { Shop } from "../../forming/machine.ts";
import type * as OnMachine from "../../forming/onMachine.ts";
import type * as Formed from "../../report/formed.ts";
import type * as Judged from "../../report/judged.ts";
import type { Report } from "../../report/report.ts";
import { afterDrawn } from "./afterDrawn.ts";
import type { Drawn } from "./drawn.ts";
import type { Keeper } from "./keep.ts";
import type { BenchShop } from "./shop.svelte.ts";
import type { BenchTrials } from "./trials.svelte.ts";

interface Options {
  /** Nothing is judged before that. */
  readonly wanted: Promise<void>;
  /** The last sizes that could be drawn. */
  readonly drawn: () => Drawn | undefined;
  readonly shop: BenchShop;
  readonly trials: BenchTrials;
  readonly machineDraft: Keeper<string>;
  /** This browser keeps nothing. */
  readonly onUnkept: () => void;
}

/** Whether and how what is drawn can be formed: it follows as soon as the page has been drawn. */
export class BenchVerdict {
  private formed:
    | {
        readonly of: Drawn;
        readonly shop: Shop | undefined;
        readonly forming: Report["forming"];
        /** Do its plans have their steps? */
        readonly hasSheets: boolean;
        /** The same on a machine of choice. */
        readonly on: (machine: string) => Report["forming"];
      }
    | undefined = $state.raw(undefined);
  /** The machine whose plan is asked for; undefined where nobody has chosen another than the first choice. */
  machineAsked: string | undefined = $state();
  /** What makes work sheets too; it comes when somebody comes near a step. */
  private whole: typeof Formed | undefined;
  private coming: Promise<void> | undefined;
  private judging: Promise<readonly [typeof Judged, typeof OnMachine]> | undefined;
  private asked = 0;
  /** Why the last that was asked for could not be judged; undefined where it could, and while it is on its way. */
  lacking: string | undefined = $state();
  private readonly options: Options;

  constructor(options: Options) {
    this.options = options;
    this.machineAsked = options.machineDraft.read();
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
  /** Does the report have the steps of the work sheets? */
  get hasSheets(): boolean {
    return this.formed?.hasSheets === true;
  }
  /** Is the report that of these sizes, in the shop as it is? */
  isJudgedOf(drawn: Drawn | undefined): boolean {
    return this.formed?.of === drawn && this.formed?.shop === this.options.shop.now;
  }

  /** Another machine of those that take the part; the first choice is none that was asked for, so that it can change. */
  chooseMachine(machine: string): void {
    this.machineAsked = machine === this.firstMachine ? undefined : machine;
    if (!this.options.machineDraft.write(this.machineAsked)) this.options.onUnkept();
  }

  /** The steps of the work sheets are wanted: no verdict needs them, and they weigh as much as all its checks. */
  loadSheets(): Promise<void> {
    this.coming ??= import("../../report/formed.ts").then(
      (whole) => {
        this.whole = whole;
        if (this.formed && !this.hasSheets) this.judge();
      },
      (error: unknown) => {
        // Whoever asks again may find the network on.
        this.coming = undefined;
        throw error;
      },
    );
    return this.coming;
  }

  /** What judges a part: asked for by name once, and again where it did not come. */
  judges(): Promise<readonly [typeof Judged, typeof OnMachine]> {
    this.judging ??= Promise.all([
      import("../../report/judged.ts"),
      import("../../forming/onMachine.ts"),
    ]).catch((error: unknown) => {
      this.judging = undefined;
      throw error;
    });
    return this.judging;
  }

  /** Checks and plans take longer than a pattern, so they come after it has been drawn; only the last asked counts. */
  judge(): void {
    const { drawn, shop, trials, wanted } = this.options;
    const asked = ++this.asked;
    if (!drawn()) return;
    void wanted
      .then(() => Promise.all([this.judges(), trials.look(), shop.isRead]))
      .then(([[{ judgedPart }, { onMachine }], heldFor]) => {
        afterDrawn(() => {
          const [of, now] = [drawn(), shop.now];
          if (asked !== this.asked || !of) return;
          const { whole } = this;
          const held = heldFor(of, now);
          const forming = whole
            ? whole.formedOf(of.part, of.made, { shop: now, trials: held })
            : judgedPart(of.part, of.made, now);
          const on = (machine: string) => onMachine(forming, machine);
          this.formed = { of, shop: now, forming, hasSheets: whole !== undefined, on };
          this.lacking = undefined;
        });
      })
      .catch((error: unknown) => {
        if (asked === this.asked) this.lacking = String(error);
      });
  }
}
