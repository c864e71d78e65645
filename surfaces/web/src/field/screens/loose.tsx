import type { Row } from "../data/entries";
import { go, useField, useShown } from "../field";

/** Readings and works of this phone, newest first; what was wrong is taken out and written anew. */
export function Loose() {
  const { acts, act, book, core, words } = useField();
  const { number, day } = useShown();
  const w = words.kept;
  const fields = core?.fields({}).ok;
  const named = (name: string) =>
    words.terms[name] ?? [...(fields?.measured ?? []), ...(fields?.works ?? [])].find((one) => one.name === name)?.title ?? name;
  const things = new Map<string, Row>();
  for (const row of book.rows) if (row.entry.kind === "reading" || row.entry.kind === "work") things.set(row.entry.thing, row);
  const shown = [...things].reverse().filter(([thing]) => book.thing(thing)?.values.removed !== true).slice(0, 12);
  if (shown.length === 0) return null;
  return (
    <>
      <h2>{w.readings}</h2>
      <ul class="visits">
        {shown.map(([thing, row]) => {
          const values = book.thing(thing)?.values ?? {};
          const said = book.acknowledged.get(row.entry.id);
          const standing = book.visitStates.get(thing);
          const refused = said?.kept === false || standing?.state === "refused";
          const state = !said ? "kept" : refused ? "refused" : "accepted";
          const reasons = [...(said?.sentence ? [said.sentence] : []), ...(standing?.problems ?? [])];
          const name = String(values.measured ?? values.done_as ?? "");
          const value = typeof values.value === "number" ? `: ${number(values.value, Number.isInteger(values.value) ? 0 : 2)}` : "";
          const greens = Array.isArray(values.greens) ? values.greens.join(", ") || words.work.all : String(values.green ?? "");
          return (
            <li key={thing} class={`visit-item ${state}`}>
              <b>{named(name)}{value}</b>
              <strong class={`state ${state}`}>{w.states[state]}</strong>
              <span>{greens} · {values.day ? day(String(values.day)) : ""} {String(values.at ?? "")}</span>
              {reasons.map((reason) => <small key={reason} lang="en" class="reason">{reason}</small>)}
              {row.entry.kind === "work" && <button class="key small" onClick={() => go("photos", thing)}>{words.menu.photo}</button>}
              <button class="key small" onClick={() => act(() => acts.remove(row.club, row.entry.by, row.entry.kind as "reading" | "work", thing))}>{w.takeOut}</button>
            </li>
          );
        })}
      </ul>
    </>
  );
}
