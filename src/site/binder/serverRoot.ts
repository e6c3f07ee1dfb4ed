/**
 * Where the binder lies on its web server: SLANTWORK_ROOT, "/binder/"; the server's own root if left out. Only the page
 * for addresses that are none needs it: the server shows it at any depth, so it cannot count the folders to the first page.
 */
export const serverRoot = (given: string | undefined = process.env["SLANTWORK_ROOT"]): string =>
  `/${given ?? ""}/`.replaceAll(/\/{2,}/g, "/");
