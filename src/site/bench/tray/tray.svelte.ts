import type { TypedGroup } from "../../../input/typed.ts";
import type { NamedTyped } from "../asTyped.ts";
import type { KeptTray } from "./keptTray.ts";
import {
  clashes,
  same,
  EMPTY,
  MOST_PARTS,
  withoutPart,
  withParts,
  type Clash,
  type TrayContent,
} from "./tray.ts";

/** The tray that all benches of a binder share, in this and every other window. */
export class Tray {
  private content: TrayContent = $state.raw(EMPTY);
  /** Taken off or written over last, to be put back. */
  gone: readonly NamedTyped[] = $state.raw([]);
  /** Said to whoever works here. */
  message = "";
  /** Could the last change be kept? What could not stays on this page alone. */
  private kept = $state(true);
  /** Trays as they lay in this browser, of which something could not be read. */
  unread: readonly string[] = $state.raw([]);
  private readonly keeper: KeptTray;

  constructor(keeper: KeptTray) {
    this.keeper = keeper;
    this.content = this.latest();
  }

  get parts(): readonly NamedTyped[] {
    return this.content.parts;
  }
  get isKept(): boolean {
    return this.kept;
  }
  get job(): TypedGroup {
    return this.content.job;
  }

  /** Another window has changed the tray. */
  refresh(): void {
    const kept = this.read();
    if (this.kept) this.content = kept ?? EMPTY;
    else if (kept) this.content = withParts(this.content, kept.parts, "keep both");
  }

  /** Of some parts those whose names are taken by other parts, as it is at this moment. */
  clashes(parts: readonly NamedTyped[]): NamedTyped[] {
    return clashes(this.latest(), parts);
  }

  put(parts: readonly NamedTyped[], clash: Clash): void {
    const before = this.latest();
    const now = withParts(before, parts, clash);
    if (now.parts.length > MOST_PARTS) {
      this.message = `The tray holds no more than ${MOST_PARTS} parts: save the job and take some off. Nothing was changed.`;
      return;
    }
    const over = clash === "replace" ? clashes(before, parts) : [];
    const replaced = before.parts.filter((one) => over.some(({ name }) => same(name, one.name)));
    const added = now.parts.length - before.parts.length;
    if (replaced.length > 0) this.gone = replaced;
    this.message =
      added + over.length === 0
        ? parts.length === 1
          ? `${parts[0]?.name ?? ""} is on the tray already, the very same.`
          : "All of these parts are on the tray already."
        : parts.length === 1
          ? `${(over.length > 0 ? parts[0] : now.parts.at(-1))?.name ?? ""} is on the tray.`
          : `${added} put on the tray, ${over.length} replaced.`;
    this.write(now);
  }

  remove(name: string): void {
    const before = this.latest();
    this.gone = before.parts.filter((one) => same(one.name, name));
    this.message = `${name} was taken off the tray.`;
    this.write(withoutPart(before, name));
  }

  empty(): void {
    const before = this.latest();
    this.gone = before.parts;
    this.message = "The tray is empty.";
    this.write({ job: {}, parts: [] });
  }

  /** What was taken off or written over last; where its name is taken by now, under the next free one. */
  putBack(): void {
    const { gone } = this;
    this.gone = [];
    this.put(gone, "keep both");
  }

  /** Title, reference, date or notes of the job; the order of its parts is that of the tray. */
  putJob(job: TypedGroup): void {
    const before = this.latest();
    const about = { ...before.job, ...job };
    this.write({
      ...before,
      job: Object.fromEntries(Object.entries(about).filter(([key]) => key !== "parts")),
    });
  }

  /** What is kept at this moment, other windows' changes included; where nothing can be kept, what stands on this page. */
  private latest(): TrayContent {
    return this.kept ? (this.read() ?? EMPTY) : this.content;
  }

  private read(): TrayContent | undefined {
    const content = this.keeper.read();
    this.unread = this.keeper.unread();
    return content;
  }

  /** What could not be read is wanted no more. */
  dropUnread(): void {
    this.keeper.dropUnread();
    this.unread = [];
  }

  private write(content: TrayContent): void {
    this.content = content;
    this.kept = this.keeper.write(content);
    if (!this.kept)
      this.message =
        "This browser cannot keep the tray: its storage is full or forbidden. The parts stay here until the page is left; save the job first.";
  }
}
