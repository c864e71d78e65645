import { ballsOfRun, type Session } from "../capture/session";
import type { Seen } from "../capture/step";
import type { Direction } from "../data/entries";
import { useFeel, useField } from "../field";
import { Frame, Keys } from "../parts/frame";
import { Scorecard } from "../parts/scorecard";
import { Undo } from "../parts/undo";
import { titleOf } from "./title";

const totals = Array.from({ length: 10 * ballsOfRun - ballsOfRun + 1 }, (_, at) => 10 * ballsOfRun - at);

/** Only the sum of a run's three scores: one touch a run. */
export function TotalOnly({ session, seen, direction }: { session: Session; seen: Seen; direction: Direction }) {
  const { acts, act, words, club } = useField();
  const felt = useFeel();
  const choose = (total: number) => {
    felt("key");
    void act(() => acts.total(session, direction, total, ballsOfRun));
  };
  const way = direction === "out" ? words.out : words.backWay;
  return (
    <Frame title={titleOf(club, session)} menu class="stand" end={<><Undo session={session} /><p class="go waits">{way} · {words.totalTitle}</p></>}>
      <Scorecard session={session} seen={seen} />
      <div class="glance">
        <p class="asked">{words.totalTitle} · {way}</p>
        <Keys of={totals} chosen={undefined} text={String} name={words.totalTitle} columns={5} choose={choose} />
      </div>
    </Frame>
  );
}
