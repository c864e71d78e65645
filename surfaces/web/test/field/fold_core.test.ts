// The page's own fold and the core's, which the server uses, say the same of any entries.
import { readFileSync } from "node:fs";
import { beforeAll, expect, test } from "vitest";
import { coreModule } from "../../scripts/core_module";
import { coreFrom, type Core } from "../../src/field/core";
import type { Entry } from "../../src/field/data/entries";
import { foldThing } from "../../src/field/data/fold";
import { Ids } from "../../src/field/data/uuid";

const ids = new Ids();
const uuid = () => ids.next(Date.now());
let core: Core;
beforeAll(async () => {
  core = await coreFrom(readFileSync(coreModule()));
});

let seed = 20260503;
const chance = (below: number) => (seed = (seed * 48271) % 2147483647) % below;
const values: Record<string, () => unknown> = {
  score: () => [null, 7, 8, 9][chance(4)],
  distance: () => [3, 3.05, null][chance(3)],
  marks: () => [[], [{ kind: "snake", seconds: 1.5 }], null][chance(3)],
};

function someEntries(thing: string): Entry[] {
  const made: Entry[] = [];
  const size = 1 + chance(9);
  for (let at = 0; at < size; at += 1) {
    const over = made.filter(() => chance(3) === 0).map((one) => one.id);
    // Now and then over an entry that never arrived.
    if (chance(8) === 0) over.push(uuid());
    const names = Object.keys(values).filter(() => chance(2) === 0);
    const set = Object.fromEntries((names.length > 0 ? names : ["score"]).map((name) => [name, values[name]?.()]));
    made.push({ id: uuid(), phone: uuid(), at: "2026-05-03T07:10:31.250Z", by: "ab", kind: "roll", thing, set, over });
  }
  return made;
}

test("300 things, written apart and over each other", { timeout: 60_000 }, () => {
  let conflicts = 0;
  for (let round = 0; round < 300; round += 1) {
    const thing = uuid();
    const entries = someEntries(thing);
    const { ok, problem } = core.fold({ entries });
    expect(problem).toBeUndefined();
    const own = foldThing(entries);
    const found = ok?.things.find((one) => one.thing === thing);
    expect(found?.values ?? {}).toEqual(own.values);
    const theirs = (ok?.conflicts ?? []).map(({ field, values: versions }) => [field, versions.map((one) => one.entry).sort()]);
    const mine = own.conflicts.map(({ field, versions }) => [field, versions.map((one) => one.entry).sort()]);
    expect(theirs.sort()).toEqual(mine.sort());
    conflicts += mine.length;
  }
  expect(conflicts).toBeGreaterThan(50);
});
