import { siteHref } from "../../bits/siteHref.ts";
import { keyOf } from "../keep.ts";
import { keptTray } from "./keptTray.ts";
import { Tray } from "./tray.svelte.ts";

/** The tray of this binder, kept up with what other windows do to it. */
export function sharedTray(): Tray {
  const key = keyOf(siteHref("/"), "tray");
  const tray = new Tray(keptTray(key));
  addEventListener("storage", (event) => {
    // No key: everything was cleared.
    if (event.key === key || event.key === null) tray.refresh();
  });
  return tray;
}
