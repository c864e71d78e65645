import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import type { Book } from "../../src/field/data/book";
import { keepSending, waitAfter, type Surroundings } from "../../src/field/sync/courier";
import type { Sync, SyncState } from "../../src/field/sync/sync";

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

/** A phone in a pocket: its network, its screen, its journal, and how often it tried. */
function pocket(ends: SyncState = "idle") {
  let changed = () => {};
  let touched = () => {};
  const found = {
    online: true, seen: true, tries: 0, later: 0, ends, rows: [] as number[], ended: false,
    turn(change: Partial<{ online: boolean; seen: boolean }>) {
      Object.assign(found, change);
      changed();
    },
    touch() {
      found.rows.push(1);
      touched();
    },
    stop: () => {},
  };
  const around: Surroundings = {
    online: () => found.online,
    seen: () => found.seen,
    watch: (tell) => ((changed = tell), () => void (found.ended = true)),
    sendLater: () => void (found.later += 1),
  };
  const book = { rows: found.rows, waiting: () => found.rows, picturesWaiting: () => [], watch: (tell: () => void) => ((touched = tell), () => {}) } as unknown as Book;
  const sync = { state: "idle" as SyncState, run: async () => void ((found.tries += 1), (sync.state = found.ends)) };
  found.stop = keepSending(book, sync as unknown as Sync, around);
  return found;
}
const pass = (ms: number) => vi.advanceTimersByTimeAsync(ms);

describe("sending by itself", () => {
  it("waits 5, 10, 20 seconds and so on, five minutes at most", () => {
    expect([1, 2, 3, 6, 7, 8, 60].map((failures) => waitAfter(failures) / 1000)).toEqual([5, 10, 20, 160, 300, 300, 300]);
  });
  it("tries at the start and four seconds after the last touch", async () => {
    const phone = pocket();
    await pass(0);
    expect(phone.tries).toBe(1);
    phone.touch();
    await pass(3000);
    phone.touch();
    await pass(3999);
    expect(phone.tries).toBe(1);
    await pass(1);
    expect(phone.tries).toBe(2);
    await pass(3_600_000);
    expect([phone.tries, phone.later]).toEqual([2, 0]);
  });
  it("tries again with growing waits where nobody answers, touches or not, until it is well", async () => {
    const phone = pocket("offline");
    await pass(0);
    const at: number[] = [];
    for (let second = 1; second <= 80; second += 1) {
      const before = phone.tries;
      phone.touch();
      await pass(1000);
      if (phone.tries > before) at.push(second);
    }
    expect(at).toEqual([5, 15, 35, 75]);
    expect(phone.later).toBe(5);
    phone.ends = "idle";
    await pass(80_000);
    expect(phone.tries).toBe(6);
    await pass(3_600_000);
    expect(phone.tries).toBe(6);
  });
  it("does not try without a network or behind another page, and tries as soon as they are back", async () => {
    const phone = pocket();
    await pass(0);
    phone.turn({ online: false });
    phone.touch();
    await pass(600_000);
    expect([phone.tries, phone.later]).toEqual([1, 0]);
    phone.turn({ online: true });
    await pass(0);
    expect(phone.tries).toBe(2);
    phone.turn({ seen: false });
    expect(phone.later).toBe(1);
    await pass(600_000);
    expect(phone.tries).toBe(2);
    phone.turn({ seen: true });
    await pass(0);
    expect(phone.tries).toBe(3);
  });
  it("ends with the page", async () => {
    const phone = pocket("offline");
    await pass(0);
    phone.stop();
    await pass(600_000);
    expect([phone.tries, phone.ended]).toEqual([1, true]);
  });
});
