// Sends what the page left, when the browser says that the network is back
// (Background Sync), even where the page is closed. As the page does it
// (sync/sync.ts), but without the page: an entry counts as arrived only when
// the server named it, and it may be sent any number of times.
const baizeSend = (() => {
  const promised = (request) => new Promise((done, failed) => {
    request.onsuccess = () => done(request.result);
    request.onerror = () => failed(request.error);
  });

  async function opened() {
    const asked = indexedDB.open("baize-field");
    // There was none: leave none behind.
    asked.onupgradeneeded = () => asked.transaction.abort();
    return promised(asked).catch(() => undefined);
  }

  async function waiting(shelves) {
    const all = shelves.transaction(["entries", "acknowledged", "kept"]);
    const [rows, known, phone] = await Promise.all([
      promised(all.objectStore("entries").getAll()),
      promised(all.objectStore("acknowledged").getAllKeys()),
      promised(all.objectStore("kept").get("phone")),
    ]);
    const named = new Set(known);
    return { phone, rows: rows.filter((row) => !named.has(row.entry.id)) };
  }

  function acknowledge(shelves, receipt) {
    const shelf = shelves.transaction(["acknowledged", "visits"], "readwrite");
    for (const id of receipt.kept) shelf.objectStore("acknowledged").put({ id, kept: true });
    for (const { id, problem } of receipt.refused) {
      shelf.objectStore("acknowledged").put({ id, kept: false, sentence: problem.sentence ?? `${problem.field}: ${problem.rule}` });
    }
    const others = (receipt.others ?? []).map((one) => ({ ...one, visit: one.thing }));
    for (const { visit, state, problems, conflicts } of [...receipt.visits, ...others]) {
      shelf.objectStore("visits").put({ visit, state, problems, conflicts });
    }
    return new Promise((done, failed) => {
      shelf.oncomplete = done;
      shelf.onabort = () => failed(shelf.error);
    });
  }

  /** False where the server refuses the whole of it: only the page can tell a person so. */
  async function sent(shelves, phone, club, entries) {
    const body = JSON.stringify({ form: "baize-entries", version: 1, phone, sent_at: new Date().toISOString(), entries });
    const address = new URL(`/api/v1/clubs/${encodeURIComponent(club)}/entries`, self.location.origin);
    const answer = await fetch(address, { method: "POST", body, headers: { "Content-Type": "application/json" } });
    if (answer.status === 408 || answer.status === 429 || answer.status >= 500) throw new Error(`${answer.status}`);
    if (!answer.ok) return false;
    const receipt = await answer.json();
    await acknowledge(shelves, receipt);
    return receipt.kept.length + receipt.refused.length > 0;
  }

  const keptByServer = async (shelves, photo, rows) => {
    const own = rows.filter((row) => row.entry.thing === photo);
    const said = await Promise.all(own.map((row) => promised(shelves.transaction("acknowledged").objectStore("acknowledged").get(row.entry.id))));
    // One that was taken out here is left to the page: it may never leave the phone.
    return own.length > 0 && said.every((one) => one && one.kept) && !own.some((row) => row.entry.set.removed);
  };

  /** Pictures whose entries the server has; one that it refuses is left for the page to tell of. */
  async function sendPictures(shelves) {
    if (!shelves.objectStoreNames.contains("pictures")) return;
    const shelf = (way) => shelves.transaction("pictures", way).objectStore("pictures");
    const rows = await promised(shelves.transaction("entries").objectStore("entries").getAll());
    for (const photo of await promised(shelf("readonly").index("waits").getAllKeys())) {
      if (!(await keptByServer(shelves, photo, rows))) continue;
      const { waits, ...picture } = await promised(shelf("readonly").get(photo));
      const address = new URL(`/api/v1/clubs/${encodeURIComponent(picture.club)}/photos/${photo}`, self.location.origin);
      const answer = await fetch(address, { method: "PUT", body: picture.bytes, headers: { "Content-Type": "image/jpeg" } });
      if (answer.status === 408 || answer.status === 429 || answer.status >= 500) throw new Error(`${answer.status}`);
      if (answer.ok) await promised(shelf("readwrite").put({ ...picture, kept: Date.now() }));
    }
  }

  return async () => {
    const shelves = await opened();
    if (!shelves) return;
    try {
      const { phone, rows } = await waiting(shelves);
      const batch = 200;
      for (const club of new Set(rows.map((row) => row.club))) {
        const own = rows.filter((row) => row.club === club).map((row) => row.entry);
        for (let at = 0; at < own.length; at += batch) {
          if (!(await sent(shelves, phone, club, own.slice(at, at + batch)))) break;
        }
      }
      await sendPictures(shelves);
    } finally {
      shelves.close();
    }
  };
})();

self.addEventListener("sync", (event) => {
  // Failing makes the browser try again later.
  if (event.tag === "baize-entries") event.waitUntil(baizeSend());
});
