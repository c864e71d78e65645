import { useEffect, useMemo, useRef, useState } from "preact/hooks";
import type { Acts } from "./capture/acts";
import { rolling } from "./capture/balls";
import { loadCore, type Core } from "./core";
import type { Book } from "./data/book";
import { clubIds, clubOf } from "./data/club";
import { FieldContext, go, placeOf, type Field, type Live, type Page } from "./field";
import { askForRoom, stayAwake } from "./phone";
import { keepPrefs, type Prefs } from "./prefs";
import { BallPage } from "./screens/ball";
import { Conditions } from "./screens/conditions";
import { First } from "./screens/first";
import { Home } from "./screens/home";
import { Kept } from "./screens/kept";
import { Menu } from "./screens/menu";
import { Note } from "./screens/note";
import { PickGreen, PickMode, PickObserver } from "./screens/picks";
import { Pair } from "./screens/pair";
import { PhotosLater } from "./screens/photos_later";
import { Reading } from "./screens/reading";
import { Settings } from "./screens/settings";
import { Spots } from "./screens/spots";
import { Summary } from "./screens/summary";
import { Visit } from "./screens/visit";
import { When } from "./screens/when";
import { Work } from "./screens/work";
import { keepSending, thisPhone } from "./sync/courier";
import type { Sync } from "./sync/sync";
import { wordsOf, type Words } from "./words";

export function Told(props: { title: string; text: string; button: string; go: () => void }) {
  return (
    <main class="told" role="alert">
      <h1>{props.title}</h1>
      <p>{props.text}</p>
      <button class="go" onClick={props.go}>{props.button}</button>
    </main>
  );
}

function useHash(): string {
  const [hash, setHash] = useState(location.hash);
  useEffect(() => {
    const changed = () => setHash(location.hash);
    addEventListener("hashchange", changed);
    return () => removeEventListener("hashchange", changed);
  }, []);
  return hash;
}

export function App(props: { book: Book; acts: Acts; sync: Sync; prefs: Prefs; words: Words }) {
  const { book, acts, sync } = props;
  const [, redraw] = useState(0);
  const [prefs, setPrefs] = useState(props.prefs);
  const [words, setWords] = useState(props.words);
  const [core, setCore] = useState<Core>();
  const [lost, setLost] = useState(false);
  const live = useRef<Live>();
  useEffect(() => {
    const again = () => redraw((n) => n + 1);
    const stop = [book.watch(again), sync.watch(again)];
    void askForRoom();
    loadCore().then((loaded) => setCore(() => loaded), () => undefined);
    return () => stop.forEach((unwatch) => unwatch());
  }, [book, sync]);
  useEffect(() => keepSending(book, sync, thisPhone), [book, sync]);
  useEffect(() => {
    document.documentElement.dataset.theme = prefs.theme;
    document.documentElement.dataset.hand = prefs.hand;
    document.documentElement.lang = prefs.language;
    void wordsOf(prefs.language).then(setWords);
  }, [prefs.theme, prefs.hand, prefs.language]);
  useEffect(() => void (document.title = `${words.title} · Baize`), [words]);
  const field = useMemo((): Field => ({
    book, acts, sync, core, prefs, words, live,
    club: clubOf(book, prefs.club || clubIds(book)[0])?.club,
    prefer(change) {
      const chosen = { ...prefs, ...change };
      keepPrefs(chosen);
      setPrefs(chosen);
    },
    async act(work) {
      try {
        await work();
        return true;
      } catch {
        setLost(true);
        return false;
      }
    },
  }), [book, acts, sync, core, prefs, words, book.changes]);
  return (
    <FieldContext.Provider value={field}>
      {lost ? <Told title={words.lost.title} text={words.lost.text} button={words.lost.goOn} go={() => setLost(false)} /> : <Screen field={field} />}
    </FieldContext.Provider>
  );
}

const pages: Partial<Record<Page, (props: { of: string }) => preact.JSX.Element>> = {
  home: Home, green: PickGreen, observer: PickObserver, mode: PickMode, pair: Pair, reading: Reading, work: Work, photos: PhotosLater, kept: Kept, settings: Settings,
};
const visitPages: Partial<Record<Page, (props: { of: string }) => preact.JSX.Element>> = {
  menu: Menu, conditions: Conditions, note: Note, spots: Spots, summary: Summary, ball: BallPage, when: When,
};

function Screen({ field }: { field: Field }) {
  const { acts, club, prefs } = field;
  const { page, of } = placeOf(useHash());
  const session = acts.session();
  const atWork = session !== undefined;
  useEffect(() => stayAwake(atWork), [atWork]);
  useEffect(() => document.querySelector(".column")?.scrollTo(0, 0), [page, of]);
  useEffect(() => {
    if (!atWork && (page in visitPages || page === "visit")) go("home");
  }, [atWork, page]);
  if (page === "settings") return <Settings of="" />;
  if (!club || !prefs.observer) return <First />;
  // A ball that rolls has the screen, whatever the address says.
  if (session && acts.seen(session).balls.some(rolling)) return <Visit session={session} />;
  const Free = pages[page];
  if (Free) return <Free of={of} />;
  const OfVisit = visitPages[page];
  if (session && OfVisit) return <OfVisit of={of} />;
  return session ? <Visit session={session} /> : <Home />;
}
