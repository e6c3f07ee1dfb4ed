import { effortOf, effortProblem } from "../job/effort.ts";
import { bindJob } from "./bindJob.ts";
import { fail, startFolder } from "./surroundings.ts";

const COMMAND = "binder";
/** How long plates are searched for. */
const effort = process.env["SLANTWORK_EFFORT"];

process.stderr.on("error", () => {
  process.exitCode = 1;
});
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  fail(`what came of it could not be printed: the system says ${error.code ?? error.message}`, COMMAND);
});

const folder = startFolder();
if (folder.kind === "unreadable") fail(`${folder.problem}; ${folder.remedy}`, COMMAND);
else if (effortOf(effort) === undefined) fail(effortProblem(effort), COMMAND);
else {
  const { stdout, stderr, exitCode } = bindJob(process.argv.slice(2), {
    folder: folder.value,
    dataFolder: process.env["SLANTWORK_DATA"],
  });
  process.exitCode = exitCode;
  process.stderr.write(stderr);
  process.stdout.write(stdout);
}
