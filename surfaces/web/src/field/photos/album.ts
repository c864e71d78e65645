import type { Book } from "../data/book";
import type { PhotoFields } from "../data/entries";
import { sha256 } from "./sha256";

/** What a photo is taken of: the visit it was taken at, or the work it shows. */
export type Owner = { visit: string } | { work: string };

export interface Photo {
  photo: string;
  fields: PhotoFields;
}

/** Photos of a visit or a work, also those of other phones, as they were taken. */
export function photosOf(book: Book, owner: Owner): Photo[] {
  const [[field, thing]] = Object.entries(owner) as [["visit" | "work", string]];
  return book
    .things("photo")
    .map(({ thing: photo, values }) => ({ photo, fields: values as PhotoFields }))
    .filter(({ fields }) => fields[field] === thing)
    .sort((a, b) => (a.photo < b.photo ? -1 : 1));
}

/** Keeps a picture and the entry that tells of it: both or neither. */
export async function keepPhoto(book: Book, club: string, by: string, owner: Owner, bytes: Uint8Array, now: number): Promise<string> {
  const photo = book.id();
  const set: PhotoFields = { ...owner, taken: new Date(now).toISOString(), sha256: sha256(bytes), bytes: bytes.length };
  const picture = { photo, club, bytes: bytes.slice().buffer as ArrayBuffer, waits: 1 as const };
  await book.write(club, "photo", [{ kind: "photo", thing: photo, by, set: { ...set } }], { picture });
  return photo;
}

export const change = (book: Book, club: string, by: string, photo: string, set: PhotoFields) =>
  book.write(club, set.removed ? "photo" : "note", [{ kind: "photo", thing: photo, by, set: { ...set } }]);
