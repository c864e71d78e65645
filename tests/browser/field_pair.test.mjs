// The same balls, two observers: in turn on one phone, and apart on two.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { ask } from "./baize.mjs";
import { firstTime, journal, move, ownServer, phoneIn } from "./field.mjs";

let server, club, one, two;
before(async () => {
  server = await ownServer();
  club = (await ask(server.url, "clubs")).clubs[0].id;
  one = await phoneIn(server.folder, { name: "one" });
  await firstTime(one, server, 0);
  two = await phoneIn(server.folder, { name: "two" });
  await firstTime(two, server, 1);
});
after(async () => {
  for (const phone of [one, two]) await phone?.context.close().catch(() => undefined);
  await server?.end();
});

test("in turn on one phone: no score is seen before both are in", async () => {
  const { page } = one;
  await move(one, "pair/turn");
  await one.tap(".row");
  await page.locator(".next-green").waitFor();
  await one.tap(".thumb .go");
  await page.locator(".release").waitFor();
  for (let ball = 0; ball < 6; ball += 1) {
    await one.ball(["chatter"]);
    assert.equal(await page.locator(".release").count(), 0, "the score is asked for, not taken from the marks");
    assert.equal(await page.locator(".score.offer, .score.within").count(), 0, "and nothing is suggested");
    await one.score(8);
    await page.locator(".glance.partner").waitFor();
    assert.equal(await page.locator(".score[aria-pressed=true]").count(), 0);
    assert.equal(await page.locator(".cell b").nth(ball).textContent(), "•");
    await one.score(ball === 2 ? 6 : 8);
    await page.locator(".cell b").nth(ball).getByText(/8·[68]/).waitFor();
  }
  await one.tap(".thumb .go");
  await page.getByText("1 ball scored differently").waitFor();
  await one.tap(".thumb .go");
  await page.locator(".next-green").waitFor();
  const entries = await journal(page);
  const visits = entries.filter((entry) => entry.kind === "visit" && entry.set.green);
  assert.equal(visits.length, 2);
  assert.equal(visits[0].set.shared_rolls, visits[1].set.shared_rolls);
  assert.notEqual(visits[0].set.observer, visits[1].set.observer);
  await move(one, "kept");
  await one.tap(".thumb .go");
  await page.waitForFunction(() => document.querySelectorAll(".visit-item.accepted").length === 2);
});

test("on two phones: a word of four letters gives both the same shared rolls", async () => {
  await move(one, "pair/phones");
  await one.tap(".wide");
  const word = await one.page.locator(".code input").inputValue();
  assert.match(word, /^[A-Z]{4}$/);
  await one.tap(".thumb .go");
  await move(two, "pair/phones");
  await two.page.locator(".code input").fill(word.toLowerCase());
  await two.tap(".thumb .go");
  for (const phone of [one, two]) await phone.page.locator(".next-green").waitFor();
  // The other phone is at the same green.
  const green = await one.page.locator(".next-green b").textContent();
  await move(two, "green");
  await two.tap(two.page.locator(".greens .key").filter({ hasText: green }).first());
  for (const phone of [one, two]) {
    await phone.page.clock.setSystemTime(new Date(Date.now() + 30 * 60_000));
    await move(phone, "home");
    await phone.tap(".thumb .go");
    await phone.page.locator(".release").waitFor();
    for (let ball = 0; ball < 6; ball += 1) {
      await phone.ball([]);
      await phone.score(phone === two && ball < 2 ? 7 : 9);
    }
    await phone.tap(".thumb .go");
    await phone.page.getByText(/The other phone's scores show/).waitFor();
    await phone.tap(".thumb .go");
    await phone.page.locator(".next-green").waitFor();
  }
  for (const phone of [one, two, one]) {
    await move(phone, "kept");
    await phone.tap(".thumb .go");
    await phone.page.waitForFunction(() => document.querySelectorAll(".visit-item.kept, .visit-item.sent").length === 0);
  }
  const shared = await Promise.all([one, two].map(async (phone) => (await journal(phone.page)).findLast((entry) => entry.set.shared_rolls).set.shared_rolls));
  assert.equal(shared[0], shared[1]);
  // Now each may know: the visit, opened again, tells how far they are apart.
  await move(one, "kept");
  await one.tap(".visit-item");
  await one.page.locator(".summary").waitFor();
  await one.page.getByText("2 balls scored differently").waitFor();
  for (const phone of [one, two]) assert.deepEqual(phone.wrong, []);
});

test("two phones that mend the same ball apart are shown both, and one touch decides", async () => {
  const visit = (await journal(one.page)).findLast((entry) => entry.kind === "visit" && entry.set.done).thing;
  const roll = (await journal(one.page)).find((entry) => entry.kind === "roll" && entry.set.visit === visit);
  // Somebody else's phone wrote over the same entry, and reached the server first.
  const newest = (await journal(one.page)).findLast((entry) => entry.thing === roll.thing && "score" in entry.set);
  const now = new Date().toISOString();
  const foreign = { id: "01999999-9999-7999-8999-999999999999", phone: "01999999-9999-7999-8999-000000000000", at: now, by: newest.by, kind: "roll", thing: roll.thing, set: { score: 4 }, over: newest.over };
  const answer = await fetch(`${server.url}/api/v1/clubs/${club}/entries`, {
    method: "POST", headers: { "Content-Type": "application/json" },
    body: JSON.stringify({ form: "baize-entries", version: 1, phone: foreign.phone, sent_at: now, entries: [foreign] }),
  });
  assert.equal(answer.status, 200);
  await move(one, "kept");
  await one.tap(".thumb .go");
  const notice = one.page.locator(".notice").filter({ hasText: "Two versions" });
  await notice.waitFor();
  assert.equal(await notice.locator(".key").count(), 2);
  await one.tap(notice.locator(".key").filter({ has: one.page.locator("b", { hasText: /^9$/ }) }));
  await notice.waitFor({ state: "detached" });
  await one.tap(".thumb .go");
  await one.page.waitForFunction(() => document.querySelectorAll(".visit-item.kept, .visit-item.sent").length === 0);
  const conflicts = await ask(server.url, `clubs/${club}/conflicts`);
  assert.equal(conflicts.conflicts.length, 0);
});
