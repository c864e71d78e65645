// Sending without a touch: by the open page when the network is back, and by the
// browser when the page is closed.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { ask } from "./baize.mjs";
import { allEntries, firstTime, journal, move, ownServer, phoneIn, senderOf } from "./field.mjs";

let server, phone, club;
before(async () => {
  server = await ownServer();
  phone = await phoneIn(server.folder);
  club = (await ask(server.url, "clubs")).clubs[0].id;
  await firstTime(phone, server);
});
after(async () => {
  await phone?.context.close().catch(() => undefined);
  await server?.end();
});

const ids = (entries) => entries.map((entry) => entry.id).sort();

async function visitOf(balls) {
  await phone.tap(".thumb .go");
  for (let ball = 0; ball < balls; ball += 1) await phone.ball([]);
  await move(phone, "summary");
  await phone.tap(".thumb .go");
  await phone.page.locator(".next-green").waitFor();
}

async function arrived(wanted) {
  for (let wait = 0; wait < 100; wait += 1) {
    if ((await allEntries(server, club)).length >= wanted) return;
    await new Promise((next) => setTimeout(next, 200));
  }
}

test("the open page sends by itself when the network is back", async () => {
  const { page, context } = phone;
  await context.setOffline(true);
  await visitOf(2);
  const written = await journal(page);
  assert.equal(written.at(-1).set.done, true);
  assert.deepEqual(await allEntries(server, club), []);
  await context.setOffline(false);
  await page.locator(".standing.accepted").waitFor();
  assert.deepEqual(ids(await allEntries(server, club)), ids(written));
});

test("where the server is away for a while the page goes on asking, and nobody touches it", async () => {
  const { page } = phone;
  await server.kill();
  await visitOf(1);
  await page.locator(".standing.kept").waitFor();
  await page.waitForTimeout(5000);
  await server.start();
  await page.locator(".standing.accepted").waitFor({ timeout: 60_000 });
  assert.deepEqual(ids(await allEntries(server, club)), ids(await journal(page)));
});

test("the browser sends what a closed page left, and the page finds it accepted", async () => {
  const { context } = phone;
  await context.setOffline(true);
  await visitOf(1);
  const written = await journal(phone.page);
  const { watch, letSend } = await senderOf(context, server.url);
  await phone.page.close();
  await context.setOffline(false);
  await letSend();
  await arrived(written.length);
  assert.deepEqual(ids(await allEntries(server, club)), ids(written));
  // Offline again: what the page shows now it can know only from the worker.
  await context.setOffline(true);
  await watch.goto(`${server.url}/field/#kept`);
  await watch.locator(".visit-item").first().waitFor();
  assert.equal(await watch.locator(".visit-item.accepted").count(), 3);
  assert.equal(await watch.locator(".standing.accepted").count(), 1);
  assert.deepEqual(phone.wrong, []);
});
