import "fake-indexeddb/auto";
import { afterEach, describe, expect, it } from "vitest";
import { Acts, type Wanted } from "../../src/field/capture/acts";
import { Book } from "../../src/field/data/book";
import { goOf, stepOf } from "../../src/field/capture/step";
import { Ids } from "../../src/field/data/uuid";
import type { Session } from "../../src/field/capture/session";

let count = 0;
const open: Book[] = [];
async function desk(name = `book ${(count += 1)}`) {
  const book = await Book.open(Date.now, name);
  open.push(book);
  return { name, book, acts: new Acts(book) };
}
afterEach(() => open.splice(0).forEach((book) => book.close()));

const wanted: Wanted = { club: "c", green: "7", spot: "a", first: "out", observer: "ab", mode: "full" };
const now = (acts: Acts, session: Session) => stepOf(acts.seen(session));

describe("the journal", () => {
  it("is there again after the page is gone, to the same step", async () => {
    const { name, acts, book } = await desk();
    const session = await acts.start(wanted);
    const ball = await acts.release(session, "out", 1, undefined, undefined);
    await acts.mark(session, ball, "chatter", 1.234);
    book.close();
    const again = await desk(name);
    expect(again.book.phone).toBe(book.phone);
    expect(again.acts.session()).toEqual(session);
    const step = now(again.acts, session);
    expect(step).toMatchObject({ at: "rolling", ball: { thing: ball, marks: [{ kind: "chatter", seconds: 1.23 }] } });
  });
  it("writes touches in the order they came, each over the one before", async () => {
    const { acts, book } = await desk();
    const session = await acts.start(wanted);
    const ball = await acts.release(session, "out", 1, undefined, undefined);
    await Promise.all([1, 2, 3, 4, 5].map((at) => acts.mark(session, ball, "bobble", at)));
    expect(acts.seen(session).balls[0]?.marks).toHaveLength(5);
    const rows = book.rows.filter((row) => row.entry.thing === ball);
    rows.slice(1).forEach((row, at) => expect(row.entry.over).toEqual([rows[at]?.entry.id]));
    expect(book.thing(ball)?.conflicts).toEqual([]);
  });
  it("takes two touches of a wet thumb for one ball", async () => {
    const { acts } = await desk();
    const session = await acts.start(wanted);
    await Promise.all([1, 2].map(() => acts.release(session, "out", 1, undefined, undefined)));
    expect(acts.seen(session).balls).toHaveLength(1);
  });
  it("keeps what two open pages write, and shows where they part", async () => {
    const one = await desk();
    const session = await one.acts.start(wanted);
    const ball = await one.acts.release(session, "out", 1, undefined, undefined);
    const two = await desk(one.name);
    await one.acts.score(session, ball, 8);
    await two.acts.score(session, ball, 6);
    const three = await desk(one.name);
    expect(three.book.thing(ball)?.conflicts[0]?.versions.map((version) => version.value).sort()).toEqual([6, 8]);
  });
});

describe("a clock that was set back while the page was closed", () => {
  it("leaves the order of what was written, and undo takes back no more than the last touch", async () => {
    let time = Date.UTC(2026, 4, 3, 9);
    const open = async () => {
      const book = await Book.open(() => time, "set back");
      return { book, acts: new Acts(book, () => time) };
    };
    const before = await open();
    const session = await before.acts.start(wanted);
    const ball = await before.acts.release(session, "out", 1, undefined, undefined);
    before.book.close();
    time -= 3_600_000;
    const { book, acts } = await open();
    await acts.mark(session, ball, "snake", 1);
    const ids = book.rows.map((row) => row.entry.id);
    expect([...ids].sort()).toEqual(ids);
    await acts.undo(session);
    expect(acts.seen(session).balls).toMatchObject([{ thing: ball, marks: [] }]);
    book.close();
  });
});

describe("undo", () => {
  it("goes by what was known, where another phone's clock is ahead", async () => {
    const { acts, book } = await desk();
    const session = await acts.start(wanted);
    const ball = await acts.release(session, "out", 1, undefined, undefined);
    const ahead = new Ids().next(Date.now() + 3_600_000);
    const over = book.thing(ball)?.heads ?? [];
    await book.receive("c", [{ id: ahead, phone: "other", at: "2026-05-03T07:10:31.250Z", by: "cd", kind: "roll", thing: ball, set: { score: 5 }, over }], 1);
    await acts.score(session, ball, 8);
    await acts.undo(session);
    expect(acts.seen(session).balls[0]?.score).toBe(5);
  });

  it("goes back over every step, to nothing, and nothing is removed from the journal", async () => {
    const { acts, book } = await desk();
    const session = await acts.start(wanted);
    const ball = await acts.release(session, "out", 1, undefined, undefined);
    await acts.mark(session, ball, "snake", 1);
    await acts.stop(session, ball);
    await acts.score(session, ball, 8);
    await acts.score(session, ball, 7);
    await acts.distance(session, ball, 3.05);
    const one = () => acts.seen(session).balls[0];
    expect([await acts.undo(session), one()?.distance]).toEqual(["distance", undefined]);
    expect([await acts.undo(session), one()?.score]).toEqual(["score", 8]);
    expect([await acts.undo(session), one()?.score]).toEqual(["score", undefined]);
    expect([await acts.undo(session), now(acts, session).at]).toEqual(["stop", "rolling"]);
    expect([await acts.undo(session), one()?.marks]).toEqual(["snake", []]);
    expect([await acts.undo(session), acts.seen(session).balls]).toEqual(["release", []]);
    expect(await acts.undo(session)).toBe("start");
    expect(acts.session()).toBeUndefined();
    expect(book.things("visit")).toEqual([]);
    expect(await acts.undo(session)).toBeUndefined();
    expect(book.rows).toHaveLength(14);
  });
  it("takes back what one touch wrote together, and then the touch before", async () => {
    const { acts } = await desk();
    const session = await acts.start(wanted);
    const first = await acts.release(session, "out", 1, undefined, undefined);
    await acts.stop(session, first);
    const last = acts.seen(session).balls[0];
    await acts.release(session, "out", 2, last, 9);
    expect(acts.seen(session).balls.map((ball) => ball.score)).toEqual([9, undefined]);
    await acts.undo(session);
    expect(acts.seen(session).balls.map((ball) => ball.score)).toEqual([undefined]);
    await acts.score(session, first, 6);
    expect(acts.seen(session).balls[0]?.score).toBe(6);
    await acts.undo(session);
    await acts.undo(session);
    expect(now(acts, session)).toMatchObject({ at: "rolling", ball: { thing: first } });
  });
});

async function roll(acts: Acts, session: Session, score?: number) {
  const step = now(acts, session);
  if (step.at !== "ready") throw new Error(step.at);
  const ball = await acts.release(session, step.direction, step.order, step.last, undefined);
  await acts.stop(session, ball);
  if (score) await acts.score(session, ball, score);
  return ball;
}

describe("the next step", () => {
  it("is three balls one way, three back, then the spot is done", async () => {
    const { acts } = await desk();
    const session = await acts.start({ ...wanted, first: "back" });
    const went: string[] = [];
    for (let ball = 0; ball < 6; ball += 1) {
      const step = now(acts, session);
      if (step.at === "ready") went.push(`${step.direction} ${step.order}`);
      await roll(acts, session, 9);
    }
    expect(went).toEqual(["back 1", "back 2", "back 3", "out 1", "out 2", "out 3"]);
    expect(now(acts, session).at).toBe("spot_done");
    expect(goOf(acts.seen(session), now(acts, session), false)).toBe("summary");
    await acts.move(session, { extra: "back" });
    const more = acts.session() as Session;
    expect(now(acts, more)).toMatchObject({ at: "ready", direction: "back", order: 4 });
    await roll(acts, more, 8);
    expect(acts.session()?.extra).toBeUndefined();
    expect(now(acts, acts.session() as Session).at).toBe("spot_done");
  });
  it("asks for the distances when the run is done, where a helper calls them", async () => {
    const { acts } = await desk();
    const session = await acts.start({ ...wanted, mode: "after" });
    const balls = [await roll(acts, session, 9), await roll(acts, session, 8), await roll(acts, session)];
    expect(goOf(acts.seen(session), now(acts, session), false)).toBe("distances");
    await acts.agree(session, acts.seen(session).balls[2], 9);
    for (const ball of balls) {
      expect(now(acts, session)).toMatchObject({ at: "distances", ball: { thing: ball } });
      await acts.distance(session, ball, ball === balls[1] ? null : 3);
    }
    expect(now(acts, session)).toMatchObject({ at: "ready", direction: "back", order: 1 });
  });
  it("is one total a run, or one distance a ball, where only these are wanted", async () => {
    const { acts } = await desk();
    const totals = await acts.start({ ...wanted, mode: "totals" });
    expect(now(acts, totals)).toEqual({ at: "total", direction: "out" });
    await acts.total(totals, "out", 25, 3);
    expect(now(acts, totals)).toEqual({ at: "total", direction: "back" });
    await acts.total(totals, "back", 24, 3);
    expect(now(acts, totals).at).toBe("spot_done");
    const speed = await acts.start({ ...wanted, mode: "speed" });
    for (let ball = 0; ball < 6; ball += 1) {
      const step = now(acts, speed);
      if (step.at !== "distance") throw new Error(step.at);
      await acts.measured(speed, step.direction, step.order, 3);
    }
    expect(now(acts, speed).at).toBe("spot_done");
  });
  it("gives the second observer each ball in turn, and takes no offer for either", async () => {
    const { acts, book } = await desk();
    const session = await acts.start({ ...wanted, mode: "scores", partner: "cd" });
    const visits = book.things("visit").map(({ values }) => values);
    expect(new Set(visits.map((one) => one.observer))).toEqual(new Set(["ab", "cd"]));
    expect(new Set(visits.map((one) => one.shared_rolls)).size).toBe(1);
    const ball = await roll(acts, session);
    expect(goOf(acts.seen(session), now(acts, session), false)).toBe("score_first");
    await acts.score(session, ball, 8);
    const step = now(acts, session);
    if (step.at !== "partner") throw new Error(step.at);
    await acts.partnerScore(session, acts.seen(session), step.ball, 7);
    expect(acts.seen(session).partnerBalls).toMatchObject([{ spot: "a", direction: "out", order: 1, score: 7, visit: session.partner?.visit }]);
    expect(now(acts, session)).toMatchObject({ at: "ready", order: 2 });
    await acts.finish(session);
    expect(book.things("visit")).toHaveLength(2);
    expect(book.things("visit").every(({ values }) => values.done === true)).toBe(true);
  });
});
