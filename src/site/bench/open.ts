import { siteHref, setRoot } from "../bits/siteHref.ts";
import { draftKey } from "./keep.ts";
import type { NamedTyped } from "./link.ts";

/** Finds the places for a bench on a page, and starts each at once or when it is asked for: most of the script is loaded then. */
async function open(place: HTMLElement): Promise<void> {
  const { startBench } = await import("./start.ts");
  await startBench(place);
}

function isKept(place: HTMLElement): boolean {
  setRoot(place.dataset["root"] ?? "");
  const { name } = JSON.parse(place.dataset["part"] ?? "") as NamedTyped;
  try {
    return localStorage.getItem(draftKey(siteHref("/"), name)) !== null;
  } catch {
    return false;
  }
}

for (const place of document.querySelectorAll<HTMLElement>("[data-bench]")) {
  const ask = place.previousElementSibling;
  const button = ask?.querySelector("button");
  if (place.dataset["bench"] !== "on demand" || !(ask instanceof HTMLElement) || !button) void open(place);
  else {
    if (isKept(place)) button.textContent = "Go on with your changes to this part";
    ask.hidden = false;
    button.addEventListener("click", () => {
      button.disabled = true;
      void open(place).then(() => ask.remove());
    });
  }
}
