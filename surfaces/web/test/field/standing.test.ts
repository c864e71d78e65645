import "fake-indexeddb/auto";
import { describe, expect, it } from "vitest";
import { Acts, type Wanted } from "../../src/field/capture/acts";
import { sessionOf } from "../../src/field/capture/reopen";
import { sameDayConditions } from "../../src/field/capture/same_day";
import { startDistance } from "../../src/field/capture/start_distance";
import type { Session } from "../../src/field/capture/session";
import { Book } from "../../src/field/data/book";
import type { Club } from "../../src/field/data/club";
import { apart, nearestGreen } from "../../src/field/phone";
import { pairOf } from "../../src/field/sync/pair";
import { visitLines } from "../../src/field/sync/visit_state";

let count = 0;
let clock = Date.UTC(2026, 4, 3, 7);
async function desk() {
  const book = await Book.open(() => (clock += 1000), `standing ${(count += 1)}`);
  return { book, acts: new Acts(book, () => clock) };
}
const wanted: Wanted = { club: "c", green: "7", spot: "a", first: "out", observer: "ab", mode: "full" };
async function roll(acts: Acts, session: Session, order: number, score: number, distance?: number) {
  const ball = await acts.release(session, "out", order, undefined, undefined);
  await acts.stop(session, ball);
  await acts.score(session, ball, score);
  if (distance !== undefined) await acts.distance(session, ball, distance);
  return ball;
}

describe("where a visit stands", () => {
  it("is open, kept, on its way, accepted, and refused with the reason until it is mended", async () => {
    const { book, acts } = await desk();
    const session = await acts.start(wanted);
    const line = (sent: string[] = []) => visitLines(book, new Set(sent))[0];
    expect(line()?.state).toBe("open");
    await roll(acts, session, 1, 8);
    await acts.finish(session);
    expect(line()).toMatchObject({ state: "kept", waiting: 5 });
    const ids = book.rows.map((row) => row.entry.id);
    expect(line([ids[0] as string])?.state).toBe("sent");
    const kept = ids.map((id) => ({ id, kept: true }));
    await book.acknowledge(kept, [{ visit: session.visit, state: "refused", problems: ["to: '06:10': later"], conflicts: 0 }]);
    expect(line()).toMatchObject({ state: "refused", reasons: ["to: '06:10': later"] });
    await acts.reopen(sessionOf(book, session.visit));
    await acts.visit(session, "when", { to: "07:30" });
    expect(line()?.state).toBe("kept");
    await book.acknowledge([{ id: book.rows.at(-1)?.entry.id as string, kept: true }], [{ visit: session.visit, state: "accepted", problems: [], conflicts: 0 }]);
    expect(line()?.state).toBe("accepted");
  });
  it("keeps its end when it is opened again and mended", async () => {
    const { book, acts } = await desk();
    const session = await acts.start(wanted);
    await roll(acts, session, 1, 8);
    await acts.finish(session);
    const end = book.thing(session.visit)?.values.to;
    clock += 3_600_000;
    await acts.reopen(sessionOf(book, session.visit));
    expect(acts.session()?.mode).toBe("scores");
    await acts.finish(session);
    expect(book.thing(session.visit)?.values.to).toBe(end);
    expect(acts.session()).toBeUndefined();
  });
});

describe("two visits begun within one minute", () => {
  it("have a time only where it is known: nobody is at two greens at once", async () => {
    const { book, acts } = await desk();
    const began = async (observer: string) => {
      const session = await acts.start({ ...wanted, observer, mode: "totals" });
      await acts.total(session, "out", 24, 3);
      await acts.finish(session);
      const { from, to } = book.thing(session.visit)?.values ?? {};
      return [from, to].map((time) => time !== undefined);
    };
    clock -= clock % 60_000;
    expect(await began("ab")).toEqual([true, true]);
    expect(await began("ab")).toEqual([false, false]);
    expect(await began("cd")).toEqual([true, true]);
    clock += 60_000;
    expect(await began("ab")).toEqual([true, true]);
  });
});

describe("a visit without a ball", () => {
  it("is none when it is finished", async () => {
    const { book, acts } = await desk();
    const session = await acts.start(wanted);
    await acts.finish(session);
    expect(book.things("visit")).toEqual([]);
    expect(visitLines(book, new Set())).toEqual([]);
  });
});

describe("what is offered from before", () => {
  it("a distance: the ball before, the other way, the green's last speed, ten feet", async () => {
    const { acts } = await desk();
    const session = await acts.start(wanted);
    const club = { greens: [{ id: "7", name: "7", halves: [], spots: [], last: { day: "2026-05-02", speed_m: 3.2 } }] } as unknown as Club;
    const start = (direction: "out" | "back", order: number, of?: Club) => startDistance(acts.seen(session), of, direction, order);
    expect(start("out", 1)).toBe(3.048);
    expect(start("out", 1, club)).toBe(3.2);
    await roll(acts, session, 1, 8, 3);
    await roll(acts, session, 2, 8, 3.1);
    expect(start("out", 3, club)).toBe(3.1);
    expect(start("out", 2, club)).toBe(3);
    expect(start("back", 1, club)).toBe(3.1);
  });
  it("the conditions of the green before, on the same day and of the same observer", async () => {
    const { acts, book } = await desk();
    const first = await acts.start(wanted);
    await acts.visit(first, "conditions", { dew: "light", wind: "calm", hours_since_mowing: 2 });
    await roll(acts, first, 1, 8);
    await acts.finish(first);
    clock += 600_000;
    const second = await acts.start({ ...wanted, green: "8" });
    expect(sameDayConditions(book, second)).toEqual({ green: "7", set: { dew: "light", wind: "calm", hours_since_mowing: 2 } });
    const other = await acts.start({ ...wanted, green: "9", observer: "cd" });
    expect(sameDayConditions(book, other)).toBeUndefined();
  });
});

describe("two observers apart", () => {
  it("learn of each other's scores when both are finished, not before", async () => {
    const one = await desk();
    const two = await desk();
    const both = await Promise.all([one, two].map(({ acts }, at) => acts.start({ ...wanted, mode: "scores", code: "KAHT", observer: at === 0 ? "ab" : "cd" })));
    expect(one.book.thing(both[0]?.visit as string)?.values.shared_rolls).toBe(two.book.thing(both[1]?.visit as string)?.values.shared_rolls);
    await roll(one.acts, both[0] as Session, 1, 8);
    await roll(two.acts, both[1] as Session, 1, 7);
    await one.acts.finish(both[0] as Session);
    const tell = () => one.book.receive("c", two.book.rows.map((row) => row.entry), 9);
    await tell();
    expect(pairOf(one.book, both[0]?.visit as string)).toBeUndefined();
    await two.acts.finish(both[1] as Session);
    await tell();
    expect(pairOf(one.book, both[0]?.visit as string)).toEqual({ other: "cd", apart: 1 });
  });
});

describe("the nearest green", () => {
  // One minute of latitude is one nautical mile, 1852 m (to 0.1 % on a round earth).
  it("is the one whose learnt place lies within 120 m", () => {
    expect(apart({ latitude: 52, longitude: 5 }, { latitude: 52 + 1 / 60, longitude: 5 })).toBeCloseTo(1853.25, 1);
    const places = { "1": { latitude: 52.0, longitude: 5.0 }, "2": { latitude: 52.0005, longitude: 5.0 } };
    expect(nearestGreen({ latitude: 52.0004, longitude: 5.0 }, places)).toBe("2");
    expect(nearestGreen({ latitude: 52.01, longitude: 5.0 }, places)).toBeUndefined();
  });
});
