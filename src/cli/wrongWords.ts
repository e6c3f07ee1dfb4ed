/**
 * What is told where the command line makes no sense: the one sentence that matters, and where the rest stands. How the
 * command is used is printed at once only to whoever gave it nothing at all: a screenful would push the sentence out of sight.
 */
export const wrongWords = (
  sentence: string,
  args: readonly string[],
  { command, usage }: { readonly command: string; readonly usage: string },
): string =>
  args.length === 0
    ? `${sentence}\n\n${usage}`
    : `${sentence}\nnpm run --silent ${command} -- --help tells how it is used\n`;
