// Depends on nothing: plain IndexedDB, old syntax, no build.
(function () {
  "use strict";
  var count = document.getElementById("count");
  var save = document.getElementById("save");
  var text = document.getElementById("text");
  document.body.style.cssText = "margin:0 auto;padding:20px;max-width:44rem;font:18px/1.5 system-ui,sans-serif;color:#000;background:#fff;overflow-wrap:anywhere";
  save.style.cssText = "min-height:60px;width:100%;font:inherit;font-weight:700;background:#00472a;color:#fff;border:0;border-radius:12px";
  text.style.cssText = "font-size:16px;white-space:pre-wrap";

  function say(sentence) {
    count.textContent = sentence;
  }
  function base64(bytes) {
    var text = "";
    var all = new Uint8Array(bytes);
    for (var at = 0; at < all.length; at += 1) text += String.fromCharCode(all[at]);
    return btoa(text);
  }
  /** Pictures that are only here go along. */
  function photosOf(pictures) {
    return pictures.filter(function (one) { return one && one.waits; }).map(function (one) { return { photo: one.photo, jpeg: base64(one.bytes) }; });
  }
  function show(rows, phone, pictures) {
    var entries = rows.map(function (row) {
      return row && row.entry ? row.entry : row;
    });
    var whole = { form: "baize-entries", version: 1, phone: phone, sent_at: new Date().toISOString(), entries: entries };
    var photos = photosOf(pictures);
    if (photos.length > 0) whole.photos = photos;
    var body = JSON.stringify(whole);
    say(entries.length === 1 ? "1 entry" : entries.length + " entries");
    text.textContent = entries.map(function (entry) { return JSON.stringify(entry); }).join("\n");
    save.disabled = false;
    save.onclick = function () {
      var link = document.createElement("a");
      link.href = URL.createObjectURL(new Blob([body], { type: "application/json" }));
      link.download = "baize-journal.json";
      link.click();
    };
  }
  function read(store, done) {
    var found = [];
    var asked = store.openCursor();
    asked.onsuccess = function () {
      var at = asked.result;
      if (!at) return done(found);
      found.push(at.value);
      at.continue();
    };
    asked.onerror = function () {
      // What was read so far is better than nothing.
      done(found);
    };
  }
  var asked = indexedDB.open("baize-field");
  asked.onerror = function () {
    say("The storage cannot be opened: " + (asked.error && asked.error.message));
  };
  asked.onupgradeneeded = function () {
    // There was none; leave none behind.
    asked.transaction.abort();
  };
  asked.onsuccess = function () {
    var shelves = asked.result;
    if (!shelves.objectStoreNames.contains("entries")) return say("No entry is on this phone.");
    var work = shelves.transaction(shelves.objectStoreNames);
    // The page itself may want to bring the storage up to date.
    shelves.onversionchange = function () { shelves.close(); };
    var has = function (name) { return shelves.objectStoreNames.contains(name); };
    var told = function (rows, pictures) {
      var phone = has("kept") ? work.objectStore("kept").get("phone") : undefined;
      if (!phone) return show(rows, "", pictures);
      phone.onsuccess = function () { show(rows, phone.result || "", pictures); };
      phone.onerror = function () { show(rows, "", pictures); };
    };
    read(work.objectStore("entries"), function (rows) {
      if (!has("pictures")) return told(rows, []);
      read(work.objectStore("pictures"), function (pictures) { told(rows, pictures); });
    });
  };
})();
