import type { Session } from "../capture/session";
import type { VisitFields } from "../data/entries";
import { goBack, useField } from "../field";
import { Frame } from "../parts/frame";

/** Day, times, green and observer of a visit, to be put right; each change is an entry of its own. */
export function When() {
  const { acts, act, book, words, club } = useField();
  const session = acts.session() as Session;
  const held = (book.thing(session.visit)?.values ?? {}) as VisitFields;
  const w = words.when;
  const set = (change: VisitFields) => act(() => acts.visit(session, "when", change));
  const move = async (change: Partial<Pick<Session, "green" | "observer">>) => {
    if (await set(change)) await acts.reopen({ ...session, ...change });
  };
  const field = (name: "day" | "from" | "to", type: string, title: string) => (
    <label>
      {title}
      <input type={type} value={held[name] ?? ""} onChange={(event) => set({ [name]: event.currentTarget.value || null })} />
    </label>
  );
  return (
    <Frame title={words.menu.when} back end={<button class="go" onClick={goBack}>{words.done}</button>}>
      {field("day", "date", w.day)}
      <div class="two">
        {field("from", "time", w.from)}
        {field("to", "time", w.to)}
      </div>
      <label>
        {words.work.greens}
        <select value={session.green} onChange={(event) => move({ green: event.currentTarget.value })}>
          {club?.greens.map((green) => <option key={green.id} value={green.id}>{green.name}</option>)}
        </select>
      </label>
      {club && club.observers.length > 0 && (
        <label>
          {words.home.observer}
          <select value={session.observer} onChange={(event) => move({ observer: event.currentTarget.value })}>
            {club.observers.map((one) => <option key={one.id} value={one.id}>{one.name || one.id}</option>)}
          </select>
        </label>
      )}
    </Frame>
  );
}
