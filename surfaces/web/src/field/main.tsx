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

async function begin(): Promise<void> {
  const prefs = loadPrefs();
  const words = await wordsOf(prefs.language);
  if (!(await alone())) return render(<Told title={words.title} text={words.lost.twice} button={words.first.again} go={() => location.reload()} />, host);
  try {
    const book = await Book.open();
    render(<App book={book} acts={new Acts(book)} sync={new Sync(book, httpServer)} prefs={prefs} words={words} />, host);
  } catch {
    render(<Told title={words.lost.title} text={words.lost.storage} button={words.first.again} go={() => location.reload()} />, host);
  }
}

void begin();
void settle().catch(() => undefined);
