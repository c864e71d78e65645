import type { Session } from "../capture/session";
import { go, useField } from "../field";
import { Frame } from "../parts/frame";
import { titleOf } from "./title";

export function Menu() {
  const { acts, words, club } = useField();
  const session = acts.session() as Session;
  const items = [
    ["conditions", words.menu.conditions], ["photos", words.menu.photo], ["note", words.menu.note], ["spots", words.menu.spots], ["when", words.menu.when], ["summary", words.go.summary],
    ["reading", words.menu.reading], ["work", words.menu.work], ["kept", words.menu.kept], ["settings", words.menu.settings],
  ] as const;
  return (
    <Frame title={titleOf(club, session)} back>
      <nav class="menu" aria-label={words.menu.title}>
        {items.map(([page, text]) => <button key={page} class="row" onClick={() => go(page)}><span class="value">{text}</span></button>)}
        <button class="row" onClick={() => go("home")}><span class="value">{words.menu.leave}</span></button>
      </nav>
    </Frame>
  );
}
