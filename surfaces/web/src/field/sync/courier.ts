import type { Book } from "../data/book";
import type { Sync } from "./sync";

const afterTouch = 4000;
const shortest = 5000;
const longest = 300_000;

/** The wait before the next try, ms: 5 s, doubled by each failure, five minutes at most. */
export const waitAfter = (failures: number) => Math.min(longest, shortest * 2 ** (failures - 1));

/** What the phone itself can tell, and be asked for. */
export interface Surroundings {
  online(): boolean;
  /** not behind another page, the screen not off */
  seen(): boolean;
  /** calls back when the network or the page comes back; gives what ends it */
  watch(changed: () => void): () => void;
  /** asks the browser to send later, even when the page is closed; where it cannot, nothing happens */
  sendLater(): void;
}

/**
 * Sends when there is something to send: at the start, when the network or the
 * page comes back, a while after each touch, and after a failure again with
 * growing waits. What is left when the page goes out of sight is left to the
 * browser.
 */
export function keepSending(book: Book, sync: Sync, around: Surroundings): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let failures = 0;
  let ended = false;
  const soon = (wait: number) => {
    clearTimeout(timer);
    if (!ended) timer = setTimeout(run, wait);
  };
  const run = async (): Promise<void> => {
    clearTimeout(timer);
    if (!around.online() || !around.seen()) return;
    await sync.run();
    failures = sync.state === "idle" ? 0 : failures + 1;
    if (failures === 0) return;
    around.sendLater();
    soon(waitAfter(failures));
  };
  let rows = book.rows.length;
  const unwatch = book.watch(() => {
    if (book.rows.length === rows) return;
    rows = book.rows.length;
    // Where nobody answers a touch does not shorten the wait.
    if (failures === 0) soon(afterTouch);
  });
  const forget = around.watch(() => {
    if (!around.seen() || !around.online()) {
      if (book.waiting().length + book.picturesWaiting().length > 0) around.sendLater();
      return;
    }
    failures = 0;
    void run();
  });
  void run();
  return () => {
    ended = true;
    clearTimeout(timer);
    unwatch();
    forget();
  };
}

interface SyncManager {
  register(tag: string): Promise<void>;
}

export const thisPhone: Surroundings = {
  online: () => navigator.onLine !== false,
  seen: () => document.visibilityState === "visible",
  watch(changed) {
    addEventListener("online", changed);
    addEventListener("offline", changed);
    document.addEventListener("visibilitychange", changed);
    return () => {
      removeEventListener("online", changed);
      removeEventListener("offline", changed);
      document.removeEventListener("visibilitychange", changed);
    };
  },
  sendLater() {
    // Background Sync: Chromium has it, Safari and Firefox have not.
    void navigator.serviceWorker?.ready
      .then((place) => (place as unknown as { sync?: SyncManager }).sync?.register("baize-entries"))
      .catch(() => undefined);
  },
};
