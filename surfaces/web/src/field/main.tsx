import { render } from "preact";
import { App, Told } from "./app";
import { Acts } from "./capture/acts";
import { Book } from "./data/book";
import { loadPrefs } from "./prefs";
import { httpServer } from "./sync/server";
import { Sync } from "./sync/sync";
import { settle } from "./worker/offer";
import { wordsOf } from "./words";
import "./style/index";

const host = document.getElementById("field") as HTMLElement;

/** One page at a time writes in the journal. */
function alone(): Promise<boolean> {
  if (!navigator.locks) return Promise.resolve(true);
  return new Promise((tell) => {
    void navigator.locks.request("baize-field", { ifAvailable: true }, (lock) => {
      tell(lock !== null);
      return lock ? new Promise<void>(() => undefined) : undefined;
    });
  });
}

/** The journal; none where another page holds it. */
const journal = () => alone().then((first) => (first ? Book.open() : undefined));

async function begin(): Promise<void> {
  const prefs = loadPrefs();
  // Side by side: on a slow phone each takes its time.
  const [book, words] = await Promise.all([journal().catch(() => "closed" as const), wordsOf(prefs.language)]);
  const tell = (title: string, text: string) => render(<Told title={title} text={text} button={words.first.again} go={() => location.reload()} />, host);
  if (book === "closed") return tell(words.lost.title, words.lost.storage);
  if (!book) return tell(words.title, words.lost.twice);
  render(<App book={book} acts={new Acts(book)} sync={new Sync(book, httpServer)} prefs={prefs} words={words} />, host);
}

void begin();
void settle().catch(() => undefined);
