/** Keeps the binder in this browser, and says which version this page is and when there is a newer one. */
async function start(foot: HTMLElement): Promise<void> {
  const said = foot.querySelector("[role=status]");
  const take = foot.querySelector("button");
  const home = document.querySelector<HTMLAnchorElement>(".menu .home");
  if (!said || !take || !home || !("serviceWorker" in navigator)) return;
  const root = new URL(".", home.href);
  let asked = false;
  navigator.serviceWorker.addEventListener("controllerchange", () => {
    if (asked) location.reload();
  });
  const registration = await navigator.serviceWorker.register(new URL("sw.js", root), {
    scope: root.pathname,
  });
  const watch = (worker: ServiceWorker | null): void => {
    const look = (): void => {
      if (worker?.state === "installed" && registration.active) {
        said.textContent = "A new version of this binder is ready.";
        take.hidden = false;
        take.onclick = () => {
          asked = true;
          worker.postMessage("take the new version");
        };
      } else if (worker?.state === "activated") said.textContent = "Works with the network off.";
    };
    worker?.addEventListener("statechange", look);
    look();
  };
  watch(registration.active);
  watch(registration.installing);
  watch(registration.waiting);
  registration.addEventListener("updatefound", () => watch(registration.installing));
}

const foot = document.querySelector<HTMLElement>("[data-version]");
// Forbidden, or opened from a disk: the page works as it is, and only the network's absence would be noticed.
if (foot) start(foot).catch(() => undefined);
