// A thumb on a phone: what the tests of the page on the green share.
import { createRequire } from "node:module";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { execFile } from "node:child_process";
import { promisify } from "node:util";
import { serve } from "./baize.mjs";

const require = createRequire(new URL("../../surfaces/web/package.json", import.meta.url));
const { chromium } = require("playwright-core");
export const run = promisify(execFile);
const larch = new URL("../clubs/larch_hollow", import.meta.url).pathname;

/** A new database with the club that the tests roll on. */
export const clubIn = (database) => run(process.env.BAIZE_PROGRAM, ["import", larch, "--db", database]);

/** A server with a club of its own on disk, which may be killed and started again at the same address. */
export async function ownServer() {
  const program = process.env.BAIZE_PROGRAM;
  if (!program) throw new Error("BAIZE_PROGRAM says what to test.");
  const folder = await mkdtemp(join(tmpdir(), "baize-field-"));
  const database = join(folder, "club.sqlite3");
  await clubIn(database);
  let child;
  let port = "0";
  const server = {
    folder, database, url: "",
    async start() {
      ({ child, url: server.url } = await serve(program, ["--db", database, "--port", port]));
      port = new URL(server.url).port;
    },
    /** As when the power goes. */
    kill: () => new Promise((resolve) => (child.once("exit", resolve), child.kill("SIGKILL"))),
    async end() {
      await server.kill().catch(() => undefined);
      await rm(folder, { recursive: true, force: true });
    },
  };
  await server.start();
  return server;
}

/** A phone: a browser whose storage stays when it is killed. */
export async function phoneIn(folder, settings = {}) {
  const context = await chromium.launchPersistentContext(join(folder, settings.name ?? "phone"), {
    executablePath: process.env.BAIZE_CHROMIUM ?? "/usr/bin/chromium",
    viewport: { width: 390, height: 844 },
    hasTouch: true, isMobile: true, deviceScaleFactor: 2, locale: settings.locale ?? "en-GB",
    args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync", ...(settings.args ?? [])],
    ...(settings.env ? { env: { ...process.env, ...settings.env } } : {}),
  });
  const page = context.pages()[0] ?? (await context.newPage());
  // So that a test may move the clock on later; a page on the real one can be timed.
  if (!settings.realClock) await page.clock.setSystemTime(new Date());
  // When the browser sends for a closed page is its own affair: it would race with the test.
  // Where the worker is to send, senderOf wakes it.
  await context.addInitScript(() => globalThis.SyncManager && (SyncManager.prototype.register = () => Promise.resolve()));
  const wrong = [];
  page.on("pageerror", (error) => wrong.push(error.message));
  page.on("console", (message) => message.type() === "error" && !/net::ERR|Failed to load resource/.test(message.text()) && wrong.push(message.text()));
  const phone = { context, page, wrong, taps: 0, marks: 0, ...touches(page) };
  return phone;
}

function touches(page) {
  const counted = { taps: 0 };
  const place = async (element) => {
    await element.waitFor();
    await element.scrollIntoViewIfNeeded();
    const box = await element.boundingBox();
    if (!box) throw new Error("The element is not attached to the DOM any more");
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  };
  // The screen may be drawn anew between finding a thing and measuring it: look again.
  const at = async (selector) => {
    const element = typeof selector === "string" ? page.locator(selector).first() : selector;
    for (let again = 4; ; again -= 1) {
      try {
        return await place(element);
      } catch (problem) {
        if (again === 0 || !/not attached/.test(String(problem))) throw problem;
      }
    }
  };
  return {
    counted,
    async tap(selector) {
      const { x, y } = await at(selector);
      counted.taps += 1;
      await page.touchscreen.tap(x, y);
    },
    /** One ball: released, marked, stopped. Marks are not counted. */
    async ball(marks = [], pause = 800) {
      await this.tap(".go.release");
      await page.locator(".bands").waitFor();
      await page.waitForTimeout(pause);
      for (const mark of marks) {
        const { x, y } = await at(`.band.${mark}`);
        await page.touchscreen.tap(x, y);
        await page.locator(".said p").waitFor();
        await page.waitForTimeout(120);
      }
      await this.tap(".band.stop");
      await page.locator(".stand").waitFor();
    },
    score(value) {
      return this.tap(`.scores .score:nth-child(${value})`);
    },
    inches(value) {
      return this.tap(`.digits .key:nth-child(${value + 1})`);
    },
  };
}

/** The whole browser at once, as a battery does it. */
export async function killBrowser(context) {
  const page = context.pages()[0];
  const session = await context.newCDPSession(page);
  const gone = new Promise((resolve) => context.once("close", resolve));
  const { processInfo } = await (await context.browser()?.newBrowserCDPSession() ?? session).send("SystemInfo.getProcessInfo");
  const main = processInfo.find((one) => one.type === "browser");
  process.kill(main.id, "SIGKILL");
  await gone;
}

/** To another screen by its address, and drawn. */
export async function move(phone, to) {
  await phone.page.evaluate((hash) => (location.hash = hash), to);
  await phone.page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))));
}

/** The first time: the club comes by itself, the observer is chosen. */
export async function firstTime(phone, server, observer = 0) {
  const { page } = phone;
  await page.goto(`${server.url}/field/`);
  await page.locator(".row").first().waitFor();
  await phone.tap(page.locator(".row").nth(observer));
  await page.locator(".next-green").waitFor();
  await page.evaluate(() => navigator.serviceWorker.ready);
  // Everything of this edition is in the phone.
  await page.waitForFunction(async () => {
    for (const name of await caches.keys()) if ((await (await caches.open(name)).keys()).length > 8) return true;
    return false;
  });
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
}

/** What the phone holds, read beside the page's own code. */
export const journal = (page) =>
  page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const asked = indexedDB.open("baize-field");
        asked.onerror = () => reject(asked.error);
        asked.onsuccess = () => {
          const all = asked.result.transaction("entries").objectStore("entries").getAll();
          all.onsuccess = () => (asked.result.close(), resolve(all.result.map((row) => row.entry)));
        };
      }),
  );

export async function allEntries(server, club) {
  const found = [];
  for (let since = 0; ; ) {
    const answer = await (await fetch(`${server.url}/api/v1/clubs/${club}/entries?since=${since}&limit=500`)).json();
    found.push(...answer.entries);
    if (answer.entries.length === 0 || answer.next <= since) return found;
    since = answer.next;
  }
}

/** The field page's worker, seen from an empty page: `letSend` tells it, as a browser would, to send what is left. */
export async function senderOf(context, origin) {
  const watch = await context.newPage();
  const session = await context.newCDPSession(watch);
  const found = new Promise((resolve) =>
    session.on("ServiceWorker.workerRegistrationUpdated", ({ registrations }) => {
      const own = registrations.find((one) => one.scopeURL.startsWith(origin) && !one.isDeleted);
      if (own) resolve(own.registrationId);
    }),
  );
  await session.send("ServiceWorker.enable");
  const registrationId = await found;
  const letSend = () => session.send("ServiceWorker.dispatchSyncEvent", { origin, registrationId, tag: "baize-entries", lastChance: false });
  return { watch, letSend };
}
