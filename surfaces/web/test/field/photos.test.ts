// Photos on the phone: kept with their entry, sent after it, each picture to the
// server once and whole, whatever breaks.
import "fake-indexeddb/auto";
import { createHash, randomBytes } from "node:crypto";
import { openDB } from "idb";
import { describe, expect, it } from "vitest";
import { Acts } from "../../src/field/capture/acts";
import { Book } from "../../src/field/data/book";
import { keepClub } from "../../src/field/data/club";
import { handOverFile } from "../../src/field/phone";
import { change, keepPhoto, photosOf } from "../../src/field/photos/album";
import { base64 } from "../../src/field/photos/in_file";
import { bare } from "../../src/field/photos/jpeg";
import { sha256 } from "../../src/field/photos/sha256";
import { Refused, SignedOut, type Server } from "../../src/field/sync/server";
import { Sync } from "../../src/field/sync/sync";
import { club, ModelServer } from "./plays/server";

const week = 7 * 86_400_000;
const wanted = { club: "c", green: "7", spot: "a", first: "out", observer: "ab", mode: "scores" } as const;
const bytes = (...all: number[]) => new Uint8Array(all);

/** A phone before a server whose pictures may be broken off; `time` moves its clock. */
let count = 0;
async function phone(model: ModelServer, picture?: Server["picture"]) {
  const clock = { time: Date.UTC(2026, 4, 3, 7) };
  const now = () => (clock.time += 5);
  const name = `photos ${(count += 1)}`;
  const server = { ...model.reachedBy(new Set(), () => "well", () => 0), ...(picture && { picture }) };
  const open = async () => {
    const book = await Book.open(now, name);
    await keepClub(book, { club, at: 0 });
    return { book, acts: new Acts(book, now), sync: new Sync(book, server, now) };
  };
  return { clock, server, open, ...(await open()) };
}

describe("SHA-256", () => {
  it("is what OpenSSL says, at every length around the blocks", () => {
    for (const size of [0, 1, 3, 54, 55, 56, 57, 63, 64, 65, 119, 120, 128, 1000, 100_003]) {
      const data = randomBytes(size);
      expect(sha256(new Uint8Array(data)), String(size)).toBe(createHash("sha256").update(data).digest("hex"));
    }
  });
  it("is that of the standard's own example", () => {
    // FIPS 180-4 names the example of "abc" at csrc.nist.gov, "Examples with Intermediate Values".
    expect(sha256(new TextEncoder().encode("abc"))).toBe("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  });
});

describe("a picture that tells nothing else", () => {
  const part = (marker: number, text: string) => {
    const said = [...text].map((letter) => letter.charCodeAt(0));
    return [0xff, marker, 0, said.length + 2, ...said];
  };
  const jfif = part(0xe0, "JFIF\0\x01\x02\0\0\x01\0\x01\0\0");
  const scan = [...part(0xda, "\x01"), 1, 2, 0xff, 0, 0xff, 0xe1, 3, 0xff, 0xd9];
  it("keeps what a reader needs and drops the rest, in front of the picture", () => {
    const table = part(0xdb, "table");
    const adobe = part(0xee, "Adobe\0d\0\0\0\0\x01");
    const whole = [0xff, 0xd8, ...jfif, ...part(0xe1, "Exif\0\0MM"), ...part(0xe2, "ICC_PROFILE"), ...adobe, ...part(0xfe, "by me"), ...table, ...part(0xe0, "JFXX\0"), ...scan];
    expect([...bare(bytes(...whole))]).toEqual([0xff, 0xd8, ...jfif, ...adobe, ...table, ...scan]);
  });
  it("leaves a bare one as it is", () => {
    const whole = [0xff, 0xd8, ...jfif, ...scan];
    expect([...bare(bytes(...whole))]).toEqual(whole);
  });
});

describe("taking a photo", () => {
  it("keeps the entry and the picture in one transaction, there again when the page died", async () => {
    const one = await phone(new ModelServer());
    const session = await one.acts.start(wanted);
    const photo = await keepPhoto(one.book, "c", "ab", { visit: session.visit }, bytes(1, 2, 3), one.clock.time);
    one.book.close();
    const { book } = await one.open();
    expect(photosOf(book, { visit: session.visit })).toMatchObject([{ photo, fields: { visit: session.visit, bytes: 3, sha256: sha256(bytes(1, 2, 3)) } }]);
    expect([...new Uint8Array((await book.picture(photo))?.bytes ?? new ArrayBuffer(0))]).toEqual([1, 2, 3]);
    expect(book.picturesWaiting()).toEqual([photo]);
  });
  it("keeps neither where the storage takes no more", async () => {
    const one = await phone(new ModelServer());
    const session = await one.acts.start(wanted);
    const add = IDBObjectStore.prototype.add;
    IDBObjectStore.prototype.add = function (...all) {
      if (this.name === "pictures") throw new DOMException("full", "QuotaExceededError");
      return add.apply(this, all);
    };
    await expect(keepPhoto(one.book, "c", "ab", { visit: session.visit }, bytes(1), 0)).rejects.toThrow("full");
    IDBObjectStore.prototype.add = add;
    one.book.close();
    const { book } = await one.open();
    expect([book.things("photo"), book.pictures]).toEqual([[], 0]);
  });
  it("is taken back by one touch, and noted", async () => {
    const { book, acts, clock } = await phone(new ModelServer());
    const session = await acts.start(wanted);
    const photo = await keepPhoto(book, "c", "ab", { visit: session.visit }, bytes(9), clock.time);
    await change(book, "c", "ab", photo, { note: "north edge" });
    expect(photosOf(book, { visit: session.visit })[0]?.fields.note).toBe("north edge");
    expect([await acts.undo(session), await acts.undo(session)]).toEqual(["note", "photo"]);
    expect([photosOf(book, { visit: session.visit }), book.picturesWaiting()]).toEqual([[], []]);
  });
  it("keeps a visit without a ball from being none", async () => {
    const { book, acts, clock } = await phone(new ModelServer());
    const session = await acts.start(wanted);
    await keepPhoto(book, "c", "ab", { visit: session.visit }, bytes(9), clock.time);
    await acts.finish(session);
    expect(book.thing(session.visit)?.values).toMatchObject({ done: true });
  });
  it("leaves a journal of before as it was", async () => {
    const name = "photos before";
    const old = await openDB(name, 1, {
      upgrade(fresh) {
        fresh.createObjectStore("entries", { keyPath: "seq", autoIncrement: true }).createIndex("id", "entry.id", { unique: true });
        for (const [store, keyPath] of [["acknowledged", "id"], ["visits", "visit"], ["received", "id"]] as const) fresh.createObjectStore(store, { keyPath });
        fresh.createObjectStore("kept");
      },
    });
    const entry = { id: "0190a0b0-0000-7000-8000-000000000001", phone: "p", at: "2026-05-03T07:00:00.000Z", by: "ab", kind: "visit", thing: "v", set: { green: "7" }, over: [] };
    await old.put("entries", { club: "c", deed: "start", touch: "t", entry });
    await old.put("kept", "p", "phone");
    await old.put("acknowledged", { id: entry.id, kept: true });
    old.close();
    const book = await Book.open(Date.now, name);
    expect([book.phone, book.rows.length, book.waiting(), book.thing("v")?.values]).toEqual(["p", 1, [], { green: "7" }]);
    await keepPhoto(book, "c", "ab", { visit: "v" }, bytes(1), 0);
    expect(book.pictures).toBe(1);
  });
});

describe("bringing pictures to the server", () => {
  it("sends the entry first, and a picture that broke off again, once it is kept no more", async () => {
    const model = new ModelServer();
    let failures = 2;
    const asked: string[] = [];
    const sent: Server["picture"] = async (of, photo, data) => {
      asked.push(photo);
      // The server dies after the entry: once before the picture is written, once after.
      if (failures === 2) return void (failures -= 1), Promise.reject(new TypeError("Failed to fetch"));
      await model.reachedBy(new Set(), () => "well", () => 0).picture(of, photo, data);
      if (failures === 1) return void (failures -= 1), Promise.reject(new TypeError("Failed to fetch"));
    };
    const one = await phone(model, sent);
    const session = await one.acts.start(wanted);
    const photo = await keepPhoto(one.book, "c", "ab", { visit: session.visit }, bytes(4, 5), one.clock.time);
    await one.sync.run();
    expect([one.sync.state, one.book.waiting(), one.book.picturesWaiting(), model.pictures.size]).toEqual(["offline", [], [photo], 0]);
    await one.sync.run();
    expect([one.sync.state, one.book.picturesWaiting(), model.pictures.size]).toEqual(["offline", [photo], 1]);
    one.book.close();
    const { book, sync } = await one.open();
    await sync.run();
    expect([sync.state, book.picturesWaiting(), model.pictures.get(photo)]).toEqual(["idle", [], sha256(bytes(4, 5))]);
    await sync.run();
    expect(asked).toEqual([photo, photo, photo]);
  });
  it("brings two phones' photos of one visit together without a conflict", async () => {
    const model = new ModelServer();
    const [one, two] = [await phone(model), await phone(model)];
    const session = await one.acts.start(wanted);
    await keepPhoto(one.book, "c", "ab", { visit: session.visit }, bytes(1), one.clock.time);
    await one.sync.run();
    await two.sync.run();
    await keepPhoto(two.book, "c", "cd", { visit: session.visit }, bytes(2), two.clock.time);
    for (const { sync } of [two, one]) await sync.run();
    for (const { book } of [one, two]) expect(photosOf(book, { visit: session.visit }).map(({ fields }) => fields.sha256).sort()).toEqual([sha256(bytes(1)), sha256(bytes(2))].sort());
    expect(model.pictures.size).toBe(2);
  });
  it("never sends one that was taken out before", async () => {
    const model = new ModelServer();
    const { book, acts, sync, clock } = await phone(model);
    const session = await acts.start(wanted);
    await keepPhoto(book, "c", "ab", { visit: session.visit }, bytes(1), clock.time);
    await acts.undo(session);
    await sync.run();
    expect([sync.state, book.waiting(), model.pictures.size]).toEqual(["idle", [], 0]);
  });
  it("keeps no other waiting where one is refused, and asks again when the page is opened anew", async () => {
    const model = new ModelServer();
    const bad = new Set<string>();
    const taken: string[] = [];
    const one = await phone(model, async (_, photo) => {
      if (bad.has(photo)) throw new Refused("It is no picture.");
      taken.push(photo);
    });
    const session = await one.acts.start(wanted);
    const [first, second] = [
      await keepPhoto(one.book, "c", "ab", { visit: session.visit }, bytes(1), one.clock.time),
      await keepPhoto(one.book, "c", "ab", { visit: session.visit }, bytes(2), one.clock.time),
    ];
    bad.add(first);
    await one.sync.run();
    expect([one.sync.state, taken, one.book.picturesWaiting(), one.book.picturesRefused.get(first)]).toEqual(["idle", [second], [first], "It is no picture."]);
    bad.clear();
    one.book.close();
    const { book, sync } = await one.open();
    await sync.run();
    expect([taken, book.picturesWaiting()]).toEqual([[second, first], []]);
  });
  it("waits where nobody is signed in", async () => {
    const one = await phone(new ModelServer(), async () => {
      throw new SignedOut("Sign in.");
    });
    const session = await one.acts.start(wanted);
    const photo = await keepPhoto(one.book, "c", "ab", { visit: session.visit }, bytes(1), one.clock.time);
    await one.sync.run();
    expect([one.sync.state, one.book.picturesWaiting()]).toEqual(["signed_out", [photo]]);
  });
  it("lets a picture go three weeks after the server kept it, and no sooner", async () => {
    const { book, acts, sync, clock } = await phone(new ModelServer());
    const session = await acts.start(wanted);
    const photo = await keepPhoto(book, "c", "ab", { visit: session.visit }, bytes(1), clock.time);
    clock.time += 4 * week;
    await sync.run();
    clock.time += 3 * week - 60_000;
    await sync.run();
    expect(await book.picture(photo)).toBeDefined();
    clock.time += 120_000;
    await sync.run();
    expect([await book.picture(photo), book.pictures]).toEqual([undefined, 0]);
    expect(photosOf(book, { visit: session.visit })).toHaveLength(1);
  });
});

describe("the file that is handed over", () => {
  it("carries the pictures that are only here", async () => {
    const { book, acts, sync, clock } = await phone(new ModelServer());
    const session = await acts.start(wanted);
    await keepPhoto(book, "c", "ab", { visit: session.visit }, bytes(1), clock.time);
    await sync.run();
    const data = new Uint8Array(randomBytes(70_001));
    const photo = await keepPhoto(book, "c", "ab", { visit: session.visit }, data, clock.time);
    const file = JSON.parse(await (await handOverFile(book, "c", clock.time)).text());
    expect(file.photos).toEqual([{ photo, jpeg: Buffer.from(data).toString("base64") }]);
    expect(file.entries).toHaveLength(book.rows.length);
    expect(base64(data.subarray(0, 4))).toBe(Buffer.from(data.subarray(0, 4)).toString("base64"));
  });
  it("names none where there are none", async () => {
    const { book, acts, clock } = await phone(new ModelServer());
    await acts.start(wanted);
    expect(JSON.parse(await (await handOverFile(book, "c", clock.time)).text()).photos).toBeUndefined();
  });
});
