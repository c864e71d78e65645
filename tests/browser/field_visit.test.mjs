// Three greens without a network; the phone dies during a roll, the server
// during sending; in the end everything is there, exactly once.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { ask } from "./baize.mjs";
import { allEntries, firstTime, journal, killBrowser, ownServer, phoneIn } from "./field.mjs";

let server, phone, club;
before(async () => {
  server = await ownServer();
  club = (await ask(server.url, "clubs")).clubs[0].id;
  phone = await phoneIn(server.folder);
  await firstTime(phone, server);
});
after(async () => {
  await phone?.context.close().catch(() => undefined);
  await server?.end();
});

/** Touches between a ball's release and the next, marks not counted. */
const rolled = { balls: 0, taps: 0 };

/** Six balls: marks, the score where it is not the offered one, inches where measured. */
async function spot(balls) {
  for (const { marks = [], score, inches } of balls) {
    const start = phone.counted.taps;
    await phone.ball(marks);
    if (score) await phone.score(score);
    if (inches !== undefined) await phone.inches(inches);
    rolled.balls += 1;
    rolled.taps += phone.counted.taps - start;
  }
}
const measured = [
  { inches: 2 }, { marks: ["chatter"], inches: 5 }, { marks: ["snake"], inches: 4 },
  { marks: ["bobble"], score: 5, inches: 11 }, { inches: 9 }, { marks: ["chatter", "snake"], inches: 10 },
];
const scored = [{}, { marks: ["chatter"] }, {}, { marks: ["bobble", "bobble"] }, { marks: ["snake"] }, { score: 10 }];

async function finishGreen() {
  await phone.tap(".thumb .go"); // the spot's summary
  await phone.page.locator(".summary").waitFor();
  await phone.tap(".thumb .go");
  await phone.page.locator(".next-green").waitFor();
}
/** The clock goes on as it does on a course; nobody is at two greens in one minute. */
const walk = (minutes) => phone.page.clock.setSystemTime(new Date(Date.now() + minutes * 60_000));

test("three greens offline, killed in the middle, and all of it arrives once", async () => {
  const { page } = phone;
  await phone.context.setOffline(true);
  await page.reload();
  await page.locator(".next-green").waitFor();
  const tapsOf = {};
  const count = async (name, work) => {
    const start = phone.counted.taps;
    await work();
    tapsOf[name] = phone.counted.taps - start;
  };

  await count("first green, all taken down", async () => {
    await phone.tap(".thumb .go");
    await spot(measured);
    await finishGreen();
  });
  await walk(12);
  await count("conditions", async () => {
    await phone.tap(".thumb .go");
    await page.locator(".release").waitFor();
    await page.goto(`${server.url}/field/#conditions`);
    for (const group of [0, 1, 2, 3, 4]) await phone.tap(page.locator(".conditions .keys").nth(group).locator(".key").nth(1));
    await phone.tap(".thumb .go");
  });

  // Ball 1 of the second green: the battery dies after a mark.
  await phone.tap(".go.release");
  await page.locator(".bands").waitFor();
  await page.waitForTimeout(900);
  await page.touchscreen.tap(195, 400);
  await page.locator(".said p").waitFor();
  const before = await journal(page);
  await killBrowser(phone.context);

  const taps = phone.counted.taps;
  phone = await phoneIn(server.folder);
  phone.counted.taps = taps;
  await phone.context.setOffline(true);
  await walkOn(12);
  await phone.page.goto(`${server.url}/field/`);
  await phone.page.getByRole("heading", { name: "Ball 1 was rolling" }).waitFor();
  await phone.page.getByText(/Chatter 0\.9|Chatter 1\.\d/).waitFor();
  assert.deepEqual((await journal(phone.page)).map((entry) => entry.id), before.map((entry) => entry.id));
  await count("second green, all taken down", async () => {
    await phone.tap(".thumb .go");
    await phone.inches(3);
    await spot(measured.slice(1));
    await finishGreen();
  });
  await walkOn(26);
  await count("third green, scores only", async () => {
    await phone.page.goto(`${server.url}/field/#mode`);
    await phone.tap(phone.page.getByRole("button", { name: "Marks and score", exact: true }));
    await phone.tap(".thumb .go");
    await phone.page.locator(".release").waitFor();
  });
  await count("third green's balls", async () => {
    await spot(scored);
    await finishGreen();
  });

  const perRoll = rolled.taps / rolled.balls;
  console.log(`taps beyond marks: ${rolled.taps} for ${rolled.balls} balls, ${perRoll.toFixed(2)} a ball; by part, with start and finish: ${JSON.stringify(tapsOf)}`);
  assert.equal(rolled.balls, 17); // one more was broken off by the battery
  assert.ok(perRoll <= 3, `${perRoll} taps a ball`);
  assert.ok(tapsOf.conditions <= 7, `${tapsOf.conditions} taps for the conditions with the start`);

  // Sent by bits: the server dies while it answers, and comes back.
  const written = await journal(phone.page);
  assert.equal(written.filter((entry) => entry.kind === "visit" && entry.set.done).length, 3);
  await dieDuringSending();
  await phone.page.goto(`${server.url}/field/#kept`);
  await phone.tap(".thumb .go");
  await phone.page.getByText(/Last sent at/).waitFor();
  await phone.page.waitForFunction(() => document.querySelectorAll(".visit-item.accepted").length === 3);

  const arrived = await allEntries(server, club);
  assert.deepEqual(arrived.map((entry) => entry.id).sort(), written.map((entry) => entry.id).sort());
  for (const entry of written) assert.deepEqual(arrived.find((one) => one.id === entry.id), entry);
  const today = written.find((entry) => entry.set.day).set.day;
  const visits = (await ask(server.url, `clubs/${club}/visits?from=${today}`)).visits;
  assert.equal(visits.length, 3);
  let balls = 0;
  for (const { visit } of visits) {
    const detail = await ask(server.url, `clubs/${club}/visits/${encodeURIComponent(visit)}`);
    balls += detail.visit.runs.reduce((sum, one) => sum + one.rolls.length, 0);
  }
  assert.equal(balls, 18);
  assert.deepEqual(phone.wrong, []);
});

const walkOn = (minutes) => phone.page.clock.setSystemTime(new Date(Date.now() + minutes * 60_000));

/** The first answer is lost on its way and the server is killed; the second try meets nobody; then it is back. */
async function dieDuringSending() {
  const { page, context } = phone;
  let lost = 0;
  await context.route("**/entries", async (route) => {
    if (route.request().method() !== "POST" || lost > 0) return route.continue();
    lost += 1;
    await route.fetch(); // it arrived and was written down
    await server.kill();
    await route.abort();
  });
  await context.setOffline(false);
  await page.goto(`${server.url}/field/#kept`);
  await phone.tap(".thumb .go");
  await page.getByText("No server. It is all kept here.").waitFor();
  assert.equal(lost, 1);
  await page.reload();
  await page.getByText("No server. It is all kept here.").waitFor();
  await context.unroute("**/entries");
  await server.start();
}
