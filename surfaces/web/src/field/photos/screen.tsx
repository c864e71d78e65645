import { useEffect, useRef, useState } from "preact/hooks";
import { timeOf } from "../capture/clock";
import { go, useField } from "../field";
import { Frame } from "../parts/frame";
import { change, keepPhoto, photosOf, type Owner, type Photo } from "./album";
import { shrunk } from "./jpeg";
import { Thumb } from "./thumb";
import { photoWords } from "./words";
import "./photos.css";

/** Photos of the visit at work, or of the work that is named: taken, noted, taken out. */
export function Photos({ of }: { of: string }) {
  const { acts } = useField();
  const session = acts.session();
  const owner: Owner | undefined = of ? { work: of } : session && { visit: session.visit };
  useEffect(() => {
    if (!owner) go("home");
  }, [owner === undefined]);
  return owner ? <Album owner={owner} /> : null;
}

function Album({ owner }: { owner: Owner }) {
  const { acts, act, book, club, prefs, words } = useField();
  const w = photoWords[prefs.language];
  const input = useRef<HTMLInputElement>(null);
  const [said, setSaid] = useState("");
  const id = acts.session()?.club ?? club?.club.id ?? "";
  const by = acts.session()?.observer ?? prefs.observer;
  const photos = photosOf(book, owner);
  const take = async (file: File | undefined) => {
    if (!file) return;
    setSaid(w.working);
    const bytes = await shrunk(file).catch(() => undefined);
    setSaid(bytes ? "" : w.noPicture);
    if (bytes) await act(() => keepPhoto(book, id, by, owner, bytes, Date.now()));
  };
  const chosen = (event: { currentTarget: HTMLInputElement }) => {
    const file = event.currentTarget.files?.[0];
    event.currentTarget.value = ""; // the same file may be chosen again
    void take(file);
  };
  return (
    <Frame title={words.menu.photo} back end={<button class="go" onClick={() => input.current?.click()}>{w.take}</button>}>
      <input ref={input} type="file" accept="image/*" capture="environment" hidden onChange={chosen} />
      {said && <p class="notice strong" role="status">{said}</p>}
      {photos.length === 0 && !said && <p class="lead">{w.none}</p>}
      <ul class="photos">{photos.map((photo) => <Item key={photo.photo} of={photo} club={id} by={by} />)}</ul>
      <p class="quiet">{w.care}</p>
    </Frame>
  );
}

function Item({ of: { photo, fields }, club, by }: { of: Photo; club: string; by: string }) {
  const { act, book, prefs, words } = useField();
  const w = photoWords[prefs.language];
  const time = fields.taken ? timeOf(Date.parse(fields.taken)) : "";
  const refused = book.picturesRefused.get(photo);
  const waits = book.picturesWaiting().includes(photo);
  const noted = (text: string) => {
    const note = text.trim();
    if (note !== (fields.note ?? "")) void act(() => change(book, club, by, photo, { note: note || null }));
  };
  return (
    <li>
      <Thumb photo={photo} club={club} text={w.of(time)} />
      <input aria-label={w.note} placeholder={w.note} value={fields.note ?? ""} onChange={(event) => noted(event.currentTarget.value)} />
      <div class="two">
        <p><b>{time}</b> {waits ? w.here : w.there}</p>
        <button class="key" onClick={() => act(() => change(book, club, by, photo, { removed: true }))}>{words.kept.takeOut}</button>
      </div>
      {refused && <p lang="en" class="reason">{w.refused} {refused}</p>}
    </li>
  );
}
