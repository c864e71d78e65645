// No club yet, a server that does not answer, refusals, and addresses that name nothing.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { heading, openPage, startBrowser, startServer } from "./baize.mjs";

let server, browser;
before(async () => {
  server = await startServer();
  browser = await startBrowser();
});
after(async () => {
  await browser?.close();
  server?.stop();
});

test("no club yet: one sentence says what to do", async () => {
  const { page } = await openPage(browser);
  await page.route("**/api/v1/clubs", (route) => route.fulfill({ json: { clubs: [] } }));
  await page.goto(server.url);
  await heading(page, "No club yet").waitFor();
  await page.getByText("baize import").waitFor();
});

test("a refusal is shown as its own sentence, and can be tried again", async () => {
  const { page } = await openPage(browser);
  await page.goto(`${server.url}/#/no%20such%20club/greens`);
  const sentence = page.locator(".notice p").first();
  await sentence.waitFor();
  assert.match(await sentence.textContent(), /no such club/);
  await page.getByRole("button", { name: "Try again" }).click();
  await sentence.waitFor();
});

test("a server that is gone is named, and found again", async () => {
  const { page } = await openPage(browser);
  let gone = true;
  await page.route("**/api/v1/clubs", (route) => (gone ? route.abort() : route.continue()));
  await page.goto(server.url);
  await page.getByText("The server does not answer").waitFor();
  gone = false;
  await page.getByRole("button", { name: "Try again" }).click();
  await page.locator(".card").first().waitFor();
});

test("an address that names nothing leads back", async () => {
  const { page } = await openPage(browser);
  await page.goto(`${server.url}/#/a/b/c/d/e`);
  await heading(page, "There is no such page").waitFor();
  await page.getByRole("link", { name: "Go to the greens" }).click();
  await page.locator(".card").first().waitFor();
});
