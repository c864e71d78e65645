import { describe, expect, it } from "vitest";
import type { Entry } from "../../src/field/data/entries";
import { foldThing } from "../../src/field/data/fold";
import { Ids } from "../../src/field/data/uuid";

const entry = (id: string, set: Entry["set"], over: string[] = []): Entry =>
  ({ id, phone: "p", at: "2026-05-03T07:10:31.250Z", by: "ab", kind: "roll", thing: "t", set, over });

describe("the fold of one thing", () => {
  it("takes the newest of a line of entries, field by field", () => {
    const all = [entry("1", { score: 7, order: 1 }), entry("2", { score: 8 }, ["1"]), entry("3", { distance: 3 }, ["2"])];
    const { values, conflicts, heads } = foldThing(all);
    expect(values).toEqual({ score: 8, order: 1, distance: 3 });
    expect(conflicts).toEqual([]);
    expect(heads).toEqual(["3"]);
  });
  it("shows both versions where two wrote apart, and uses the greater id", () => {
    const all = [entry("1", { score: 7 }), entry("2", { score: 8 }, ["1"]), entry("3", { score: 6, note: "x" }, ["1"])];
    const { values, conflicts, heads } = foldThing(all);
    expect(values.score).toBe(6);
    expect(conflicts.map(({ field, versions }) => [field, versions.map((one) => one.value)])).toEqual([["score", [8, 6]]]);
    expect(heads).toEqual(["2", "3"]);
    const solved = foldThing([...all, entry("4", { score: 8 }, heads)]);
    expect(solved.conflicts).toEqual([]);
    expect(solved.values.score).toBe(8);
  });
  it("has no conflict where two wrote the same, or different fields", () => {
    const all = [entry("1", {}), entry("2", { score: 8, marks: [] }, ["1"]), entry("3", { score: 8, marks: [], distance: 3 }, ["1"])];
    expect(foldThing(all).conflicts).toEqual([]);
  });
  it("superseding reaches through entries that do not set the field", () => {
    const all = [entry("1", { score: 5 }), entry("2", { distance: 3 }, ["1"]), entry("3", { score: 6 }, ["2"])];
    expect(foldThing(all).conflicts).toEqual([]);
    expect(foldThing(all).values.score).toBe(6);
  });
  it("depends neither on order nor on doubles", () => {
    let seed = 7;
    const chance = (below: number) => (seed = (seed * 48271) % 2147483647) % below;
    for (let round = 0; round < 60; round += 1) {
      const all: Entry[] = [];
      for (let at = 0; at < 7; at += 1) {
        const over = all.filter(() => chance(3) === 0).map((one) => one.id);
        all.push(entry(`e${at}`, { [`f${chance(2)}`]: chance(3) }, over));
      }
      const mixed = [...all, ...all.slice(2, 5)].sort(() => chance(3) - 1);
      expect(foldThing(mixed).values).toEqual(foldThing(all).values);
      expect(foldThing(mixed).conflicts.length).toBe(foldThing(all).conflicts.length);
      expect(foldThing(mixed).heads).toEqual(foldThing(all).heads);
    }
  });
});

// RFC 9562, 5.7: 48 bits of milliseconds, version 7, variant 10.
describe("ids made on the phone", () => {
  it("are of version 7 and carry their time", () => {
    const made = new Ids().next(Date.UTC(2090, 0, 1));
    expect(made).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
    expect(parseInt(made.replace(/-/g, "").slice(0, 12), 16)).toBe(Date.UTC(2090, 0, 1));
  });
  it("rise within a millisecond, and when the clock goes back", () => {
    const time = Date.UTC(2091, 0, 1);
    const ids = new Ids();
    const made = [...Array.from({ length: 5000 }, () => ids.next(time)), ids.next(time - 60_000), ids.next(time - 120_000)];
    expect([...made].sort()).toEqual(made);
    expect(new Set(made).size).toBe(made.length);
    const opened = new Ids();
    for (const id of made) opened.after(id);
    expect(opened.next(time - 180_000) > (made.at(-1) as string)).toBe(true);
  });
});
