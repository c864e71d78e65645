import type { Book } from "../data/book";

const piece = 0x8000;

/** Base64 (RFC 4648), padded and in one line. */
export function base64(bytes: Uint8Array): string {
  let text = "";
  for (let at = 0; at < bytes.length; at += piece) text += String.fromCharCode(...bytes.subarray(at, at + piece));
  return btoa(text);
}

/** The pictures that no server has yet, for a file that is handed over. */
export async function picturesOf(book: Book, club: string): Promise<{ photo: string; jpeg: string }[]> {
  const all = [];
  for (const photo of book.picturesWaiting()) {
    const picture = await book.picture(photo);
    if (picture?.club === club) all.push({ photo, jpeg: base64(new Uint8Array(picture.bytes)) });
  }
  return all;
}
