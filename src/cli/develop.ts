import { develop } from "../report/develop.ts";
import { run } from "./run.ts";
import { cannotPrint, fail, startFolder } from "./surroundings.ts";

// What prints is a pipe, a file or a terminal, and each can be full or gone. Nothing is left to be told but that.
process.stderr.on("error", () => {
  process.exitCode = 1;
});
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  fail(cannotPrint(error));
});

const folder = startFolder();
if (folder.kind === "unreadable") fail(`${folder.problem}; ${folder.remedy}`);
else {
  const { stdout, stderr, exitCode } = run(process.argv.slice(2), {
    folder: folder.value,
    develop,
    screen: process.stdout.isTTY,
  });
  process.exitCode = exitCode;
  process.stderr.write(stderr);
  process.stdout.write(stdout);
}
