import { expect, it } from "vitest";
import { readFolder } from "../../../src/input/readFolder.ts";
import { loadCatalogue } from "../../../src/input/loadCatalogue.ts";
import { keptOf } from "../../../src/input/readTrials.ts";
import { type TypedGroup, typedWith } from "../../../src/input/typed.ts";
import { develop } from "../../../src/report/develop.ts";
import { formedOf } from "../../../src/report/formed.ts";
import { layOut } from "../../../src/report/layOut.ts";
import { trayPart } from "../../../src/site/bench/files/trayPart.ts";
import { openJob } from "../../../src/site/bench/files/openJob.ts";
import { zipJob } from "../../../src/site/bench/files/zipJob.ts";
import { asDraft, type NamedTyped, withSoundTrials } from "../../../src/site/bench/asTyped.ts";
import { asCarried, ownTrials } from "../../../src/site/bench/ownTrials.ts";
import { readTypedPart } from "../../../src/site/bench/readTyped.ts";
import { readTypedShop } from "../../../src/site/bench/readTypedShop.ts";
import { trialsHere } from "../../../src/site/bench/trialsHere.ts";
import { asTray, EMPTY, withParts } from "../../../src/site/bench/tray/tray.ts";
import { trialsKey } from "../../../src/site/trials/keptTrials.ts";
import { withStorage } from "./storage.ts";

const tables = loadCatalogue();
const demo = readFolder("demo-data", tables);
const { written, trials: file } = demo.parts.find(({ part }) => part.name === "overflow-shift")!;
const published: NamedTyped = { name: "overflow-shift", part: written, trials: keptOf(file!) };
const shop = demo.shopWritten!;

/** What the bench makes of a part as it is typed, by a shop as it is typed. */
function here(part: TypedGroup, shopTyped: TypedGroup = shop) {
  const reading = readTypedPart(part, tables);
  if (reading.kind === "problems") throw new Error(JSON.stringify(reading.problems));
  const named = { ...reading.value, name: "overflow-shift" };
  const made = layOut(named, tables);
  if (made.kind === "refused") throw new Error(JSON.stringify(made.issues));
  const shopRead = readTypedShop(shopTyped, tables);
  const now = { part: named, made, shop: shopRead.kind === "read" ? shopRead.value : undefined };
  return { now, answer: trialsHere(published.trials!, { part: published, shop }, now, tables) };
}
const changed = (path: readonly (string | number)[], value: string) =>
  typedWith(written, path, value) as TypedGroup;

it("starts a sheet at the bench from the part's trials, as long as they hold", () => {
  for (const part of [written, changed(["title"], "Another title"), changed(["quantity"], "3")]) {
    const { now, answer } = here(part);
    expect(answer).toMatchObject({ told: "", trials: { machine: "Big roll" } });
    const { plans } = formedOf(now.part, now.made, { shop: now.shop, trials: answer.trials });
    const raise = plans[0]!.steps.find(({ id }) => id === "first-raise")!;
    expect(raise.text).toMatch(
      /^By this part's own trials.* Zone 1: .*: set .*Zone 2: .*: set .*Zone 3: .*set like zone 1/,
    );
  }
});

it.each([
  [["thickness"], "5", /the plate is another/],
  [["material"], "s355", /the plate is another/],
  [["height"], "750", /sizes, seam, pieces or the place of the stop are others/],
  [["pieces"], "2", /sizes, seam, pieces or the place of the stop are others/],
])("says that trials no longer hold once %j is %s", (path, value, why) => {
  const { answer } = here(changed(path, value));
  expect(answer.trials).toBeUndefined();
  expect(answer.told).toMatch(/^2 trials of this part on Big roll no longer hold, for /);
  expect(answer.told).toMatch(why);
});

it("says so too where the machine is another, or there is none of that name", () => {
  const moved = typedWith(shop, ["machines", 1, "rolls", "topDiameter"], "310") as TypedGroup;
  const named = typedWith(shop, ["machines", 1, "name"], "Old roll") as TypedGroup;
  const other = typedWith(shop, ["machines", 0, "rolls", "topDiameter"], "140") as TypedGroup;
  for (const typed of [moved, named])
    expect(here(written, typed).answer.told).toMatch(/the machine is not as it was/);
  expect(here(written, other).answer.told).toBe("");
});

it("takes what the form kept in the browser before the file, even that there are none any more", () => {
  const { local } = withStorage();
  const own = () => ownTrials("overflow-shift", shop, published.trials);
  expect(own()).toMatchObject({ seen: published.trials!.seen });
  const seen = [{ zone: 3, settingMm: 70, flat: true }];
  local.setItem(trialsKey("overflow-shift", "Big roll"), JSON.stringify(seen));
  expect(own()).toEqual({ machine: "Big roll", seen });
  local.setItem(trialsKey("overflow-shift", "Big roll"), "[]");
  expect(own()).toBeUndefined();
  Reflect.deleteProperty(globalThis, "localStorage");
  expect(own()).toMatchObject({ seen: published.trials!.seen });
});

it("carries trials in a job's zip, there and back, and on the tray", () => {
  const bytes = zipJob({ job: { title: "Job" }, shop, parts: [published] });
  const opened = openJob(bytes, tables);
  if (opened.kind === "unreadable") throw new Error(opened.problem);
  expect(opened.value.problems).toEqual([]);
  const [part] = opened.value.parts;
  const { machine, seen } = published.trials!;
  expect(part!.trials).toMatchObject({ machine, seen });
  // They bring what they hold for, so they are held against that wherever they come to.
  const { now } = here(changed(["thickness"], "5"));
  const other = { part: { name: "x", part: {} }, shop: undefined };
  expect(trialsHere(part!.trials!, other, now, tables).told).toMatch(/the plate is another/);
  expect(trialsHere(part!.trials!, other, here(written).now, tables).told).toBe("");
  const tray = withParts(EMPTY, [part!], "replace");
  expect(asTray(JSON.parse(JSON.stringify(tray)))).toEqual(tray);
  expect(asDraft(JSON.parse(JSON.stringify([part])))).toEqual([part]);
  // On a roll that the shop does not have they would stop the binder.
  const without = zipJob({ job: { title: "Job" }, shop: { ...shop, machines: [] }, parts: [published] });
  const again = openJob(without, tables);
  expect(again.kind === "read" && again.value.parts[0]?.trials).toBeFalsy();
});

it("drops what is no trial, and keeps the part", () => {
  for (const trials of [1, {}, { machine: "Big roll", seen: [{}] }, { machine: 1, seen: [] }]) {
    expect(asCarried(trials)).toBeUndefined();
    expect(withSoundTrials({ ...published, trials: trials as never })).toEqual({
      name: published.name,
      part: written,
    });
  }
});

it("works a part of the tray out from its trials, as the build does", () => {
  const { answer, now } = here(written);
  const fit = answer.fit!;
  const trials = { ...published.trials!, fit };
  const settings = (made: ReturnType<typeof trayPart>) =>
    made.kind === "part" &&
    made.part.report.forming.plans[0]!.steps.find(({ id }) => id === "first-raise")!.text;
  const tried = trayPart({ ...published, trials }, now.shop, tables);
  const built = demo.parts.find(({ part }) => part.name === "overflow-shift")!;
  const developed = develop(built.part, {
    catalogue: tables.catalogue,
    shop: now.shop!,
    trials: published.trials!,
  });
  expect(tried.kind === "part" && tried.part.report).toEqual(developed.kind === "report" && developed.report);
  expect(tried).toMatchObject({ told: "" });
  expect(settings(tried)).toMatch(/^By this part's own trials/);
  expect(settings(trayPart({ name: "overflow-shift", part: written }, now.shop, tables))).not.toMatch(
    /trials/,
  );
  const thicker = trayPart({ ...published, part: changed(["thickness"], "5"), trials }, now.shop, tables);
  expect(thicker).toMatchObject({ told: expect.stringMatching(/^2 trials .*no longer hold/) as unknown });
  expect(settings(thicker)).not.toMatch(/own trials/);
  expect(trayPart({ name: "bad", part: changed(["thickness"], "no") }, now.shop, tables)).toMatchObject({
    kind: "wrong",
    words: expect.stringMatching(/^bad: thickness: no is not a/) as unknown,
  });
});
