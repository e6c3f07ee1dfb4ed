/** A renderer of components: how it does so on the server, and what it would send to the browser. */
interface Renderer {
  readonly name: string;
  readonly serverEntrypoint: string | URL;
  readonly clientEntrypoint?: string | URL | undefined;
}
interface Setup {
  readonly addRenderer: (renderer: Renderer) => void;
}
interface Integration<S extends Setup> {
  readonly name: string;
  readonly hooks: { readonly "astro:config:setup"?: (setup: S) => unknown };
}

/** Components are drawn while the pages are written, and no page runs a script: none is published for them either. */
export function withoutClient<S extends Setup>(integration: Integration<S>): Integration<S> {
  return {
    name: integration.name,
    hooks: {
      "astro:config:setup": (setup) =>
        integration.hooks["astro:config:setup"]?.({
          ...setup,
          addRenderer: ({ name, serverEntrypoint }) => setup.addRenderer({ name, serverEntrypoint }),
        }),
    },
  };
}
