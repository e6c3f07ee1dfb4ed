import { develop } from "../report/develop.ts";
import { run } from "./run.ts";

// npm runs its scripts in the folder of package.json; paths mean what they mean where the user stands.
const { npm_lifecycle_event: script, INIT_CWD: start } = process.env;
const folder = script === "develop" && start !== undefined ? start : process.cwd();

const { stdout, stderr, exitCode } = run(process.argv.slice(2), { folder, develop });

// A reader that has seen enough, such as head, closes the pipe: no fault of ours.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code !== "EPIPE") throw error;
});
process.stderr.write(stderr);
process.stdout.write(stdout);
process.exitCode = exitCode;
