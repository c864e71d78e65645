// The pages that estimate and compare: each opens with its sentence, and answers a click.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { ask, drawn, heading, openPage, phone, desk, startBrowser, startServer } from "./baize.mjs";

const example = new URL("../clubs/trial_example/", import.meta.url).pathname;

let server, browser, club, at;
before(async () => {
  server = await startServer();
  browser = await startBrowser();
  club = (await ask(server.url, "clubs")).clubs[0].id;
  at = (place) => `${server.url}/#/${encodeURIComponent(club)}/${place}`;
});
after(async () => {
  await browser?.close();
  server?.stop();
});

test("methods: the sentence, the medians, and another question by a choice", async () => {
  const { page, wrong } = await openPage(browser);
  await page.goto(at("methods"));
  await heading(page, "Methods").waitFor();
  const all = await ask(server.url, `clubs/${club}/methods`);
  await page.getByText(all.sentence).first().waitFor();
  await drawn(page);
  assert.equal(await page.getByRole("region", { name: /^In brackets/ }).locator("tbody tr").count(), all.methods.length);
  const kind = all.methods[0].work_list[0].work;
  const { work } = await ask(server.url, `clubs/${club}/works/${encodeURIComponent(kind)}`);
  await page.getByRole("combobox", { name: "Kind of work" }).selectOption(work.kind);
  await page.waitForURL(new RegExp(`kind=${work.kind}`));
  const some = await ask(server.url, `clubs/${club}/methods?kind=${work.kind}`);
  await page.getByText(some.sentence).first().waitFor();
  await page.getByRole("combobox", { name: "Back means" }).selectOption("lasting");
  const lasting = await ask(server.url, `clubs/${club}/methods?kind=${work.kind}&definition=lasting`);
  await page.getByText(lasting.sentence).first().waitFor();
  assert.deepEqual(wrong, []);
});

test("a green's year: estimated day by day, with a forecast", async () => {
  const { page, wrong } = await openPage(browser, phone);
  const review = await ask(server.url, `clubs/${club}/greens`);
  const { green } = review.greens[0];
  const year = Number(review.today.slice(0, 4));
  await page.goto(at(`greens/${encodeURIComponent(green)}/${year}`));
  const model = await ask(server.url, `clubs/${club}/greens/${encodeURIComponent(green)}/years/${year}/model`);
  await page.getByText(model.sentence).first().waitFor();
  await page.getByRole("button", { name: "Check the model" }).click();
  const checks = await ask(server.url, `clubs/${club}/model/checks`);
  for (const finding of [checks.surprises, checks.clocks, checks.leaning]) {
    await page.getByText(finding.sentence).first().waitFor();
  }
  assert.deepEqual(wrong, []);
});

for (const [place, title] of [["observers", "Observers"], ["consistency", "Consistency"]]) {
  test(`${place}: the answer's own sentence stands first`, async () => {
    const { page, wrong } = await openPage(browser, desk);
    await page.goto(at(place));
    await page.getByRole("heading", { level: 1 }).waitFor();
    const answer = await ask(server.url, `clubs/${club}/${place}`);
    await page.getByText(answer.sentence).first().waitFor();
    await drawn(page);
    await page.getByText("How this was computed").first().click();
    assert.deepEqual(wrong, [], title);
  });
}

test("observers: on the phone a pair's four columns are in view", async () => {
  const { page, wrong } = await openPage(browser, phone);
  await page.goto(at("observers"));
  const pair = page.locator(".multiples").filter({ hasText: "less" }).first();
  await pair.getByText("The numbers").first().click();
  const table = pair.locator(".table").first();
  await table.getByText("Lower limit").waitFor();
  const beyond = await table.evaluate((one) => one.scrollWidth - one.clientWidth);
  assert.ok(beyond <= 0, `${beyond} px of the table are out of view`);
  assert.deepEqual(wrong, []);
});

test("trials: drawn by lot, then the records compared", async () => {
  const { page, wrong } = await openPage(browser);
  await page.goto(at("trials"));
  await page.getByLabel("Name of the trial").fill("tines");
  await page.getByLabel(/^Treatments/).first().fill("narrow, wide, none");
  await page.getByRole("button", { name: "Draw the layout" }).click();
  await page.locator(".trial-map img, .trial-map svg").first().waitFor();
  await page.getByLabel("The plan").setInputFiles(`${example}trial.csv`);
  await page.getByLabel("The records").setInputFiles(`${example}trial_records.csv`);
  await page.getByRole("button", { name: "Compare" }).click();
  await page.locator(".worked-out .answer").nth(1).waitFor();
  await page.getByLabel("The plan").setInputFiles(`${example}trial_records.csv`);
  await page.getByRole("button", { name: "Compare" }).click();
  await page.getByRole("alert").first().waitFor();
  assert.deepEqual(wrong.filter((text) => !/status of 4\d\d/.test(text)), []);
});

test("trials: a plan alone is compared by the club's own rolls", async () => {
  const { page, wrong } = await openPage(browser);
  // Two greens that the club keeps as halves: each half is a plot.
  const designed = await fetch(`${server.url}/api/v1/trials/design`, {
    method: "POST",
    headers: { "Content-Type": "application/json" },
    body: JSON.stringify({ trial: "halves", treatments: ["narrow", "wide"], blocks: 2, greens: ["4", "11"], halves: ["front", "back"] }),
  });
  const { plan_csv } = await designed.json();
  await page.goto(at("trials"));
  await page.getByLabel("The plan").setInputFiles({ name: "trial.csv", mimeType: "text/csv", buffer: Buffer.from(plan_csv) });
  await page.getByLabel("Day of the treatment").fill("2025-05-05");
  await page.getByRole("button", { name: "Compare" }).click();
  await page.locator(".worked-out .answer").first().waitFor();
  await page.getByText("How this was computed").first().click();
  assert.deepEqual(wrong, []);
});
