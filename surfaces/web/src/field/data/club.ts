import type { Book } from "./book";

export interface Spot {
  id: string;
  bearing_deg?: number | null;
  half?: string | null;
}
export interface Green {
  id: string;
  name: string;
  halves: string[];
  spots: Spot[];
  last?: { day: string; score_mean?: number | null; speed_m?: number | null; spot?: string | null } | null;
}
/** What the server gives a phone to work with for weeks. */
export interface Club {
  club: { id: string; name: string };
  greens: Green[];
  observers: { id: string; name: string }[];
}
export interface KeptClub {
  club: Club;
  tag?: string | undefined;
  at: number;
}

export const clubIds = (book: Book) => book.get<string[]>("clubs") ?? [];
export const clubOf = (book: Book, id: string | undefined) => (id ? book.get<KeptClub>(`club ${id}`) : undefined);
export async function keepClub(book: Book, kept: KeptClub): Promise<void> {
  const { id } = kept.club.club;
  await book.keep(`club ${id}`, kept);
  if (!clubIds(book).includes(id)) await book.keep("clubs", [...clubIds(book), id]);
}
export const greenOf = (club: Club, id: string) => club.greens.find((green) => green.id === id);
export const observerName = (club: Club | undefined, id: string) => club?.observers.find((one) => one.id === id)?.name ?? id;
