import { ballsOf, visitFields } from "../capture/balls";
import type { Book } from "../data/book";

/**
 * The other observer's scores of the same balls, once both visits are
 * finished; before that neither may know them.
 */
export function pairOf(book: Book, visit: string): { other: string; apart: number } | undefined {
  const mine = visitFields(book, visit);
  if (!mine.shared_rolls || mine.done !== true) return undefined;
  const twin = book.things("visit").find(({ thing, values }) => thing !== visit && values.shared_rolls === mine.shared_rolls && values.done === true);
  if (!twin) return undefined;
  const theirs = ballsOf(book, twin.thing);
  const apart = ballsOf(book, visit).filter((ball) => {
    const same = theirs.find((one) => one.spot === ball.spot && one.direction === ball.direction && one.order === ball.order);
    return same?.score !== undefined && ball.score !== undefined && same.score !== ball.score;
  });
  return { other: String(twin.values.observer), apart: apart.length };
}
