import { expect, it } from "vitest";
import { asideKey, keeper } from "../../../src/site/bench/keep.ts";
import { machineLabel } from "../../../src/site/bench/machines/labels.ts";
import { asides, dropAsides, setAside } from "../../../src/site/bench/setAside/aside.ts";
import { asideFile } from "../../../src/site/bench/setAside/draftAside.ts";
import { keepText } from "../../../src/site/trials/shared.ts";
import { fieldLabel } from "../../../src/site/words/fieldLabels.ts";
import { withStorage } from "./storage.ts";

it.each(["constructor", "__proto__", "toString"])("calls a key %s by itself, as it has no name", (key) => {
  expect(fieldLabel([key])).toBe(key);
  expect(fieldLabel(["largeEnd", key])).toBe(key);
  expect(machineLabel([key])).toBe(key);
  expect(fieldLabel(["largeEnd", "diameter"])).toBe("Diameter");
  expect(machineLabel(["machines", 0, "bearings"])).toBe("To the bearing at the drop end");
});

it("moves what cannot be used beside its name, every text once, and forgets it when it is thrown away", () => {
  const { local, session } = withStorage();
  expect(setAside("a")).toBe(true);
  expect(asides("a")).toEqual([]);
  for (const text of ["one", "two", "one"]) {
    local.setItem("a", text);
    expect(setAside("a")).toBe(true);
    expect(local.getItem("a")).toBeNull();
  }
  session.setItem("a", "three");
  expect(setAside("a", () => session as unknown as Storage)).toBe(true);
  expect(session.getItem("a")).toBeNull();
  expect(asides("a")).toEqual(["one", "two", "three"]);
  local.setItem(asideKey("b"), "{");
  expect(asides("b")).toEqual([]);
  dropAsides("a");
  expect(asides("a")).toEqual([]);
});

it("leaves it where it lies, where there is no room to move it", () => {
  const { local } = withStorage();
  local.setItem("a", "x".repeat(50));
  local.room = 60;
  expect(setAside("a")).toBe(false);
  expect(local.getItem("a")).toBe("x".repeat(50));
  // It is offered, and nothing is written over it, though there were room, until it is thrown away.
  expect(asides("a")).toEqual(["x".repeat(50)]);
  const kept = keeper("a", (value) => value);
  local.room = Infinity;
  expect(kept.write("new")).toBe(false);
  expect(() => keepText("a", "new")).toThrow();
  expect(local.getItem("a")).toBe("x".repeat(50));
  dropAsides("a");
  expect(asides("a")).toEqual([]);
  expect(kept.write("new")).toBe(true);
  expect(kept.read()).toBe("new");
});

it("offers a draft as the file of the part typed last, and anything else as it is", () => {
  const states = [
    { name: "cone", part: { shape: "right-cone", height: "700" } },
    { name: "cone", part: { shape: "right-cone", material: "constructor" } },
  ];
  const { name, text } = asideFile(JSON.stringify(states), "cone");
  expect(name).toBe("cone-set-aside.yaml");
  expect(text).toContain("material: constructor");
  for (const broken of ["{", '[{"name":1}]'])
    expect(asideFile(broken, "cone")).toEqual({ name: "cone-set-aside.txt", text: broken });
});
