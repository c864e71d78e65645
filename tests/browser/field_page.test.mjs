// The page on the green by itself: its size, its screens in every language and
// theme, offline, and the journal without the page.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { gzipSync } from "node:zlib";
import { breaches } from "./baize.mjs";
import { cutOff, faint, small } from "./field_look.mjs";
import { firstTime, journal, move, ownServer, phoneIn } from "./field.mjs";

let server, phone;
before(async () => {
  server = await ownServer();
  phone = await phoneIn(server.folder);
  await firstTime(phone, server);
});
after(async () => {
  await phone?.context.close().catch(() => undefined);
  await server?.end();
});

/** What the screen of photos brings when it is asked for. */
const ofPhotos = /(screen|in_file|pictures)-[\w-]+\.(js|css)$/;

test("script and style stay below 60 kB, compressed, all languages in, and photos below 6 kB", async () => {
  const worker = await (await fetch(`${server.url}/field/sw.js`)).text();
  const files = JSON.parse(/files=(\[[^\]]*\])/.exec(worker)[1]);
  let bytes = gzipSync(worker).length;
  let photos = 0;
  for (const file of files.filter((name) => /\.(js|css)$/.test(name))) {
    const size = gzipSync(await (await fetch(new URL(file, `${server.url}/field/`))).text(), { level: 9 }).length;
    if (ofPhotos.test(file)) photos += size;
    else bytes += size;
  }
  console.log(`the page on the green: ${bytes} bytes of script and style, compressed, and ${photos} for photos`);
  assert.ok(bytes > 10_000 && bytes <= 60_000, `${bytes} bytes`);
  assert.ok(photos > 1000 && photos <= 6000, `${photos} bytes`);
  const core = files.find((name) => name.endsWith(".wasm"));
  const weight = gzipSync(Buffer.from(await (await fetch(new URL(core, `${server.url}/field/`))).arrayBuffer()), { level: 9 }).length;
  console.log(`the core on the phone: ${weight} bytes, compressed`);
  assert.ok(weight > 50_000 && weight <= 150_000, `${weight} bytes`);
});

const looks = [["en", "sun", "right"], ["es", "quiet", "left"], ["ja", "sun", "left"], ["th", "quiet", "right"]];
const pages = ["home", "green", "mode", "pair", "pair/phones", "settings", "reading", "reading/soil_moisture", "work", "work/coring", "kept"];
const visitPages = ["visit", "menu", "photos", "conditions", "note", "spots", "when", "summary"];

async function look(name) {
  const { page } = phone;
  await page.locator("main").first().waitFor();
  await page.waitForTimeout(60);
  // A word that fades is measured as it appears, not wherever a slow machine meets it.
  await page.evaluate(() => document.getAnimations().forEach((one) => (one.pause(), (one.currentTime = 0))));
  assert.deepEqual(await breaches(page), [], name);
  assert.deepEqual(await small(page), [], `${name}: smaller than 56 px`);
  assert.deepEqual(await faint(page), [], `${name}: small or faint letters`);
  assert.deepEqual(await cutOff(page), [], `${name}: cut off`);
}

for (const [language, theme, hand] of looks) {
  test(`every screen in ${language}, ${theme}, ${hand}-handed: axe finds nothing, nothing is small, faint or cut off`, async () => {
    const { page } = phone;
    await page.evaluate((change) => localStorage.setItem("baize.field", JSON.stringify({ ...JSON.parse(localStorage.getItem("baize.field")), ...change })), { language, theme, hand });
    await page.goto(`${server.url}/field/#home`);
    await page.reload();
    await page.locator(".next-green").waitFor();
    for (const place of pages) {
      await move({ page }, place);
      await look(`${language} ${place}`);
    }
    await move({ page }, "home");
    await phone.tap(".thumb .go");
    await page.locator(".release").waitFor();
    await look(`${language} first ball`);
    await phone.tap(".release");
    await page.locator(".bands").waitFor();
    await page.touchscreen.tap(195, 400);
    await page.locator(".said p").waitFor();
    await look(`${language} rolling`);
    await page.reload();
    await look(`${language} broken`);
    await phone.tap(".thumb .go");
    await phone.inches(4);
    for (const place of visitPages) {
      await move({ page }, place);
      await look(`${language} ${place}`);
    }
    await move({ page }, "visit");
    await phone.tap(".line");
    await look(`${language} a ball's marks`);
    await move({ page }, "summary");
    await page.locator(".summary").waitFor();
    await phone.tap(".thumb .go");
    await page.locator(".next-green").waitFor();
    assert.deepEqual(phone.wrong, []);
  });
}

test("every step is taken back by Undo, to the empty green", async () => {
  const { page } = phone;
  await page.evaluate(() => localStorage.setItem("baize.field", JSON.stringify({ ...JSON.parse(localStorage.getItem("baize.field")), language: "en", hand: "right" })));
  await page.reload();
  await page.locator(".next-green").waitFor();
  await phone.tap(".thumb .go");
  await phone.ball(["chatter"]);
  await phone.score(4);
  await phone.inches(3);
  const held = (await journal(page)).length;
  const seen = [];
  for (let step = 0; step < 6; step += 1) {
    seen.push(await page.locator(".undo small").textContent());
    await phone.tap(".undo");
    await page.waitForTimeout(150);
  }
  assert.deepEqual(seen, ["distance", "score", "stop", "chatter", "release", "start"]);
  await page.locator(".next-green").waitFor();
  const entries = await journal(page);
  assert.ok(entries.length > held, "taking back adds, and removes nothing");
});

test("a keyboard does what a thumb does", async () => {
  const { page } = phone;
  await move({ page }, "home");
  await page.waitForTimeout(1100); // no finger came before
  await page.locator(".thumb .go").focus();
  await page.keyboard.press("Enter");
  await page.locator(".release").focus();
  await page.keyboard.press("Enter");
  await page.waitForTimeout(1100);
  await page.locator(".band.snake").focus();
  await page.keyboard.press("Enter");
  await page.locator(".said p").waitFor();
  await page.locator(".band.stop").focus();
  await page.keyboard.press("Enter");
  await page.locator(".stand .scores").waitFor();
  assert.equal((await journal(page)).at(-2).set.marks.at(-1).kind, "snake");
});

test("the journal can be had when the page itself fails", async () => {
  const { page } = phone;
  const entries = await journal(page);
  await phone.context.setOffline(true);
  // The page's own script is gone: only raw.html is left.
  await page.goto(`${server.url}/field/raw.html`);
  await page.getByText(`${entries.length} entries`).waitFor();
  assert.deepEqual(await breaches(page), []);
  const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "Save as a file" }).click()]);
  const { readFile } = await import("node:fs/promises");
  const file = JSON.parse(await readFile(await download.path(), "utf8"));
  assert.deepEqual([file.form, file.version, file.entries.length], ["baize-entries", 1, entries.length]);
  assert.deepEqual(file.entries, entries);
  await phone.context.setOffline(false);
});
