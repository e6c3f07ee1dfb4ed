import { siteHref, setRoot } from "../bits/siteHref.ts";
import { firstHand } from "./firstHand.ts";
import { rememberTouch } from "./firstTouch.ts";
import { draftKey, isKept } from "./keep.ts";
import type { NamedTyped } from "./asTyped.ts";

/** Finds the places for a bench on a page, and starts each at once or when it is asked for: most of the script is loaded then. */
async function open(place: HTMLElement, wanted: Promise<void>): Promise<void> {
  const { startBench } = await import("./start.ts");
  await startBench(place, wanted);
}

function isChanged(place: HTMLElement): boolean {
  setRoot(place.dataset["root"] ?? "");
  const { name } = JSON.parse(place.dataset["part"] ?? "") as NamedTyped;
  return isKept(draftKey(siteHref("/"), name));
}

/** A page that cannot load what it needs stays as it was published, and says so. */
function sorry(after: Element, error: unknown): void {
  const words = document.createElement("p");
  words.className = "problem screen-only";
  words.setAttribute("role", "alert");
  words.textContent = `This page could not be made live (${String(error)}). What stands here is as it was published; reload the page with the network on to change sizes.`;
  if (after.nextElementSibling?.matches(".problem")) after.nextElementSibling.remove();
  after.after(words);
}

for (const place of document.querySelectorAll<HTMLElement>("[data-bench]")) {
  rememberTouch(place);
  const ask = place.previousElementSibling;
  const button = ask?.querySelector("button");
  if (place.dataset["bench"] !== "on demand" || !(ask instanceof HTMLElement) || !button)
    open(place, firstHand()).catch((error: unknown) => sorry(ask ?? place, error));
  else {
    if (isChanged(place)) button.textContent = "Go on with your changes to this part";
    ask.hidden = false;
    button.addEventListener("click", () => {
      button.disabled = true;
      open(place, Promise.resolve()).then(
        () => ask.remove(),
        (error: unknown) => {
          button.disabled = false;
          sorry(ask, error);
        },
      );
    });
  }
}
