// The page on the green as a phone sees it: what it asks of the network, how
// soon it opens without one, whether it can be put on the home screen, and
// whether it can be used with large letters and on a narrow screen.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { cutOff, small } from "./field_look.mjs";
import { firstTime, move, ownServer, phoneIn } from "./field.mjs";

let server, phone;
const hosts = new Set();
before(async () => {
  server = await ownServer();
  phone = await phoneIn(server.folder);
  phone.context.on("request", (request) => hosts.add(new URL(request.url()).origin));
  await firstTime(phone, server);
});
after(async () => {
  await phone?.context.close().catch(() => undefined);
  await server?.end();
});

test("it can be put on the home screen, with pictures of every size", async () => {
  const { page, context } = phone;
  const session = await context.newCDPSession(page);
  const { url, errors } = await session.send("Page.getAppManifest");
  assert.deepEqual(errors, []);
  const { installabilityErrors } = await session.send("Page.getInstallabilityErrors");
  assert.deepEqual(installabilityErrors, []);
  const manifest = await (await fetch(url)).json();
  for (const name of ["name", "short_name", "id", "start_url", "scope", "display", "theme_color", "background_color"]) assert.ok(manifest[name], name);
  const sizes = [];
  const pictures = [...manifest.icons, { src: await page.locator("link[rel=apple-touch-icon]").getAttribute("href"), sizes: "180x180", type: "image/png" }];
  for (const { src, sizes: told, type } of pictures) {
    const answer = await fetch(new URL(src, url));
    assert.equal(answer.headers.get("content-type"), type, src);
    if (type !== "image/png") continue;
    // PNG (ISO/IEC 15948), 11.2.2: width and height follow the eight bytes of the signature and the head of IHDR.
    const bytes = Buffer.from(await answer.arrayBuffer());
    assert.equal(`${bytes.readUInt32BE(16)}x${bytes.readUInt32BE(20)}`, told, src);
    sizes.push(told);
  }
  assert.deepEqual(sizes, ["192x192", "512x512", "512x512", "180x180"]);
  assert.ok(manifest.icons.some((one) => one.purpose === "maskable"));
});

test("it opens without a network, on a slow phone, its worker asleep", async () => {
  const slow = await phoneIn(server.folder, { name: "slow", realClock: true });
  const { page, context } = slow;
  await firstTime(slow, server);
  await context.setOffline(true);
  await page.addInitScript(() => {
    const times = (globalThis.times = {});
    const note = (name, selector) => !(name in times) && document.querySelector(selector) && (times[name] = Math.round(performance.now()));
    addEventListener("pointerdown", () => (times.touched = Math.round(performance.now())), { capture: true });
    new MutationObserver(() => (note("ready", ".next-green"), note("answered", ".greens"))).observe(document, { childList: true, subtree: true });
  });
  const session = await context.newCDPSession(page);
  await session.send("ServiceWorker.enable");
  await session.send("Emulation.setCPUThrottlingRate", { rate: 4 });
  for (let opened = 1; opened <= 3; opened += 1) {
    await page.goto("about:blank");
    await session.send("ServiceWorker.stopAllWorkers");
    await page.goto(`${server.url}/field/`);
    await slow.tap(".next-green");
    await page.locator(".greens").waitFor();
    const { ready, touched, answered } = await page.evaluate(() => globalThis.times);
    console.log(`offline, processor four times slower: ready for a tap after ${ready} ms, the tap answered after ${answered - touched} ms`);
    assert.ok(ready > 0 && answered >= touched);
  }
  assert.deepEqual(slow.wrong, []);
  await context.close();
});

const screens = ["home", "green", "mode", "pair", "pair/phones", "settings", "reading", "reading/soil_moisture", "work", "work/coring", "kept"];
const ofVisit = ["visit", "menu", "photos", "conditions", "note", "spots", "when", "summary"];

for (const [name, width, height, letters] of [["letters twice as large", 390, 844, 32], ["a screen of 320 px", 320, 568, 16]]) {
  for (const language of ["en", "es", "ja", "th"]) {
    test(`${name}, ${language}: everything can be read and reached`, async () => {
      const { page } = phone;
      const faults = [];
      await page.setViewportSize({ width, height });
      // As the browser's own settings do; 16 px is usual.
      await (await phone.context.newCDPSession(page)).send("Page.setFontSizes", { fontSizes: { standard: letters } });
      await page.evaluate((change) => localStorage.setItem("baize.field", JSON.stringify({ ...JSON.parse(localStorage.getItem("baize.field")), ...change })), { language });
      await page.goto(`${server.url}/field/#home`);
      await page.reload();
      const look = async (place) => {
        await page.waitForTimeout(50);
        for (const fault of [...(await cutOff(page)), ...(await small(page))]) faults.push(`${place}: ${fault}`);
      };
      await page.locator(".next-green").waitFor();
      for (const place of screens) {
        await move(phone, place);
        await look(place);
      }
      await move(phone, "home");
      await phone.tap(".thumb .go");
      await page.locator(".release").waitFor();
      await look("first ball");
      await phone.tap(".release");
      await page.locator(".bands").waitFor();
      await page.waitForTimeout(800);
      await look("rolling");
      await phone.tap(".band.stop");
      await page.locator(".stand .scores").waitFor();
      await phone.score(4);
      await phone.inches(11);
      for (const place of ofVisit) {
        await move(phone, place);
        await look(place);
      }
      await move(phone, "summary");
      await phone.tap(".thumb .go");
      await page.locator(".next-green").waitFor();
      assert.deepEqual(faults, []);
    });
  }
}

test("nothing was asked of another host, and nothing went wrong", () => {
  assert.deepEqual([...hosts], [server.url]);
  assert.deepEqual(phone.wrong, []);
});
