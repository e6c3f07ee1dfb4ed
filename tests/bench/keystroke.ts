import { readdirSync } from "node:fs";
import { launch } from "../browser/chromium.ts";
import { DIST, serve } from "../browser/site.ts";

/** One frame at 60 Hz. [ms] */
const FRAME_MS = 1000 / 60;
const KEYS = 30;

interface Beat {
  readonly name: string;
  /** From a key to the pattern redrawn: half of the keys are quicker, and the slowest but one in twenty. [ms] */
  readonly medianMs: number;
  readonly slowMs: number;
}

/** Types into the height of every part of the binder in dist/, and waits for its pattern each time. */
export async function keystrokes(): Promise<Beat[]> {
  const site = await serve(DIST);
  const browser = await launch();
  const page = await browser.newPage({ viewport: { width: 1280, height: 900 } });
  const names = readdirSync(`${DIST}/parts`).filter((name) => !name.includes("."));
  const beats: Beat[] = [];
  for (const name of names) {
    await page.goto(`${site.url}parts/${name}/`);
    await page.getByRole("button", { name: "Change this part here" }).click();
    await page.locator(".bench .checks").waitFor();
    const field = page
      .locator(".bench-field")
      .filter({ hasText: /^(Height|Slant|Half angle)/ })
      .locator("input");
    const times = await field.first().evaluate(async (input: HTMLInputElement, keys) => {
      const rest = () => new Promise((done) => setTimeout(done, 60));
      const MOST_FRAMES = 30;
      const pattern = () =>
        [...document.querySelectorAll(".look")]
          .filter((one) => one.getAttribute("aria-label")?.startsWith("Pattern"))
          .map((one) => [...one.querySelectorAll("path")].map((path) => path.getAttribute("d")).join(""))
          .join("");
      const found: number[] = [];
      const size = Number.parseFloat(input.value);
      const after = input.value.replace(/^[\d.]+/, "");
      for (let i = 1; i <= keys; i++) {
        input.value = `${size + i / 10}${after}`;
        const before = pattern();
        const began = performance.now();
        input.dispatchEvent(new Event("input", { bubbles: true }));
        // Until the pattern is another: at once where it is redrawn within the key's own work, else frame by frame.
        await Promise.resolve();
        for (let frame = 0; frame < MOST_FRAMES && pattern() === before; frame++)
          await new Promise(requestAnimationFrame);
        // What was drawn has to be laid out as well before it can be shown.
        document.querySelectorAll(".look svg").forEach((svg) => svg.getBoundingClientRect());
        found.push(performance.now() - began);
        await rest();
      }
      return found.sort((p, q) => p - q);
    }, KEYS);
    beats.push({ name, medianMs: times[KEYS >> 1] ?? NaN, slowMs: times[Math.floor(0.95 * KEYS)] ?? NaN });
  }
  await browser.close();
  site.close();
  return beats.sort((p, q) => q.medianMs - p.medianMs);
}

/** A table of ratios to one frame, the heaviest part first. */
export function printKeystrokes(beats: readonly Beat[]): void {
  console.log("From a key to the redrawn pattern, in frames of 60 Hz: median, and all but one in twenty");
  for (const { name, medianMs, slowMs } of beats)
    console.log(
      `  ${name.padEnd(30)} ${(medianMs / FRAME_MS).toFixed(2)}  ${(slowMs / FRAME_MS).toFixed(2)}`,
    );
}
