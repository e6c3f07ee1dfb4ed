import { onTestFinished } from "vitest";

/** What a browser keeps, as far as this project asks for it; with room for so many signs. */
class Storage {
  readonly kept = new Map<string, string>();
  room = Infinity;
  getItem(key: string): string | null {
    return this.kept.get(key) ?? null;
  }
  setItem(key: string, text: string): void {
    const others = [...this.kept].filter(([one]) => one !== key);
    const taken = others.reduce((sum, [one, value]) => sum + one.length + value.length, 0);
    if (taken + key.length + text.length > this.room) throw new RangeError("QuotaExceededError");
    this.kept.set(key, text);
  }
  removeItem(key: string): void {
    this.kept.delete(key);
  }
}

/** Gives the rest of a test a browser's storage, on a page at an address. */
export function withStorage(address = "http://shop.test/binder/parts/cone/") {
  const [local, session] = [new Storage(), new Storage()];
  const put = (name: string, value: unknown) =>
    Object.defineProperty(globalThis, name, { value, configurable: true, writable: true });
  put("localStorage", local);
  put("sessionStorage", session);
  put("location", new URL(address));
  onTestFinished(() => {
    for (const name of ["localStorage", "sessionStorage", "location"])
      Reflect.deleteProperty(globalThis, name);
  });
  return { local, session, goTo: (to: string) => put("location", new URL(to)) };
}
