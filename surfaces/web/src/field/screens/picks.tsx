import { useState } from "preact/hooks";
import { dayOf } from "../capture/clock";
import { modes } from "../capture/session";
import { goBack, useField, useShown } from "../field";
import { Frame, Row } from "../parts/frame";

export function PickGreen() {
  const { book, words, club, prefer } = useField();
  const { number } = useShown();
  const today = dayOf(Date.now());
  const visited = new Set(book.things("visit").filter(({ values }) => values.day === today).map(({ values }) => values.green));
  return (
    <Frame title={words.home.which} back>
      <div class="keys greens" style={{ "--columns": 3 }}>
        {club?.greens.map((green) => (
          <button key={green.id} class="key tall" onClick={() => (prefer({ green: green.id }), goBack())}>
            <b>{green.name}</b>
            <small>{visited.has(green.id) ? `✓ ${words.home.today}` : green.last?.score_mean != null ? number(green.last.score_mean, 1) : "–"}</small>
          </button>
        ))}
      </div>
    </Frame>
  );
}

export function PickMode() {
  const { words, prefer } = useField();
  return (
    <Frame title={words.home.mode} back>
      {modes.map((mode) => <Row key={mode} label="" value={words.modes[mode]} go={() => (prefer({ mode }), goBack())} />)}
    </Frame>
  );
}

export function PickObserver() {
  const { words, prefer } = useField();
  return (
    <Frame title={words.first.who} back>
      <Observers choose={(observer) => (prefer({ observer }), goBack())} />
    </Frame>
  );
}

/** The club's observers; a club that lists none takes any name. */
export function Observers({ choose, without = "" }: { choose: (observer: string) => void; without?: string }) {
  const { club, words } = useField();
  const [name, setName] = useState("");
  const all = club?.observers.filter((one) => one.id !== without) ?? [];
  return (
    <>
      {all.map((one) => <Row key={one.id} label="" value={one.name || one.id} go={() => choose(one.id)} />)}
      {club && club.observers.length === 0 && (
        <form class="typed" onSubmit={(event) => (event.preventDefault(), name.trim() && choose(name.trim()))}>
          <input aria-label={words.home.other} placeholder={words.home.other} value={name} onInput={(event) => setName(event.currentTarget.value)} />
          <button class="key">{words.done}</button>
        </form>
      )}
    </>
  );
}
