// People from end to end: signed in, invited by link, a visit from the phone, the
// phone cut off and let in again, and a committee that only reads.
import assert from "node:assert/strict";
import { spawn } from "node:child_process";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { breaches, heading, openPage, phone as phoneSize, serve, startBrowser } from "./baize.mjs";
import { journal, phoneIn } from "./field.mjs";

const program = process.env.BAIZE_PROGRAM;
const larch = new URL("../clubs/larch_hollow", import.meta.url).pathname;
const shots = process.env.BAIZE_SHOTS;
let folder, database, url, child, browser;

function run(words, input = "") {
  return new Promise((resolve, reject) => {
    const started = spawn(program, [...words, "--db", database], { stdio: ["pipe", "pipe", "inherit"] });
    let said = "";
    started.stdout.on("data", (text) => (said += text));
    started.once("exit", (code) => (code === 0 ? resolve(said) : reject(new Error(`${words[0]} ended with ${code}: ${said}`))));
    started.stdin.end(input);
  });
}

before(async () => {
  folder = await mkdtemp(join(tmpdir(), "baize-people-"));
  database = join(folder, "club.sqlite3");
  await run(["import", larch]);
  await run(["people", "add", "Ann Head", "--role", "head_greenkeeper", "--password-from-input"], "seven green pins\n");
  ({ child, url } = await serve(program, ["--db", database, "--people", "--port", "0"]));
  browser = await startBrowser();
});
after(async () => {
  await phone?.context.close();
  await browser?.close();
  child?.kill("SIGTERM");
  await rm(folder, { recursive: true, force: true });
});

const shot = (page, name) => shots && page.screenshot({ path: join(shots, `${name}.png`), fullPage: true });
/** Answers that refuse are noted by the browser; here they are what is wanted. */
const slips = (wrong) => wrong.filter((text) => !/status of 4\d\d/.test(text));

async function signIn(page, name, password) {
  await heading(page, "Sign in").waitFor();
  await page.getByLabel("Name").fill(name);
  await page.getByLabel("Password").fill(password);
  await page.getByRole("button", { name: "Sign in" }).click();
}

let head, invitation, phone, written;

test("nobody sees anything before signing in; a wrong password is told in one sentence", async () => {
  head = await openPage(browser);
  const { page } = head;
  await page.goto(url);
  await signIn(page, "Ann Head", "not this one at all");
  await page.getByRole("alert").getByText(/name or password/).waitFor();
  await shot(page, "sign_in_desk");
  assert.deepEqual(await breaches(page), []);
  await page.getByLabel("Password").fill("seven green pins");
  await page.getByRole("button", { name: "Sign in" }).click();
  await page.locator(".card").first().waitFor();
  await page.locator(".signed-in summary").click();
  await page.getByText("Signed in as Ann Head").waitFor();
  await shot(page, "signed_in_desk");
  await page.locator(".signed-in summary").click();
});

test("an invitation as a code to scan, accepted on a phone", async () => {
  const { page } = head;
  await page.getByRole("link", { name: "People" }).click();
  await heading(page, "People").waitFor();
  await page.getByRole("button", { name: "Make an invitation" }).click();
  const picture = page.getByAltText("Scan this with the phone's camera");
  await picture.waitFor();
  assert.ok(await picture.evaluate((image) => image.complete && image.naturalWidth > 0), "the code is drawn");
  invitation = await page.locator(".link-text").textContent();
  assert.match(invitation, /\/#\/\+join\/[\w-]{43}$/);
  await shot(page, "people_desk");
  assert.deepEqual(await breaches(page), []);

  phone = await phoneIn(folder);
  await phone.page.goto(invitation);
  await heading(phone.page, /^Join /).waitFor();
  await shot(phone.page, "join_phone");
  assert.deepEqual(await breaches(phone.page), []);
  await phone.page.getByLabel("Your name").fill("Bea");
  await phone.page.getByLabel("A new password").fill("nine red flags");
  await phone.page.getByRole("button", { name: "Join" }).click();
  await heading(phone.page, "You are in").waitFor();
  await shot(phone.page, "joined_phone");
  await phone.page.getByRole("link", { name: "Go on the green with this phone" }).click();
  await phone.page.locator(".row").first().waitFor();
});

async function visit(balls) {
  const { page } = phone;
  await phone.tap(".thumb .go");
  await page.locator(".release").waitFor();
  for (let ball = 0; ball < balls; ball += 1) {
    await phone.ball();
    await phone.inches(3);
  }
  await phone.tap(".thumb .go");
  await page.locator(".summary").waitFor();
  await phone.tap(".thumb .go");
  await page.locator(".next-green").waitFor();
}

test("a visit goes from the phone to the records under its writer's name", async () => {
  const { page } = phone;
  await phone.tap(page.locator(".row").first());
  await page.locator(".next-green").waitFor();
  await visit(6);
  await page.goto(`${url}/field/#kept`);
  await phone.tap(".thumb .go");
  await page.waitForFunction(() => document.querySelectorAll(".visit-item.accepted").length === 1);
  const ask = (path) => head.page.evaluate(async (of) => (await fetch(`api/v1/${of}`)).json(), path);
  const club = (await ask("clubs")).clubs[0].id;
  const today = (await journal(page)).find((entry) => entry.set.day).set.day;
  const { visits } = await ask(`clubs/${club}/visits?from=${today}`);
  assert.equal(visits.length, 1);
  const { revisions } = await ask(`clubs/${club}/visits/${encodeURIComponent(visits[0].visit)}/history`);
  assert.equal(revisions[0].author, "Bea");
});

test("the phone is cut off: refused at once, and what it writes stays on it", async () => {
  const { page } = head;
  await page.reload();
  await page.getByRole("button", { name: "Cut off the phone of Bea" }).click();
  await page.getByText("not signed in anywhere").waitFor();
  await shot(page, "cut_off_desk");

  await phone.page.clock.setSystemTime(new Date(Date.now() + 12 * 60_000));
  await phone.page.goto(`${url}/field/#home`);
  await phone.page.locator(".next-green").waitFor();
  await visit(6);
  await phone.page.goto(`${url}/field/#kept`);
  await phone.tap(".thumb .go");
  await phone.page.getByRole("link", { name: "Sign in again to send" }).waitFor();
  await shot(phone.page, "sign_in_again_phone");
  written = (await journal(phone.page)).length;
  assert.equal(await phone.page.locator(".visit-item.kept").count(), 1);
});

test("signed in again, it sends what it kept", async () => {
  const { page } = phone;
  await page.getByRole("link", { name: "Sign in again to send" }).click();
  await shot(page, "sign_in_phone");
  await signIn(page, "Bea", "nine red flags");
  await page.waitForURL(/\/field\//);
  await page.goto(`${url}/field/#kept`);
  await page.waitForFunction(() => document.querySelectorAll(".visit-item.accepted").length === 2);
  assert.equal((await journal(page)).length, written);
  assert.deepEqual(slips(phone.wrong), []);
});

test("a committee reads by its link, changes nothing, and is cut off", async () => {
  const { page } = head;
  await page.getByLabel("Whom it is for").fill("Committee");
  await page.getByRole("button", { name: "Make a link" }).click();
  const link = await page.locator(".link-text").textContent();
  await page.getByRole("button", { name: "Done" }).click();

  const committee = await openPage(browser, phoneSize);
  await committee.page.goto(link);
  await committee.page.locator(".card").first().waitFor();
  assert.ok(!(await committee.page.evaluate(() => location.href)).includes("link"), "the token has left the address");
  await shot(committee.page, "committee_phone");
  assert.deepEqual(await breaches(committee.page), []);
  for (const name of ["People", "Trials", "On the green"]) assert.equal(await committee.page.getByRole("link", { name, exact: true }).count(), 0, name);
  await committee.page.getByRole("link", { name: "Records" }).click();
  await heading(committee.page, "Visits").waitFor();
  assert.equal(await committee.page.getByRole("link", { name: "Bring records in" }).count(), 0);
  const refused = await committee.page.evaluate(async () => {
    const { clubs } = await (await fetch("api/v1/clubs")).json();
    const answer = await fetch(`api/v1/clubs/${clubs[0].id}/import`, { method: "POST", headers: { "Content-Type": "application/json" }, body: "{}" });
    return answer.status;
  });
  assert.equal(refused, 403);

  await page.getByRole("button", { name: "Cut off: Committee" }).click();
  await page.getByText(/^Committee, until/).waitFor({ state: "detached" });
  await committee.page.reload();
  await heading(committee.page, "Sign in").waitFor();
  assert.deepEqual(slips(committee.wrong), []);
});

test("out", async () => {
  const { page, wrong } = head;
  await page.locator(".signed-in summary").click();
  await page.getByRole("button", { name: "Sign out" }).click();
  await heading(page, "Sign in").waitFor();
  assert.deepEqual(slips(wrong), []);
});
