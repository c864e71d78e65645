// The way a keeper goes: greens, a green's year, a work, a visit, its rolls.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { ask, drawn, heading, openPage, phone, desk, startBrowser, startServer } from "./baize.mjs";

let server, browser, club, review;
before(async () => {
  server = await startServer();
  browser = await startBrowser();
  club = (await ask(server.url, "clubs")).clubs[0].id;
  review = await ask(server.url, `clubs/${club}/greens`);
});
after(async () => {
  await browser?.close();
  server?.stop();
});

for (const [name, viewport] of [["desk", desk], ["phone", phone]]) {
  test(`from the greens to a roll and back, by clicks, on a ${name}`, async () => {
    const { page, wrong, hosts } = await openPage(browser, viewport);
    await page.goto(server.url);
    await heading(page, review.headline).waitFor();
    assert.equal(await page.locator(".card").count(), review.greens.length);

    const card = review.greens.find((one) => one.last_work && one.score !== undefined);
    await page.locator(".cards").getByRole("link", { name: card.name, exact: true }).click();
    await page.waitForURL(/greens\/[^/]+\/\d{4}$/);
    await drawn(page);
    const year = Number(/(\d{4})$/.exec(page.url())[1]);
    const season = await ask(server.url, `clubs/${club}/greens/${encodeURIComponent(card.green)}/years/${year}`);
    await heading(page, `${card.name} in ${year}`).waitFor();
    const counts = await page.locator(".ledger-key strong").allTextContents();
    const { ledger } = season;
    assert.deepEqual(
      counts.map(Number),
      [ledger.measured_true, ledger.measured_not, ledger.between_true, ledger.unmeasured, ledger.closed],
    );
    assert.equal(await page.locator(".calendar g").count(), ledger.days.length);

    const loss = season.losses.at(-1);
    await page.locator(".year-works .work-list a").last().click();
    await drawn(page);
    const work = await ask(server.url, `clubs/${club}/works/${encodeURIComponent(loss.work)}`);
    await page.getByText(work.sentence).waitFor();
    assert.equal(await page.locator(".multiples figure").count(), work.greens.length);
    await page.getByRole("radio", { name: /^First day at the standard/ }).check();
    await page.getByText(/First day at the standard, the first visited|first day at the standard, the first visited/).waitFor();

    const withVisit = work.greens.findIndex((green) => green.loss.recovery[0].visits.length > 0);
    await page.locator(".numbers > summary").nth(withVisit).click();
    const rests = work.greens[withVisit].loss.recovery[0].visits[0];
    await page.locator(".numbers[open]").getByRole("link", { name: rests, exact: true }).first().click();
    const detail = await ask(server.url, `clubs/${club}/visits/${encodeURIComponent(rests)}`);
    await page.getByRole("heading", { name: "The rolls" }).waitFor();
    const rolls = detail.visit.runs.reduce((sum, run) => sum + run.rolls.length + (run.total === undefined ? 0 : 1), 0);
    const shown = page.getByRole("region", { name: /^Spot / }).locator("tbody tr");
    assert.equal(await shown.count(), rolls);
    const { file, line } = detail.visit.source;
    if (file) await page.getByText(`${file}, line ${line}`).waitFor();

    await page.goBack();
    await page.getByText(work.sentence).waitFor();
    assert.deepEqual(wrong, []);
    assert.deepEqual([...hosts], [new URL(server.url).host], "nothing is asked of elsewhere");
  });
}

test("a year's numbers stand under the picture, every visit a link", async () => {
  const { page, wrong } = await openPage(browser);
  const card = review.greens.find((one) => one.last_visit);
  const year = card.last_visit.slice(0, 4);
  const season = await ask(server.url, `clubs/${club}/greens/${encodeURIComponent(card.green)}/years/${year}`);
  await page.goto(`${server.url}/#/${encodeURIComponent(club)}/greens/${encodeURIComponent(card.green)}/${year}`);
  await drawn(page);
  await page.getByText("Visits of the year", { exact: true }).first().click();
  const rows = page.getByRole("region", { name: "Visits of the year" }).locator("tbody tr");
  assert.equal(await rows.count(), season.visits.length);
  await rows.first().getByRole("link").click();
  await page.getByRole("heading", { name: "Where it came from" }).waitFor();
  assert.deepEqual(wrong, []);
});

test("records are found by green and day", async () => {
  const { page, wrong } = await openPage(browser);
  await page.goto(`${server.url}/#/${encodeURIComponent(club)}/records`);
  await heading(page, "Visits").waitFor();
  const card = review.greens.at(-1);
  await page.getByRole("combobox", { name: "Green" }).selectOption(card.green);
  const of = `clubs/${club}/visits?green=${encodeURIComponent(card.green)}`;
  const all = await ask(server.url, of);
  await page.getByText(`${all.total} visits`, { exact: true }).waitFor();
  const day = all.visits[0].day;
  await page.getByLabel("From").fill(day);
  const some = await ask(server.url, `${of}&from=${day}`);
  await page.getByText(`${some.total} visit${some.total === 1 ? "" : "s"}`, { exact: true }).waitFor();
  assert.equal(await page.locator(".visits li").count(), some.total);
  await page.getByRole("link", { name: "Show all" }).click();
  await page.getByRole("link", { name: "Older" }).click();
  await page.getByText(/^51 to 100 of /).waitFor();
  assert.deepEqual(wrong, []);
});

test("units and decimal mark are kept", async () => {
  const { page } = await openPage(browser);
  await page.goto(server.url);
  await page.getByText("Settings").click();
  await page.getByLabel("Lengths in").selectOption("m");
  await page.getByLabel("Decimal mark").selectOption(",");
  const card = review.greens.find((one) => one.speed);
  const wanted = `${card.speed.speed_m.toFixed(2).replace(".", ",")}\u00a0m`;
  await page.getByText(wanted).first().waitFor();
  await page.reload();
  await page.getByText(wanted).first().waitFor();
});
