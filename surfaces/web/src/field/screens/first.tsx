import { useEffect, useState } from "preact/hooks";
import { clubIds, keepClub } from "../data/club";
import { go, useField } from "../field";
import { Frame, Row, SignIn } from "../parts/frame";
import { httpServer, SignedOut } from "../sync/server";
import { Observers } from "./picks";

/** A browser keeps a page for offline use only from a secure address. */
export function Insecure() {
  const { words } = useField();
  return isSecureContext ? null : <p class="notice">{words.first.insecure}</p>;
}

/** The first time: which club, who you are. Needs the server once. */
export function First() {
  const { book, words, club, prefs, prefer } = useField();
  const [clubs, setClubs] = useState<{ id: string; name: string }[]>([]);
  const [failed, setFailed] = useState(false);
  const [out, setOut] = useState(false);
  const fetchClub = async (id: string) => {
    const found = await httpServer.club(id, undefined);
    if (found !== "same") await keepClub(book, { ...found, at: Date.now() });
    prefer({ club: id });
  };
  const ask = async () => {
    setFailed(false);
    try {
      const all = await httpServer.clubs();
      const wanted = all.find((one) => one.id === prefs.club) ?? (all.length === 1 ? all[0] : undefined);
      if (wanted) await fetchClub(wanted.id);
      else setClubs(all);
      if (all.length === 0) setFailed(true);
    } catch (error) {
      setFailed(true);
      setOut(error instanceof SignedOut);
    }
  };
  const known = club !== undefined || clubIds(book).includes(prefs.club);
  useEffect(() => void (known || ask()), []);
  if (club) {
    return (
      <Frame title={words.first.who}>
        <Insecure />
        <Observers choose={(observer) => prefer({ observer })} />
        <button class="wide plain" onClick={() => go("settings")}>{words.menu.settings}</button>
      </Frame>
    );
  }
  return (
    <Frame title={clubs.length > 1 ? words.first.club : words.first.title} end={failed && <button class="go" onClick={ask}>{words.first.again}</button>}>
      {clubs.map((one) => <Row key={one.id} label="" value={one.name} go={() => void fetchClub(one.id).catch(() => setFailed(true))} />)}
      {out && <SignIn />}
      {clubs.length < 2 && <p class="lead">{words.first.text}</p>}
      <button class="wide plain" onClick={() => go("settings")}>{words.menu.settings}</button>
    </Frame>
  );
}
