import { untrack } from "svelte";
import type { MachineAnswer } from "../../../forming/answer.ts";
import type { FieldPath } from "../../../input/problem.ts";
import { typedAt, typedWith, type Typed, type TypedGroup, type TypedList } from "../../../input/typed.ts";
import type { Bench } from "../bench.svelte.ts";
import type { Units } from "../../../input/units.ts";
import type { Care } from "../cares.ts";
import type { FieldItem, Typing } from "../form.ts";
import { begin, change, redo, settle, undo, type History } from "../history.ts";
import { inFieldWords } from "../fieldWords.ts";
import { inOtherUnits } from "../otherUnits.ts";
import type { Complaint } from "../typedReading.ts";
import { machineLabel } from "./labels.ts";
import { plainShop } from "./plainShop.ts";
import { whatItDid } from "./whatItDid.ts";

const EMPTY: TypedGroup = { name: "Our shop", units: "mm", machines: [] };

/** The least that a machine says for itself, to begin with. */
const NEW = {
  "plate roll": { kind: "plate roll", name: "New roll", rating: {}, rolls: {} },
  "press brake": { kind: "press brake", name: "New brake" },
} as const;

/** The shop as it is typed, with a way back; the bench asks the last one that is right. */
export class ShopEdit implements Typing {
  private history: History<TypedGroup> = $state.raw(begin(EMPTY));
  private readonly bench: Bench;
  /** The shop of the bench as it was last seen from here. */
  private known: TypedGroup | undefined;
  typedLast: string | undefined = $state();
  /** What the machine of that field said to the part before it was typed in. */
  private before: MachineAnswer | undefined;

  constructor(bench: Bench) {
    this.bench = bench;
    this.known = bench.shop.typed;
    this.history = begin(plainShop(bench.shop.typed ?? EMPTY));
  }

  get typed(): TypedGroup {
    return this.history.now;
  }
  get problems() {
    return this.bench.shop.problems;
  }
  get canUndo(): boolean {
    return this.history.past.length > 0;
  }
  get canRedo(): boolean {
    return this.history.future.length > 0;
  }
  list(key: "machines" | "stock"): TypedList {
    const list = typedAt(this.typed, [key]);
    return Array.isArray(list) ? (list as TypedList) : [];
  }

  readonly inWords = inFieldWords;
  readonly put = (path: FieldPath, value: Typed | undefined): void => {
    const field = path.join();
    if (this.typedLast !== field) this.before = this.answerOf(path[1]);
    this.show(change(this.history, typedWith(this.typed, path, value) as TypedGroup, JSON.stringify(path)));
    this.typedLast = field;
  };
  /** What is wrong stands at another field than the one that was changed. */
  readonly elsewhere = ({ path, problem }: Complaint): string => {
    const [list, i] = path;
    const name = list === "machines" && i !== undefined ? typedAt(this.typed, [list, i, "name"]) : undefined;
    return `The checks do not follow yet: “${machineLabel(path)}”${typeof name === "string" ? ` of ${name}` : ""} ${inFieldWords(problem)}.`;
  };
  /** What the change of a field did to the part on its machine: for the worse, and only at the field that was typed in last. */
  did(path: FieldPath): Care[] {
    const { bench } = this;
    if (path[0] !== "machines" || path.join() !== this.typedLast) return [];
    if (!bench.isJudged || this.problems.length > 0) return [];
    return whatItDid(this.before, this.answerOf(path[1]));
  }
  /** What a machine of the list says to the part, by the shop that is asked. */
  private answerOf(i: FieldPath[number] | undefined): MachineAnswer | undefined {
    const { shop, report } = this.bench;
    const name = typeof i === "number" ? shop.now?.machines[i]?.name : undefined;
    return report?.forming.machines.find(({ machine }) => machine === name);
  }
  readonly leave = (): void => {
    this.history = settle(this.history);
  };
  undo(): void {
    this.show(undo(this.history));
  }
  redo(): void {
    this.show(redo(this.history));
  }
  add(kind: keyof typeof NEW): void {
    const names = this.list("machines").map((one) => typedAt(one, ["name"]));
    let name: string = NEW[kind].name;
    for (let n = 2; names.includes(name); n++) name = `${NEW[kind].name} ${n}`;
    this.take(
      typedWith(this.typed, ["machines", this.list("machines").length], { ...NEW[kind], name }) as TypedGroup,
    );
  }
  addPlate(): void {
    this.take(
      typedWith(this.typed, ["stock", this.list("stock").length], { material: "s235" }) as TypedGroup,
    );
  }
  remove(key: "machines" | "stock", i: number): void {
    this.take(typedWith(this.typed, [key, i], undefined) as TypedGroup);
  }
  /** Another shop altogether; the one before stays one step back. */
  take(shop: TypedGroup): void {
    this.show(change(this.history, plainShop(shop)));
  }
  /** The shop was changed elsewhere at this bench, by a job's file: the one before stays one step back. */
  follow(shop: TypedGroup | undefined): void {
    if (shop === this.known) return;
    this.known = shop;
    this.history = change(
      untrack(() => this.history),
      plainShop(shop ?? EMPTY),
    );
  }
  /** The same shop with its lengths in other units. */
  inUnits(units: Units, fields: readonly FieldItem[]): void {
    this.show(change(this.history, inOtherUnits(this.typed, units, fields)));
  }
  /** The shop that the binder was built with. */
  reset(): void {
    this.bench.shop.takeOwn();
    this.follow(this.bench.shop.typed);
  }

  private show(history: History<TypedGroup>): void {
    this.history = history;
    this.typedLast = undefined;
    this.known = history.now;
    this.bench.shop.take(history.now, true);
  }
}
