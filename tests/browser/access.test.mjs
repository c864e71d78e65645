// Every page by keyboard alone, and nothing that axe finds against WCAG 2.2 AA.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { ask, breaches, desk, drawn, openPage, phone, startBrowser, startServer } from "./baize.mjs";

let server, browser, places;
before(async () => {
  server = await startServer();
  browser = await startBrowser();
  const club = (await ask(server.url, "clubs")).clubs[0].id;
  const review = await ask(server.url, `clubs/${club}/greens`);
  const card = review.greens.find((one) => one.last_work && one.last_visit);
  const visit = (await ask(server.url, `clubs/${club}/visits?limit=1`)).visits[0].visit;
  const path = (...parts) => `#/${[club, ...parts].map(encodeURIComponent).join("/")}`;
  places = {
    greens: path("greens"),
    year: path("greens", card.green, card.last_visit.slice(0, 4)),
    works: path("works"),
    methods: path("methods"),
    trials: path("trials"),
    work: path("works", card.last_work),
    records: path("records"),
    photos: path("photos"),
    visit: path("records", visit),
  };
});
after(async () => {
  await browser?.close();
  server?.stop();
});

for (const [name, viewport] of [["desk", desk], ["phone", phone]]) {
  for (const place of ["greens", "year", "works", "work", "methods", "trials", "records", "photos", "visit"]) {
    test(`${place} on a ${name}: axe finds nothing, nothing runs over the edge`, async () => {
      const { page, wrong } = await openPage(browser, viewport);
      await page.goto(`${server.url}/${places[place]}`);
      await page.locator("main h1").waitFor();
      if (place === "year" || place === "work") await drawn(page);
      for (const summary of await page.locator(".numbers > summary").all()) await summary.click();
      assert.deepEqual(await breaches(page), []);
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      assert.ok(over <= 0, `${over} px wider than the screen`);
      assert.deepEqual(wrong, []);
      await page.context().close();
    });
  }
}

const focused = (page) => page.evaluate(() => document.activeElement?.textContent?.trim() ?? "");

async function tabTo(page, wanted) {
  for (let step = 0; step < 400; step += 1) {
    await page.keyboard.press("Tab");
    if (wanted(await focused(page))) {
      const visible = await page.evaluate(() => getComputedStyle(document.activeElement).outlineStyle);
      assert.notEqual(visible, "none", "the focus can be seen");
      return;
    }
  }
  assert.fail("not reached by the Tab key");
}

test("greens, year, numbers and a visit by keyboard alone", async () => {
  const { page } = await openPage(browser);
  await page.goto(`${server.url}/${places.greens}`);
  await page.locator(".card").first().waitFor();
  await tabTo(page, (text) => text === "Skip to the content");
  await page.keyboard.press("Enter");
  const name = await page.locator(".card-link").first().textContent();
  await tabTo(page, (text) => text === name);
  await page.keyboard.press("Enter");
  await drawn(page);
  assert.match(await focused(page), new RegExp(`^${name} in \\d{4}$`), "the new heading has the focus");
  await tabTo(page, (text) => text === "Visits of the year");
  await page.keyboard.press("Enter");
  await tabTo(page, (text) => /^\d+ \w{3} \d{4}$/.test(text));
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: "The rolls" }).waitFor();
});

test("settings open and close by keyboard", async () => {
  const { page } = await openPage(browser);
  await page.goto(`${server.url}/${places.greens}`);
  await page.locator(".card").first().waitFor();
  await tabTo(page, (text) => text === "Settings");
  await page.keyboard.press("Enter");
  await page.getByLabel("Lengths in").waitFor({ state: "visible" });
  await page.keyboard.press("Escape");
  await page.getByLabel("Lengths in").waitFor({ state: "hidden" });
  assert.equal(await focused(page), "Settings");
});

test("the first page stays small and leaves the drawing library alone", async () => {
  const { page } = await openPage(browser);
  const scripts = [];
  page.on("response", async (answer) => {
    if (answer.url().endsWith(".js")) scripts.push(answer);
  });
  await page.goto(`${server.url}/${places.greens}`);
  await page.locator(".card").first().waitFor();
  const { gzipSync } = await import("node:zlib");
  let bytes = 0;
  for (const script of scripts) bytes += gzipSync(await script.body()).length;
  assert.ok(bytes > 0 && bytes < 60_000, `${bytes} bytes of script, compressed`);
});
