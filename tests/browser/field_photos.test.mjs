// Photos with a thumb: taken without a signal, kept with the place left out, and
// at the club exactly once, whatever is killed meanwhile.
import assert from "node:assert/strict";
import { createHash } from "node:crypto";
import { copyFile, mkdir, readFile, readdir } from "node:fs/promises";
import { join } from "node:path";
import { after, before, test } from "node:test";
import { ask } from "./baize.mjs";
import { clubIn, firstTime, journal, killBrowser, move, ownServer, phoneIn, run, senderOf } from "./field.mjs";

let server, phone, club;
const looks = process.env.BAIZE_LOOKS; // a folder for pictures of the screens
before(async () => {
  server = await ownServer();
  phone = await phoneIn(server.folder);
  club = (await ask(server.url, "clubs")).clubs[0].id;
  await firstTime(phone, server);
  // Who the observer is lies in localStorage, which the browser writes down some seconds later.
  await phone.page.waitForTimeout(6000);
  if (looks) await mkdir(looks, { recursive: true });
});
after(async () => {
  await phone?.context.close().catch(() => undefined);
  await server?.end();
});

const shot = async (page, name) => looks && page.screenshot({ path: `${looks}/${name}.png`, fullPage: name.startsWith("desk") });

/** A TIFF directory, big-endian (TIFF 6.0, section 2): tags with type, count and four bytes of value. */
const directory = (tags) => {
  const bytes = Buffer.alloc(2 + tags.length * 12 + 4);
  bytes.writeUInt16BE(tags.length, 0);
  tags.forEach(([tag, type, count, value], at) => {
    bytes.writeUInt16BE(tag, 2 + at * 12);
    bytes.writeUInt16BE(type, 4 + at * 12);
    bytes.writeUInt32BE(count, 6 + at * 12);
    value.copy(bytes, 10 + at * 12);
  });
  return bytes;
};
const short = (value) => Buffer.from([value >> 8, value & 255, 0, 0]);
const long = (value) => Buffer.from([0, 0, value >> 8, value & 255]);

/** Exif as a camera writes it (JEITA CP-3451C): turned by a quarter, with a maker and a place. */
function exif() {
  const maker = Buffer.from("Lens maker of nowhere\0");
  const first = 8;
  const gpsAt = first + 2 + 3 * 12 + 4;
  const makerAt = gpsAt + 2 + 2 * 12 + 4;
  const main = directory([[0x010f, 2, maker.length, long(makerAt)], [0x0112, 3, 1, short(6)], [0x8825, 4, 1, long(gpsAt)]]);
  const gps = directory([[1, 2, 2, Buffer.from("N\0\0\0")], [3, 2, 2, Buffer.from("W\0\0\0")]]);
  const tiff = Buffer.concat([Buffer.from("MM\0*"), long(first), main, gps, maker]);
  const content = Buffer.concat([Buffer.from("Exif\0\0"), tiff]);
  return Buffer.concat([Buffer.from([0xff, 0xe1]), Buffer.from([(content.length + 2) >> 8, (content.length + 2) & 255]), content]);
}

/** What a camera held upright gives: 2400 by 1200, the left half red, to be turned; `seed` makes it another one. */
async function cameraPicture(seed = 0) {
  const page = await phone.context.newPage();
  await page.goto("about:blank");
  const text = await page.evaluate((colour) => {
    const canvas = document.createElement("canvas");
    [canvas.width, canvas.height] = [2400, 1200];
    const brush = canvas.getContext("2d");
    brush.fillStyle = "#c00";
    brush.fillRect(0, 0, 1200, 1200);
    brush.fillStyle = `rgb(0, ${colour}, 200)`;
    brush.fillRect(1200, 0, 1200, 1200);
    return canvas.toDataURL("image/jpeg", 0.9).split(",")[1];
  }, seed);
  await page.close();
  const plain = Buffer.from(text, "base64");
  return Buffer.concat([plain.subarray(0, 2), exif(), plain.subarray(2)]);
}

/** The pictures in the phone's storage, read beside the page's own code. */
const pictures = async (page) =>
  (await page.evaluate(
    () =>
      new Promise((resolve, reject) => {
        const asked = indexedDB.open("baize-field");
        asked.onerror = () => reject(asked.error);
        asked.onsuccess = () => {
          const all = asked.result.transaction("pictures").objectStore("pictures").getAll();
          all.onsuccess = () => (asked.result.close(), resolve(all.result.map(({ photo, waits, bytes }) => ({ photo, waits, bytes: btoa(Array.from(new Uint8Array(bytes), (byte) => String.fromCharCode(byte)).join("")) }))));
        };
      }),
  )).map((one) => ({ ...one, bytes: Buffer.from(one.bytes, "base64") }));

async function take(bytes, type = "image/jpeg") {
  const { page } = phone;
  const chosen = page.waitForEvent("filechooser");
  await phone.tap(".thumb .go");
  await (await chosen).setFiles({ name: "camera.jpg", mimeType: type, buffer: bytes });
}
async function openPhotos() {
  await move(phone, "menu");
  await phone.tap(phone.page.locator(".menu .row", { hasText: "Photos" }));
  await phone.page.locator(".thumb .go", { hasText: "Take a photo" }).waitFor();
}
const entriesOf = async (kind) => (await journal(phone.page)).filter((entry) => entry.kind === kind);
const told = (of) => ask(server.url, `clubs/${club}/photos?of=${of}`).then(({ photos }) => photos);
async function until(what, holds) {
  for (let wait = 0; wait < 150; wait += 1) {
    if (await holds().catch(() => false)) return;
    await new Promise((next) => setTimeout(next, 200));
  }
  assert.fail(`${what} did not come`);
}

let visit;
test("a photo taken without a signal is kept upright, small, and without the place", async () => {
  const { page, context } = phone;
  await context.setOffline(true);
  await phone.tap(".thumb .go");
  await phone.ball([]);
  visit = (await entriesOf("visit"))[0].thing;
  await openPhotos();
  await shot(page, "phone_none");
  await take(await cameraPicture());
  await page.locator(".photos li").waitFor();
  const [entry] = await entriesOf("photo");
  const [{ photo, waits, bytes }] = await pictures(page);
  assert.deepEqual([entry.thing, entry.set.visit, waits], [photo, visit, 1]);
  assert.equal(entry.set.sha256, createHash("sha256").update(bytes).digest("hex"));
  assert.equal(entry.set.bytes, bytes.length);
  assert.ok(bytes.length < 400_000, `${bytes.length} bytes`);
  for (const said of ["Exif", "Lens maker", "ICC_PROFILE"]) assert.equal(bytes.indexOf(said), -1, said);
  const drawn = await page.evaluate(async (text) => {
    const picture = await createImageBitmap(await (await fetch(`data:image/jpeg;base64,${text}`)).blob()).catch(() => undefined);
    return picture && [picture.width, picture.height];
  }, bytes.toString("base64")).catch(() => undefined);
  // A turn by a quarter: upright it is 1200 by 2400, and 1600 is the longest side. The frame header tells (ITU-T T.81, B.2.2).
  const frame = bytes.indexOf(Buffer.from([0xff, 0xc0]));
  assert.deepEqual([bytes.readUInt16BE(frame + 7), bytes.readUInt16BE(frame + 5)], [800, 1600], String(drawn));
  await page.locator(".photos input").fill("brown ring, north edge");
  await page.locator(".photos input").blur();
  await until("the note", async () => (await entriesOf("photo")).at(-1).set.note === "brown ring, north edge");
  await page.waitForTimeout(300);
  await shot(page, "phone_one");
  await move(phone, "kept");
  await page.getByText("1 photo is only on this phone").waitFor();
  await shot(page, "phone_kept");
});

test("a file that is no picture is told so, and nothing is kept of it", async () => {
  await openPhotos();
  await take(Buffer.from("not a picture"), "image/jpeg");
  await phone.page.getByText("That file is no picture that this phone can read.").waitFor();
  assert.equal((await pictures(phone.page)).length, 1);
});

test("the journal as it stands carries the picture to another database", async () => {
  const { page } = phone;
  await page.goto(`${server.url}/field/raw.html`);
  await page.getByText(/^\d+ entries$/).waitFor();
  const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("button", { name: "Save as a file" }).click()]);
  const saved = join(server.folder, "journal.json");
  await copyFile(await download.path(), saved);
  const { photos, entries } = JSON.parse(await readFile(saved, "utf8"));
  const [{ photo, bytes }] = await pictures(page);
  assert.deepEqual(photos, [{ photo, jpeg: bytes.toString("base64") }]);
  assert.deepEqual(entries, await journal(page));
  const other = join(server.folder, "other.sqlite3");
  const out = join(server.folder, "photos");
  await clubIn(other);
  await run(process.env.BAIZE_PROGRAM, ["import", saved, "--db", other]);
  await run(process.env.BAIZE_PROGRAM, ["photos", "--db", other, "--club", club, "--out", out]);
  const [name] = (await readdir(out)).filter((one) => one.endsWith(".jpg"));
  assert.deepEqual(await readFile(join(out, name)), bytes);
  await page.goto(`${server.url}/field/#photos`);
  await page.locator(".photos li").waitFor();
});

test("the browser killed right after the touch: the photo is there again", async () => {
  await take(await cameraPicture(90));
  await phone.page.locator(".photos li").nth(1).waitFor();
  await killBrowser(phone.context);
  phone = await phoneIn(server.folder);
  await phone.context.setOffline(true);
  await phone.page.goto(`${server.url}/field/#photos`);
  await phone.page.locator(".photos li").nth(1).waitFor();
  assert.equal((await pictures(phone.page)).length, 2);
  assert.equal((await entriesOf("photo")).length, 3, "two photos and a note");
});

test("the server dies between entry and picture; afterwards each photo is at its visit once", async () => {
  const { page, context } = phone;
  await move(phone, "summary");
  await phone.tap(".thumb .go");
  await page.locator(".next-green").waitFor();
  let broken = 0;
  // The entries arrive, and then the power goes.
  await context.route("**/photos/*", async (route) => {
    if (broken === 0) {
      broken += 1;
      await server.kill();
    }
    await route.continue().catch(() => undefined);
  });
  await context.setOffline(false);
  await until("the kill", async () => broken > 0);
  await context.unroute("**/photos/*");
  assert.equal((await pictures(page)).filter(({ waits }) => waits).length, 2);
  await server.start();
  assert.deepEqual((await told(visit)).map(({ here }) => here), [false, false]);
  await page.locator(".standing.accepted").waitFor({ timeout: 60_000 });
  const photos = await told(visit);
  assert.deepEqual(photos.map(({ here }) => here), [true, true]);
  for (const { photo, sha256 } of photos) {
    const answer = await fetch(`${server.url}/api/v1/clubs/${club}/photos/${photo}`);
    const bytes = Buffer.from(await answer.arrayBuffer());
    assert.equal(createHash("sha256").update(bytes).digest("hex"), sha256);
    assert.equal(bytes.indexOf("Exif"), -1);
  }
  await move(phone, "kept");
  await phone.tap(".thumb .go");
  await page.locator(".standing.accepted").waitFor();
  assert.equal((await told(visit)).length, 2);
  assert.equal((await ask(server.url, `clubs/${club}/photos`)).photos.length, 2);
});

test("the visit's page at the desk shows them, with time, observer and note; a touch opens the whole picture", async () => {
  const desk = await phone.context.browser()?.newPage() ?? await phone.context.newPage();
  await desk.setViewportSize({ width: 1440, height: 900 });
  await desk.goto(`${server.url}/#/${club}/records/${visit}`);
  await desk.locator(".photo img").nth(1).waitFor();
  await desk.waitForFunction(() => [...document.querySelectorAll(".photo img")].every((one) => one.complete && one.naturalWidth === 800));
  assert.equal(await desk.locator(".photo img").count(), 2);
  assert.match(await desk.locator(".photo figcaption").first().textContent(), /\d\d:\d\d .*brown ring, north edge/);
  await shot(desk, "desk_visit");
  const [opened] = await Promise.all([desk.context().waitForEvent("page"), desk.locator(".photo a").first().click()]);
  await opened.waitForLoadState();
  assert.equal(await opened.evaluate(() => document.contentType), "image/jpeg");
  await opened.close();
  await desk.goto(`${server.url}/#/${club}/photos`);
  await desk.locator(".photo img").nth(1).waitFor();
  await desk.waitForTimeout(300);
  await shot(desk, "desk_photos");
  await desk.emulateMedia({ media: "print" });
  await shot(desk, "desk_print");
  await desk.close();
});

test("a work's photo is taken from the diary and stands on the work's page", async () => {
  const { page } = phone;
  await move(phone, "work/topdressing");
  await phone.tap(".thumb .go");
  await phone.tap(page.locator(".wide", { hasText: "Photos" }));
  await page.locator(".thumb .go", { hasText: "Take a photo" }).waitFor();
  await take(await cameraPicture(180));
  await page.locator(".photos li").waitFor();
  const work = (await entriesOf("work"))[0].thing;
  await until("the work's picture", async () => (await told(work))[0]?.here === true);
  await page.goto(`${server.url}/#/${club}/works/${work}`);
  await page.locator(".photo img").waitFor();
  assert.equal(await page.locator(".photo img").count(), 1);
  await shot(page, "phone_work_page");
  await page.goto(`${server.url}/field/`);
  await page.locator(".next-green").waitFor();
});

test("a phone that is full says so, and keeps neither entry nor picture", async () => {
  const { page } = phone;
  await phone.tap(".thumb .go");
  await page.locator(".release").waitFor();
  await openPhotos();
  const before = (await journal(page)).length;
  const picture = await cameraPicture(20);
  // The browser looks at a quota now and then only: the storage is made to answer as a full one does.
  await page.evaluate(() => {
    const { add } = IDBObjectStore.prototype;
    globalThis.makeRoom = () => (IDBObjectStore.prototype.add = add);
    IDBObjectStore.prototype.add = function (...all) {
      if (this.name !== "pictures") return add.apply(this, all);
      throw new DOMException("no room", "QuotaExceededError");
    };
  });
  await take(picture);
  await page.getByText("The phone did not keep it").waitFor();
  await shot(page, "phone_full");
  await page.evaluate(() => globalThis.makeRoom());
  await phone.tap(".told .go");
  assert.equal((await journal(page)).length, before);
  await take(picture);
  await page.locator(".photos li").waitFor();
});

test("the browser sends the picture that a closed page left", async () => {
  const { context } = phone;
  const newest = (await entriesOf("photo")).at(-1).thing;
  await until("the last picture", async () => (await pictures(phone.page)).every(({ waits }) => !waits));
  await context.setOffline(true);
  await openPhotos();
  await take(await cameraPicture(200));
  await until("one more", async () => (await entriesOf("photo")).at(-1).thing !== newest);
  const last = (await entriesOf("photo")).at(-1);
  const { letSend } = await senderOf(context, server.url);
  const { wrong } = phone;
  await phone.page.close();
  await context.setOffline(false);
  await letSend();
  await until("the picture", async () => (await told(last.set.visit)).some(({ photo, here }) => photo === last.thing && here));
  assert.deepEqual(wrong, []);
});
