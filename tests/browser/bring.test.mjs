// A club's record files brought in from the pages: looked through, mended, kept, reported.
import assert from "node:assert/strict";
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { ask, breaches, heading, openPage, phone, startBrowser, startServer } from "./baize.mjs";

const clubs = new URL("../clubs/", import.meta.url).pathname;
const filesOf = (name) => readdirSync(join(clubs, name)).map((file) => join(clubs, name, file));

let server, browser, folder;
before(async () => {
  folder = mkdtempSync(join(tmpdir(), "baize-bring-"));
  server = await startServer(join(folder, "club.sqlite3"));
  browser = await startBrowser();
});
after(async () => {
  await browser?.close();
  server?.stop();
  rmSync(folder, { recursive: true, force: true });
});

test("an empty database asks for files, and nothing is kept before it is said", async () => {
  const { page, wrong } = await openPage(browser, phone);
  await page.goto(server.url);
  await heading(page, "No club yet").waitFor();
  await page.getByRole("link", { name: "Bring records in" }).click();
  await heading(page, "Bring records in").waitFor();

  await page.getByLabel("Record files").setInputFiles(filesOf("awkward_values"));
  await page.getByText(/^Nothing can be kept yet: \d+ things to put right/).waitFor();
  await page.getByText(/rolls\.csv line \d+/).first().waitFor();
  assert.equal(await page.getByRole("button", { name: "Keep these records" }).count(), 0);

  await page.getByLabel("Record files").setInputFiles(filesOf("awkward_encoding"));
  await page.getByText(/is not text in UTF-8/).waitFor();

  await page.getByLabel("Record files").setInputFiles(filesOf("larch_hollow"));
  await page.getByText("All of it can be read.").waitFor();
  assert.deepEqual((await ask(server.url, "clubs")).clubs, [], "looking keeps nothing");
  assert.deepEqual(await breaches(page), []);
  await page.getByRole("button", { name: "Keep these records" }).click();
  await page.getByText(/^\d+ records added, 0 corrected, 0 there already\.$/).waitFor();
  await page.getByRole("link", { name: "Look at the greens" }).click();
  await page.locator(".card").first().waitFor();
  assert.equal((await ask(server.url, "clubs")).clubs.length, 1);
  // The refusals above are answers with a status of their own, which the browser notes.
  assert.deepEqual(wrong.filter((text) => !/status of 422/.test(text)), []);
});

test("a weather file is shown as it is understood, put right, and kept", async () => {
  const { page } = await openPage(browser);
  const { id } = (await ask(server.url, "clubs")).clubs[0];
  await page.goto(`${server.url}/#/${encodeURIComponent(id)}/bring-in`);
  const rows = ["Date,Tmin,Tmax,Rain", "2025-04-01,3.5,12.0,0.0", "2025-04-02,4.0,14.5,0.2", "2025-04-03,2.0,11.0,0.0"];
  const choose = (lines) =>
    page.getByLabel("Weather file").setInputFiles({
      name: "station.csv", mimeType: "text/csv", buffer: Buffer.from(`${lines.join("\n")}\n`),
    });
  await choose(["a,b", "1,2"]);
  await page.getByRole("alert").filter({ hasText: "station.csv" }).waitFor();
  await choose(rows);
  const mapping = page.getByLabel("How the file is understood");
  await mapping.waitFor();
  const guessed = await mapping.inputValue();
  assert.match(guessed, /^unit\.rain_mm=mm$/m);
  await mapping.fill(guessed.replace("unit.rain_mm=mm", "unit.rain_mm=in"));
  await page.getByRole("button", { name: "Look again" }).click();
  await page.getByText("3 days can be read.").waitFor();
  assert.match(await mapping.inputValue(), /^unit\.rain_mm=in$/m, "the correction stands");
  await page.getByRole("button", { name: "Keep this weather" }).click();
  await page.getByText("Kept: 3 days of weather.").waitFor();
});

test("the same files again change nothing, and the report comes as a file", async () => {
  const { page } = await openPage(browser);
  const { id } = (await ask(server.url, "clubs")).clubs[0];
  await page.goto(`${server.url}/#/${encodeURIComponent(id)}/records`);
  await page.getByRole("link", { name: "Bring records in" }).click();
  await page.getByLabel("Record files").setInputFiles(filesOf("larch_hollow"));
  await page.getByRole("button", { name: "Keep these records" }).click();
  await page.getByText(/^0 records added, 0 corrected, \d+ there already\.$/).waitFor();

  await page.goto(`${server.url}/#/${encodeURIComponent(id)}/greens`);
  const waiting = page.waitForEvent("download");
  await page.getByRole("link", { name: /^Report for the owner, \d{4}$/ }).first().click();
  const download = await waiting;
  assert.match(download.suggestedFilename(), /^[\w-]+-\d{4}\.html$/);
  const text = readFileSync(await download.path(), "utf8");
  assert.match(text, /^<!doctype html>/i);
  assert.ok(text.length > 50_000, "script, style and data are inside");
});
