import type { Tables } from "../../../input/context.ts";
import { betterName } from "../../../input/partName.ts";
import { MAX_SIZE } from "../../../input/text.ts";
import { isShapeId } from "../../../shapes/ids.ts";
import { SHAPE_NAMES } from "../../words/shapes.ts";
import { siteHref } from "../../bits/siteHref.ts";
import type { Bench } from "../bench.svelte.ts";
import { linkOf, LONGEST, onTheBench } from "../link.ts";
import type { NamedTyped } from "../asTyped.ts";
import type { Tray } from "../tray/tray.svelte.ts";
import type { Clash } from "../tray/tray.ts";
import { MOST_PACKED } from "./mostPacked.ts";
import { nameProblem } from "./nameProblem.ts";
import { type Choice, partCount, type Place, type Told } from "./told.ts";

/** From part file and back: what is opened, saved, shared and put on the tray at one bench. */
export class BenchFiles {
  told: Told | undefined = $state.raw();
  /** Where it is told. */
  place: Place = $state("bar");
  /** Is something being made that takes its time? */
  isBusy = $state(false);
  readonly bench: Bench;
  readonly tray: Tray;
  readonly tables: Tables;

  constructor(bench: Bench, tray: Tray, tables: Tables) {
    this.bench = bench;
    this.tray = tray;
    this.tables = tables;
  }

  /** What is asked for next is answered there. */
  at(place: Place): this {
    // What was told elsewhere is not told here again.
    if (place !== this.place) this.told = undefined;
    this.place = place;
    return this;
  }

  /** What is wrong with the part's name as that of a file; undefined where nothing is. */
  get nameProblem(): string | undefined {
    return nameProblem(this.bench.name);
  }

  /** A file that was chosen or dropped; a packed job goes on the tray. */
  async open(files: readonly File[]): Promise<void> {
    const [file, second] = files;
    if (!file) return;
    if (second) {
      this.wrong(
        "Open one file at a time: a part file, or a job's folder packed as a .zip. Nothing was changed.",
      );
      return;
    }
    try {
      if (/\.zip$/i.test(file.name)) await this.openJob(file);
      else await this.openPart(file);
    } catch (error) {
      // The file went away while it was read, or a piece of the page could not be loaded.
      this.wrong(`${file.name} could not be read (${String(error)}). Nothing was changed.`);
    }
  }

  private async openPart(file: File): Promise<void> {
    const { openPart } = await import("./openPart.ts");
    // One more than the most is enough for the reader to see that it is too much.
    const bytes = new Uint8Array(await file.slice(0, MAX_SIZE + 1).arrayBuffer());
    const { problems, typed } = openPart(bytes, file.name, this.tables);
    if (problems.length === 0 && typed) {
      this.take(typed, file.name);
      return;
    }
    const all =
      typed && isShapeId(typed.part["shape"])
        ? [{ label: "Put it on the bench all the same", act: () => this.take(typed, file.name) }]
        : [];
    this.told = {
      words: `${file.name} has something wrong. Nothing on the bench was changed.`,
      lines: problems,
      choices: all,
      isWrong: true,
    };
  }

  private async openJob(file: File): Promise<void> {
    if (file.size > MOST_PACKED) {
      this.wrong(`${file.name}: it holds more than any job; check that this is the file you mean.`);
      return;
    }
    const { openJob } = await import("./openJob.ts");
    const opened = openJob(new Uint8Array(await file.arrayBuffer()), this.tables);
    if (opened.kind === "unreadable") {
      this.wrong(`${file.name}: ${opened.problem}; ${opened.remedy}. Nothing was changed.`);
      return;
    }
    const { job, shop, parts, unfit, order, problems } = opened.value;
    const take = (some: readonly NamedTyped[]) => {
      if (job) this.tray.putJob(job);
      this.onTray(
        some,
        shop && [{ label: "Use its shop file at this bench", act: () => this.useShop(shop) }],
      );
    };
    if (problems.length === 0) {
      take(parts);
      return;
    }
    const good =
      parts.length > 0
        ? [{ label: `Take the ${partCount(parts)} without problems`, act: () => take(parts) }]
        : [];
    const named = unfit.filter(({ name }) => nameProblem(name) === undefined);
    const all =
      named.length > 0
        ? [
            {
              label: `Take ${partCount([...parts, ...named])}, problems and all`,
              act: () => take(inOrder([...parts, ...named], order)),
            },
          ]
        : [];
    this.told = {
      words: `${file.name} has something wrong. Nothing was put on the tray.`,
      lines: problems,
      choices: [...good, ...all],
      isWrong: true,
    };
  }

  private useShop(shop: NamedTyped["part"]): void {
    this.bench.shop.take(shop, true);
    this.say("The shop file of the job is in use at this bench.");
  }

  /** Parts onto the tray; where a name is taken by another part, whoever works here says what to do. */
  private onTray(parts: readonly NamedTyped[], more: readonly Choice[] = []): void {
    const put = (clash: Clash) => {
      this.tray.put(parts, clash);
      this.tellTray(more);
    };
    const taken = this.tray.clashes(parts);
    if (taken.length === 0) {
      put("keep both");
      return;
    }
    const names = taken.map(({ name }) => name).join(", ");
    this.told = {
      words:
        taken.length === 1
          ? `Another part called ${names} is on the tray.`
          : `Other parts with these names are on the tray: ${names}.`,
      choices: [
        { label: taken.length === 1 ? "Replace it" : "Replace them", act: () => put("replace") },
        { label: "Keep both", act: () => put("keep both") },
        { label: "Leave the tray as it is", act: () => (this.told = undefined) },
      ],
    };
  }

  putOnTray(): void {
    if (this.nameProblem !== undefined) {
      this.badName("The part was not put on the tray");
      return;
    }
    this.onTray([this.bench.withTrials]);
    if (this.bench.problems.length > 0 && this.told && !this.told.choices?.length)
      this.told = {
        ...this.told,
        words: `${this.told.words} Something is still wrong in it.`,
        isWrong: true,
      };
  }

  removeFromTray(name: string): void {
    this.tray.remove(name);
    this.tellTray();
  }

  emptyTray(): void {
    this.tray.empty();
    this.tellTray();
  }

  putBack(): void {
    this.tray.putBack();
    this.tellTray();
  }

  putJob(key: string, value: string): void {
    this.tray.putJob({ [key]: value });
    // The hand is on its way to the next button: nothing may move unless something is lost.
    if (!this.tray.isKept) this.at("tray").tellTray();
  }

  private tellTray(choices: readonly Choice[] = []): void {
    this.told = { words: this.tray.message, choices, isWrong: !this.tray.isKept };
  }

  takeFromTray(part: NamedTyped): void {
    this.take(part, part.name);
  }

  /**
   * Onto this bench, or with a part of another shape to the bench of that shape.
   * @param from what whoever works here knows it by: the name of its file, or of the part
   */
  private take(part: NamedTyped, from: string): void {
    const shape = part.part["shape"];
    if (!isShapeId(shape)) {
      this.wrong("The part is of no known shape. Nothing was changed.");
      return;
    }
    if (shape === this.bench.typed["shape"]) {
      this.bench.take(part);
      this.say(onTheBench(from), [{ label: "Undo", act: () => this.undo() }]);
      return;
    }
    const link = linkOf(part, from);
    if (link.length > LONGEST)
      this.wrong(
        `This part is of another shape and too long to be taken there: open its file on the page ${SHAPE_NAMES[shape]}.`,
      );
    else location.assign(siteHref(`/shapes/${shape}/`) + link);
  }

  async save(): Promise<void> {
    if (this.nameProblem !== undefined) {
      this.badName("The file was not saved");
      return;
    }
    const { savePart } = await import("./savePart.ts");
    this.told = savePart(this.bench);
  }

  async copyLink(): Promise<void> {
    const { copyLink } = await import("./copyLink.ts");
    this.told = await copyLink(this.bench.now, this.bench.isWrong);
  }

  /** The tray as a job's folder, packed. */
  async saveJob(): Promise<void> {
    const { saveJob } = await import("./saveJob.ts");
    this.told = saveJob(this.bench, this.tray, this.tables);
  }

  /** The cutting files of all parts on the tray, packed. */
  async saveCutting(): Promise<void> {
    const { bench, tray, tables } = this;
    const { saveCutting } = await import("./saveCutting.ts");
    this.isBusy = true;
    try {
      this.told = await saveCutting({ bench, tray, tables }, (words) => this.say(words));
    } catch (error) {
      this.wrong(`The cutting files could not be made (${String(error)}).`);
    }
    this.isBusy = false;
  }

  private badName(what: string): void {
    const better = betterName(this.bench.name);
    const call = better !== undefined && {
      label: `Call it ${better}`,
      act: () => {
        this.bench.rename(better);
        this.bench.leave();
        this.say(`The part is called ${better} now.`);
      },
    };
    this.told = {
      words: `${what}: ${this.nameProblem ?? ""}.`,
      choices: call ? [call] : [],
      isWrong: true,
    };
  }
  private undo(): void {
    this.bench.undo();
    this.told = undefined;
  }
  private say(words: string, choices: readonly Choice[] = []): void {
    this.told = { words, choices };
  }
  private wrong(words: string): void {
    this.told = { words, isWrong: true };
  }
}

/** Parts in the order in which the job names them; others after them. */
function inOrder(parts: readonly NamedTyped[], order: readonly string[]): NamedTyped[] {
  const place = ({ name }: NamedTyped) => (order.includes(name) ? order.indexOf(name) : order.length);
  return parts.toSorted((a, b) => place(a) - place(b));
}
