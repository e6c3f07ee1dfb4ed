import { readdirSync } from "node:fs";
import type { Browser, Page } from "playwright-core";
import { launch } from "../browser/chromium.ts";
import { DIST, serve } from "../browser/site.ts";

/** One frame at 60 Hz. [ms] */
const FRAME_MS = 1000 / 60;
const KEYS = 30;
/** The engine compiles what runs often: a hand that types has typed before. */
const WARM_UP = 15;

interface Beat {
  readonly name: string;
  /** From a key to the pattern painted anew, processor time of the page: half of the keys are quicker, and all but one in twenty. [ms] */
  readonly medianMs: number;
  readonly slowMs: number;
  /** The same by the clock, which runs on while others are at work on the machine. [ms] */
  readonly clockMs: number;
}

/**
 * Types into the height of every part of the binder in dist/, and waits for its pattern each time. A key counts from its event,
 * which comes at the beginning of a frame as an input event does, until the frame is done in which the pattern is another:
 * reading, development, drawing, style, layout and paint of the whole page. Pixels are made from that on other threads.
 */
export async function keystrokes(): Promise<Beat[]> {
  const site = await serve(DIST);
  const browser = await launch();
  const names = readdirSync(`${DIST}/parts`).filter((name) => !name.includes("."));
  const beats: Beat[] = [];
  for (const name of names) {
    const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
    await page.goto(`${site.url}parts/${name}/`);
    beats.push({ name, ...(await beatOf(browser, page)) });
    await page.close();
  }
  await browser.close();
  site.close();
  return beats.sort((p, q) => q.medianMs - p.medianMs);
}

async function beatOf(browser: Browser, page: Page): Promise<Omit<Beat, "name">> {
  await page.getByRole("button", { name: "Change this part here" }).click();
  await page.locator(".bench .checks").waitFor();
  const field = page
    .locator(".bench-field")
    .filter({ hasText: /^(Height|Slant|Half angle)/ })
    .locator("input")
    .first();
  // The first hand at the form has the rules of files loaded, and what stands far down.
  await field.focus();
  await page.waitForLoadState("networkidle");
  await browser.startTracing(page, { categories: ["blink.user_timing"] });
  const byClock = await field.evaluate(typeAway, WARM_UP + KEYS);
  const { traceEvents } = JSON.parse(String(await browser.stopTracing())) as { traceEvents: Mark[] };
  const at = (name: string) => traceEvents.filter((one) => one.name === name).sort((p, q) => p.ts - q.ts);
  const [keys, painted] = [at("key"), at("painted")];
  const counted = (spent: readonly number[]): number[] => spent.slice(WARM_UP).sort((p, q) => p - q);
  const processor = counted(keys.map((key, i) => ((painted[i]?.tts ?? NaN) - key.tts) / 1000));
  const clock = counted(byClock);
  return {
    medianMs: processor[KEYS >> 1] ?? NaN,
    slowMs: processor[Math.floor(0.95 * KEYS)] ?? NaN,
    clockMs: clock[KEYS >> 1] ?? NaN,
  };
}

/** A mark that the page set, in time and by the processor time of its thread. [µs] */
interface Mark {
  readonly name: string;
  readonly ts: number;
  readonly tts: number;
}

/**
 * In the page: another size with every key, marked when it comes and when the pattern has been painted. The clock runs from after
 * the one mark to before the other, which take time themselves, half a millisecond while they are traced; the processor's
 * time has the first of them in it.
 *
 * @returns by the clock, of each key [ms]
 */
async function typeAway(input: HTMLElement | SVGElement, keys: number): Promise<number[]> {
  if (!(input instanceof HTMLInputElement)) throw new RangeError("a size is typed into an input");
  const MOST_FRAMES = 60;
  const STEPS = 5000;
  const pattern = () =>
    [...document.querySelectorAll(".look[aria-label^=Pattern] path")]
      .map((path) => path.getAttribute("d"))
      .join("");
  /** Does something in the next frame, and waits until that is done. */
  const inFrame = (work: () => void) =>
    new Promise<void>((done) =>
      requestAnimationFrame(() => {
        work();
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => done();
        // A message comes when the frame that it is sent from has been laid out and painted.
        port2.postMessage(undefined);
      }),
    );
  const [, feet, inches = ""] = /^(\d+)'\s*-?\s*(\d*)/.exec(input.value) ?? [];
  const size = feet === undefined ? Number.parseFloat(input.value) : 12 * Number(feet) + Number(inches);
  const [unit = ""] = /[^\d/]*$/.exec(input.value) ?? [];
  const byClock: number[] = [];
  for (let i = 1; i <= keys; i++) {
    const before = pattern();
    let from = NaN;
    await inFrame(() => {
      performance.mark("key");
      from = performance.now();
      input.value = `${(size * (1 + i / STEPS)).toFixed(4)}${unit}`;
      input.dispatchEvent(new Event("input", { bubbles: true }));
    });
    for (let frame = 1; pattern() === before; frame++) {
      if (frame > MOST_FRAMES) throw new RangeError(`no other pattern by ${input.value}`);
      await inFrame(() => undefined);
    }
    byClock.push(performance.now() - from);
    performance.mark("painted");
    // Views and checks follow; nobody types faster than that on a machine at rest.
    do await new Promise((done) => setTimeout(done, 120));
    while (document.querySelector(".bench .stale"));
  }
  return byClock;
}

/** A table of ratios to one frame, the heaviest part first. */
export function printKeystrokes(beats: readonly Beat[]): void {
  const frames = (ms: number): string => (ms / FRAME_MS).toFixed(2).padStart(6);
  console.log(
    "From a key to the pattern painted anew, in frames of 60 Hz: processor time, median and all but one in twenty; by the clock",
  );
  for (const { name, medianMs, slowMs, clockMs } of beats)
    console.log(`  ${name.padEnd(30)} ${frames(medianMs)} ${frames(slowMs)} ${frames(clockMs)}`);
}
