import { useState } from "preact/hooks";
import type { Session } from "../capture/session";
import { goBack, useField } from "../field";
import { Frame } from "../parts/frame";

export function Note() {
  const { acts, act, book, words } = useField();
  const session = acts.session() as Session;
  const [text, setText] = useState(String(book.thing(session.visit)?.values.note ?? ""));
  const keep = async () => (await act(() => acts.visit(session, "note", { note: text.trim() || null }))) && goBack();
  return (
    <Frame title={words.menu.note} back end={<button class="go" onClick={keep}>{words.save}</button>}>
      <textarea aria-label={words.menu.note} placeholder={words.noteHint} rows={6} value={text} onInput={(event) => setText(event.currentTarget.value)} />
    </Frame>
  );
}
