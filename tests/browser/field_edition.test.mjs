// A new edition of the page is offered, never taken by itself, and not in the middle of a visit.
import assert from "node:assert/strict";
import { createServer } from "node:http";
import { after, before, test } from "node:test";
import { firstTime, journal, move, ownServer, phoneIn } from "./field.mjs";

let server, phone, between, edition;
before(async () => {
  server = await ownServer();
  // Stands between phone and server, and changes the worker as a new build does.
  between = createServer(async (request, response) => {
    const parts = [];
    for await (const part of request) parts.push(part);
    const headers = { ...request.headers };
    for (const name of ["host", "origin", "connection", "content-length"]) delete headers[name];
    const answer = await fetch(`${server.url}${request.url}`, { method: request.method, headers, body: parts.length > 0 ? Buffer.concat(parts) : undefined });
    let body = Buffer.from(await answer.arrayBuffer());
    if (edition && request.url.endsWith("/sw.js")) body = Buffer.from(body.toString().replace(/baize-field [0-9a-f]+/, `baize-field ${edition}`));
    const kept = Object.fromEntries([...answer.headers].filter(([name]) => !/^(content-encoding|content-length|transfer-encoding|connection|etag)$/.test(name)));
    response.writeHead(answer.status, kept).end(body);
  });
  await new Promise((ready) => between.listen(0, "127.0.0.1", ready));
  phone = await phoneIn(server.folder);
  await firstTime(phone, { url: `http://127.0.0.1:${between.address().port}` });
});
after(async () => {
  await phone?.context.close().catch(() => undefined);
  between?.closeAllConnections();
  between?.close();
  await server?.end();
});

const shelves = (page) => page.evaluate(() => caches.keys());

test("it waits until the visit is finished and the person says so", async () => {
  const { page } = phone;
  const [first] = await shelves(page);
  await phone.tap(".thumb .go");
  await phone.ball(["chatter"]);
  edition = "f00d";
  await page.evaluate(async () => (await navigator.serviceWorker.getRegistration()).update());
  await page.waitForFunction(async () => (await navigator.serviceWorker.getRegistration()).waiting !== null);
  await move({ page }, "kept");
  await page.getByText("Offered again when this visit is finished").waitFor();
  await page.reload();
  await page.locator(".bar").waitFor();
  assert.ok((await shelves(page)).includes(first), "the edition in use is still whole");
  const held = await journal(page);
  await move({ page }, "summary");
  await page.locator(".summary").waitFor();
  await phone.tap(".thumb .go");
  await page.locator(".next-green").waitFor();
  const again = page.waitForEvent("load");
  await phone.tap(page.getByRole("button", { name: /A new edition is ready/ }));
  await again;
  await page.waitForFunction(async () => (await caches.keys()).join() === "baize-field f00d");
  await page.locator(".next-green").waitFor();
  const entries = await journal(page);
  assert.deepEqual(entries.slice(0, held.length), held);
  assert.deepEqual(phone.wrong, []);
});
