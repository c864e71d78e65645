import { useEffect, useState } from "preact/hooks";
import { timeOf } from "../capture/clock";
import { sessionOf } from "../capture/reopen";
import { ballsOf, totalsOf } from "../capture/balls";
import { go, useField, useShown } from "../field";
import { Frame, SignIn } from "../parts/frame";
import { askForRoom, handOver, handOverFile, type Room } from "../phone";
import { visitLines, type VisitLine } from "../sync/visit_state";
import { takeUpdate, useUpdate } from "../worker/offer";
import { Conflicts } from "./conflicts";
import { Insecure } from "./first";
import { Loose } from "./loose";
import { greenName } from "./title";

/** Where everything written on this phone stands. */
export function Kept() {
  const { book, sync, acts, act, words, club } = useField();
  const w = words.kept;
  const { number } = useShown();
  const [room, setRoom] = useState<Room>();
  const update = useUpdate();
  useEffect(() => void askForRoom().then(setRoom), []);
  const lines = visitLines(book, sync.onTheirWay);
  const pictures = book.picturesWaiting().length;
  const refused = [...book.acknowledged.values()].some((one) => !one.kept);
  return (
    <Frame title={w.title} back class="kept" end={<button class="go" onClick={() => sync.run()}>{sync.state === "sending" ? w.sending : w.send}</button>}>
      {sync.state === "signed_out" && <SignIn />}
      <p class="lead" role="status">
        {sync.state === "offline" ? w.offline : sync.state === "refused" ? `${w.refusedAll} ${sync.reason}` : sync.lastDone ? w.lastDone(timeOf(sync.lastDone)) : w.never}
      </p>
      {pictures > 0 && <p class="notice">{w.photos(pictures)}</p>}
      <Skew />
      <Insecure />
      {update && (
        <section class="notice">
          <h2>{w.update}</h2>
          {acts.session() ? <p>{w.updateLater}</p> : <button class="wide" onClick={takeUpdate}>{w.updateUse}</button>}
        </section>
      )}
      <Conflicts />
      {lines.length === 0 && <p>{w.nothing}</p>}
      <ul class="visits">{lines.map((line) => <VisitItem key={line.visit} line={line} />)}</ul>
      <Loose />
      {refused && <button class="wide" onClick={async () => (await book.forgetRefusals(), void sync.run())}>{w.retry}</button>}
      {club && <button class="wide" onClick={() => act(async () => handOver(await handOverFile(book, club.club.id, Date.now())))}>{w.share}</button>}
      <a class="wide" href="raw.html">{w.raw}</a>
      {/* Only Safari on a phone tells whether it was opened from the home screen. */}
      {(navigator as { standalone?: boolean }).standalone === false && <p class="notice">{w.homeScreen}</p>}
      <p class="quiet">
        {room && (room.promised ? w.safe : w.unsafe)} {room?.usedMb !== undefined && room.roomMb !== undefined && w.space(number(room.usedMb, 1), number(room.roomMb / 1000, 1))}
      </p>
    </Frame>
  );
}

function Skew() {
  const { sync, words } = useField();
  if (sync.skew === undefined || Math.abs(sync.skew) < 60) return null;
  return <p class="notice strong">{words.kept.skew(words.kept.minutes(Math.round(Math.abs(sync.skew) / 60)), sync.skew > 0)}</p>;
}

function VisitItem({ line }: { line: VisitLine }) {
  const { acts, act, book, words, club } = useField();
  const { day } = useShown();
  const { fields, state } = line;
  const balls = ballsOf(book, line.visit).length + totalsOf(book, line.visit).reduce((sum, run) => sum + run.total_of, 0);
  const mend = async () => {
    const now = acts.session();
    if (now?.visit === line.visit) return go("visit");
    if (await act(() => acts.reopen(sessionOf(book, line.visit)))) go("summary");
  };
  return (
    <li>
      <button class={`visit-item ${state}`} onClick={mend}>
        <b>{greenName(club, fields.green ?? "")}</b>
        <span>{fields.day && day(fields.day)} {fields.from} · {words.balls(balls)}</span>
        <strong class={`state ${state}`}>{words.kept.states[state]}</strong>
        <small>{words.kept.rules[state]}</small>
        {line.reasons.map((reason) => <small key={reason} lang="en" class="reason">{reason}</small>)}
      </button>
    </li>
  );
}
