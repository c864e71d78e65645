import "fake-indexeddb/auto";
import { describe, expect, it } from "vitest";
import { Acts } from "../../src/field/capture/acts";
import { Book } from "../../src/field/data/book";
import { keepClub, type Club } from "../../src/field/data/club";
import type { Entry } from "../../src/field/data/entries";
import { Refused, type HandOver, type Receipt, type Server } from "../../src/field/sync/server";
import { Sync } from "../../src/field/sync/sync";
import { visitLines } from "../../src/field/sync/visit_state";

const club: Club = { club: { id: "c", name: "C" }, greens: [], observers: [] };

/** A server that may break before or after it has kept what it got. */
class TestServer implements Server {
  disk = new Map<string, Entry>();
  arrivals: string[] = [];
  failures: ("before" | "after" | "refuse" | "none")[] = [];
  refuse = new Set<string>();
  asked = 0;
  clubs = async () => [{ id: "c", name: "C" }];
  club = async () => ({ club, tag: "1" });
  async send(_: string, body: HandOver): Promise<Receipt> {
    this.asked += 1;
    const failure = this.failures.shift() ?? "none";
    if (failure === "before") throw new TypeError("Failed to fetch");
    if (failure === "refuse") throw new Refused("The club is not known.");
    const refused = body.entries.filter((entry) => this.refuse.has(entry.kind)).map(({ id }) => ({ id, problem: { code: "x", field: "f", value: "v", rule: "r", sentence: "Not so." } }));
    for (const entry of body.entries) {
      if (refused.some(({ id }) => id === entry.id)) continue;
      if (!this.disk.has(entry.id)) this.arrivals.push(entry.id);
      this.disk.set(entry.id, entry);
    }
    if (failure === "after") throw new TypeError("Failed to fetch");
    const visits = [...this.disk.values()].filter((entry) => entry.kind === "visit").map((entry) => ({ visit: entry.thing, state: "accepted" as const, problems: [], conflicts: 0 }));
    return { kept: body.entries.filter(({ id }) => this.disk.has(id)).map(({ id }) => id), refused, visits, server_time: new Date(Date.now() - 90_000).toISOString() };
  }
  async picture() {
    throw new Refused("No photo is taken here.");
  }
  async entries(_: string, since: number) {
    return { entries: this.arrivals.slice(since).map((id) => this.disk.get(id) as Entry), next: this.arrivals.length };
  }
}

let count = 0;
async function phone(server: Server) {
  const book = await Book.open(Date.now, `sync ${(count += 1)}`);
  await keepClub(book, { club, at: 0 });
  return { book, acts: new Acts(book), sync: new Sync(book, server) };
}
const wanted = { club: "c", green: "7", spot: "a", first: "out", observer: "ab", mode: "scores" } as const;
async function visit(acts: Acts, balls: number) {
  const session = await acts.start(wanted);
  for (let order = 1; order <= balls; order += 1) {
    const ball = await acts.release(session, "out", order, undefined, undefined);
    await acts.stop(session, ball);
    await acts.score(session, ball, 8);
  }
  await acts.finish(session);
  return session;
}

describe("bringing the journal to the server", () => {
  it("is done when the server has named every entry, each on its disk once", async () => {
    const server = new TestServer();
    const { book, acts, sync } = await phone(server);
    const session = await visit(acts, 100); // 302 entries: more than one batch
    expect(visitLines(book, new Set())[0]).toMatchObject({ visit: session.visit, state: "kept" });
    await sync.run();
    expect(sync.state).toBe("idle");
    expect(book.waiting()).toEqual([]);
    expect(server.arrivals).toEqual(book.rows.map((row) => row.entry.id));
    expect(server.asked).toBe(2);
    expect(visitLines(book, new Set())[0]?.state).toBe("accepted");
    expect(sync.skew).toBeCloseTo(90, 0);
  });
  it("survives a network that breaks before and after the server wrote", async () => {
    const server = new TestServer();
    const { book, acts, sync } = await phone(server);
    await visit(acts, 100);
    server.failures = ["before", "after", "none", "after"];
    for (let run = 0; run < 4; run += 1) await sync.run();
    expect(sync.state).toBe("idle");
    expect(book.waiting()).toEqual([]);
    expect(server.arrivals.length).toBe(book.rows.length);
    expect(new Set(server.arrivals).size).toBe(book.rows.length);
  });
  it("tells what was refused and why, and sends the rest", async () => {
    const server = new TestServer();
    const { book, acts, sync } = await phone(server);
    await acts.work("c", "ab", { done_as: "coring" });
    await visit(acts, 3);
    server.refuse.add("roll");
    await sync.run();
    const line = visitLines(book, new Set())[0];
    expect(line?.state).toBe("refused");
    expect(line?.reasons).toContain("Not so.");
    expect([...server.disk.values()].map((entry) => entry.kind)).toEqual(["work", "visit", "visit"]);
    server.failures = ["refuse"];
    await acts.work("c", "ab", { done_as: "rolling" });
    await sync.run();
    expect([sync.state, sync.reason]).toEqual(["refused", "The club is not known."]);
    await sync.run();
    expect(book.waiting()).toEqual([]);
  });
  it("sends what was written while it ran", async () => {
    const server = new TestServer();
    const { book, acts, sync } = await phone(server);
    await acts.work("c", "ab", { done_as: "coring" });
    const first = sync.run();
    await acts.work("c", "ab", { done_as: "rolling" });
    await sync.run();
    await first;
    await sync.run();
    expect(book.waiting()).toEqual([]);
    expect(server.arrivals).toHaveLength(2);
  });
  it("brings two phones to the same values, and a conflict to both", async () => {
    const server = new TestServer();
    const one = await phone(server);
    const two = await phone(server);
    const session = await visit(one.acts, 1);
    await one.sync.run();
    await two.sync.run();
    const ball = two.book.things("roll")[0]?.thing as string;
    await two.acts.score(session, ball, 5);
    await one.acts.score(session, ball, 9);
    for (const { sync } of [one, two, one]) await sync.run();
    expect(one.book.thing(ball)).toEqual(two.book.thing(ball));
    expect(one.book.thing(ball)?.conflicts[0]?.versions.map((version) => version.value).sort()).toEqual([5, 9]);
    await one.acts.score(session, ball, 9);
    for (const { sync } of [one, two]) await sync.run();
    expect(two.book.thing(ball)?.conflicts).toEqual([]);
    expect(two.book.thing(ball)?.values.score).toBe(9);
  });
});
