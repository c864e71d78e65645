// The report: one file, opened from the disk, that asks nothing of anybody.
import assert from "node:assert/strict";
import { execFile } from "node:child_process";
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { promisify } from "node:util";
import { pathToFileURL } from "node:url";
import { breaches, openPage, phone, startBrowser } from "./baize.mjs";

const run = promisify(execFile);
let browser, folder, file, data;
before(async () => {
  browser = await startBrowser();
  folder = await mkdtemp(join(tmpdir(), "baize-report-"));
  file = process.env.BAIZE_REPORT ?? join(folder, "report.html");
  if (!process.env.BAIZE_REPORT) await makeReport();
  const text = await readFile(file, "utf8");
  const held = /<script type="application\/json" id="baize-data">([^<]*)<\/script>/.exec(text);
  data = JSON.parse(held[1]);
});
after(async () => {
  await browser?.close();
  if (folder) await rm(folder, { recursive: true, force: true });
});

/** The report of a small club, made by the program itself. */
async function makeReport() {
  const program = process.env.BAIZE_PROGRAM;
  assert.ok(program, "BAIZE_PROGRAM or BAIZE_REPORT says what to test");
  const database = join(folder, "club.sqlite3");
  await run(program, ["import", new URL("../clubs/larch_hollow", import.meta.url).pathname, "--db", database]);
  await run(program, ["report", "--year", "2025", "--out", file, "--db", database]);
}

test("opens from the disk, draws every green, and asks nothing of elsewhere", async () => {
  const { page, wrong, hosts } = await openPage(browser);
  await page.goto(pathToFileURL(file).href);
  await page.getByRole("heading", { level: 1 }).first().waitFor();
  assert.equal(await page.locator(".green-section").count(), data.seasons.length);
  assert.ok(data.seasons.length > 0);
  await page.waitForFunction((n) => document.querySelectorAll(".chart[data-drawn] svg").length >= 2 * n, data.seasons.length);
  for (const sentence of data.sentences) assert.equal(await page.getByText(sentence, { exact: true }).count(), 1, sentence);
  const figures = await page.locator(".true-figures").allTextContents();
  assert.deepEqual(
    figures,
    data.seasons.map(({ ledger }) => `${ledger.fewest_true} to ${ledger.most_true} of ${ledger.open}`),
  );
  assert.deepEqual(wrong, []);
  assert.deepEqual([...hosts], []);
});

test("axe finds nothing in it, and a phone shows it whole", async () => {
  const { page } = await openPage(browser, phone);
  await page.goto(pathToFileURL(file).href);
  await page.locator(".chart[data-drawn]").first().waitFor();
  assert.deepEqual(await breaches(page), []);
  assert.ok((await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)) <= 0);
});

test("the summary is the first sheet, on A4 and on Letter", async () => {
  for (const format of ["A4", "Letter"]) {
    const { page } = await openPage(browser);
    await page.goto(pathToFileURL(file).href);
    await page.locator(".chart[data-drawn]").first().waitFor();
    const pdf = (await page.pdf({ format, printBackground: true })).toString("latin1");
    const sheets = Math.max(...[...pdf.matchAll(/\/Count (\d+)/g)].map((found) => Number(found[1])));
    // The summary, a sheet or two for each green, and how the figures were made.
    assert.ok(sheets >= data.seasons.length + 2, `${sheets} sheets`);
    assert.ok(sheets <= 2 * data.seasons.length + 3, `${sheets} sheets`);
    await page.context().close();
  }
});
