// What the phone itself lends: a screen that stays on, a place, room to keep things.
import type { Book } from "./data/book";
import type { HandOver } from "./sync/server";

let lock: WakeLockSentinel | undefined;
let wanted = false;
let watching = false;

async function hold(): Promise<void> {
  if (!wanted || document.visibilityState !== "visible" || (lock && !lock.released)) return;
  lock = await navigator.wakeLock?.request("screen").catch(() => undefined);
}
export function stayAwake(on: boolean): void {
  if (wanted === on) return;
  wanted = on;
  // The phone takes the lock away whenever the page is hidden.
  if (!watching) document.addEventListener("visibilitychange", () => void hold());
  watching = true;
  if (on) void hold();
  else {
    void lock?.release();
    lock = undefined;
  }
}

export interface Room {
  promised: boolean;
  usedMb: number | undefined;
  roomMb: number | undefined;
}
export async function askForRoom(): Promise<Room> {
  const storage = navigator.storage as StorageManager | undefined;
  const promised = (await storage?.persisted?.()) || (await storage?.persist?.().catch(() => false)) || false;
  const told = await storage?.estimate?.().catch(() => undefined);
  const mb = (bytes: number | undefined) => (bytes === undefined ? undefined : bytes / 1e6);
  return { promised, usedMb: mb(told?.usage), roomMb: mb(told?.quota) };
}

export interface Place {
  latitude: number;
  longitude: number;
}
export const whereAmI = (): Promise<Place | undefined> =>
  new Promise((tell) => {
    if (!navigator.geolocation) return tell(undefined);
    navigator.geolocation.getCurrentPosition(
      ({ coords }) => tell(coords.accuracy <= 60 ? { latitude: coords.latitude, longitude: coords.longitude } : undefined),
      () => tell(undefined),
      { enableHighAccuracy: true, timeout: 8000, maximumAge: 20_000 },
    );
  });

/** Metres, near enough within one course. */
export function apart(a: Place, b: Place): number {
  const degree = 111_195;
  const east = (a.longitude - b.longitude) * degree * Math.cos((a.latitude * Math.PI) / 180);
  return Math.hypot((a.latitude - b.latitude) * degree, east);
}
/** The green whose learnt place lies nearest, within 120 m. */
export function nearestGreen(here: Place, places: Record<string, Place>): string | undefined {
  const near = Object.entries(places).map(([green, place]) => ({ green, metres: apart(here, place) }));
  return near.filter(({ metres }) => metres <= 120).sort((a, b) => a.metres - b.metres)[0]?.green;
}

/** The journal, with the pictures that are only here. */
export async function handOverFile(book: Book, club: string, now: number): Promise<File> {
  const body: HandOver = {
    form: "baize-entries", version: 1, phone: book.phone, sent_at: new Date(now).toISOString(),
    entries: book.rows.filter((row) => row.club === club).map((row) => row.entry),
  };
  if (book.picturesWaiting().length > 0) body.photos = await (await import("./photos/in_file")).picturesOf(book, club);
  const name = `baize-${new Date(now).toISOString().slice(0, 16).replace(/[:T]/g, "-")}.json`;
  return new File([JSON.stringify(body)], name, { type: "application/json" });
}
/** By the phone's own sharing where it takes files, else as a download. */
export async function handOver(file: File): Promise<void> {
  if (navigator.canShare?.({ files: [file] })) {
    try {
      await navigator.share({ files: [file], title: file.name });
      return;
    } catch (error) {
      if (error instanceof DOMException && error.name === "AbortError") return;
    }
  }
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = file.name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
