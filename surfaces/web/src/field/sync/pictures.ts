import type { Book } from "../data/book";
import { Refused, SignedOut, type Server } from "./server";

const weeks = 3;

/** The server takes a picture only when it has the photo's entry. */
function entryKept(book: Book, photo: string): boolean {
  const own = book.rows.filter((row) => row.entry.thing === photo);
  return own.length > 0 && own.every(({ entry }) => book.acknowledged.get(entry.id)?.kept === true);
}

/**
 * Brings pictures to the server, one by one, the oldest first. May be broken
 * off anywhere: a picture waits until the server has said that it is on its
 * disk, and the server takes the same one any number of times. One that it
 * refuses keeps no other waiting, and is tried again when the page is opened
 * anew. What was kept three weeks ago makes room.
 */
export async function sendPictures(book: Book, server: Server, now: number): Promise<void> {
  for (const photo of book.picturesWaiting().sort()) {
    if (!entryKept(book, photo) || book.picturesRefused.has(photo)) continue;
    const picture = await book.picture(photo);
    if (!picture) continue;
    try {
      await server.picture(picture.club, photo, picture.bytes);
    } catch (error) {
      if (!(error instanceof Refused) || error instanceof SignedOut) throw error;
      book.picturesRefused.set(photo, error.message);
      continue;
    }
    await book.pictureKept(picture);
  }
  await book.letPicturesGo(now - weeks * 7 * 86_400_000);
}
