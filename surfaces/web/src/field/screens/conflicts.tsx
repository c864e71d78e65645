import { timeOf } from "../capture/clock";
import { observerName } from "../data/club";
import { useField, useShown } from "../field";
import { greenName } from "./title";
import type { Thing } from "../data/fold";

/** Two people wrote the same field apart: both are shown, one touch says which holds. */
export function Conflicts() {
  const { book, act, words, club, prefs } = useField();
  const { length } = useShown();
  const torn = (["visit", "roll", "total", "reading", "work", "photo"] as const).flatMap((kind) => book.things(kind)).filter((thing) => thing.conflicts.length > 0);
  if (torn.length === 0) return null;
  const where = (thing: Thing) => {
    const owner = thing.values.visit ?? thing.values.work;
    const visit = owner ? book.thing(String(owner)) : thing;
    const green = greenName(club, String(visit?.values.green ?? ""));
    const ball = thing.kind === "roll" ? ` · ${thing.values.direction === "back" ? words.backWay : words.out} ${String(thing.values.order ?? "")}` : "";
    return `${green}${ball}`;
  };
  const text = (field: string, value: unknown) => {
    if (value == null) return words.none;
    if (field === "distance") return length(value as number);
    if (field === "marks") return (value as { kind: "bobble" | "chatter" | "snake" }[]).map((mark) => words.marks[mark.kind]).join(", ") || words.standing("");
    return typeof value === "object" ? JSON.stringify(value) : String(value);
  };
  const solve = (thing: Thing, field: string, value: unknown) =>
    act(() => book.write(clubOfThing(thing), "solve", [{ kind: thing.kind, thing: thing.thing, by: prefs.observer, set: { [field]: value } }]));
  const clubOfThing = (thing: Thing) =>
    book.rows.find((row) => row.entry.thing === thing.thing)?.club ??
    [...book.received.values()].find(({ entry }) => entry.thing === thing.thing)?.club ?? club?.club.id ?? "";
  return (
    <section class="notice">
      <h2>{words.kept.conflicts}</h2>
      {torn.flatMap((thing) =>
        thing.conflicts.map(({ field, versions }) => (
          <div key={`${thing.thing} ${field}`}>
            <p>{where(thing)}: {words.kept.conflictText(field in words.deeds ? words.deeds[field as "score"] : field)}</p>
            <div class="keys" style={{ "--columns": versions.length }}>
              {versions.map((one) => (
                <button key={one.entry} class="key tall" onClick={() => solve(thing, field, one.value)}>
                  <b>{text(field, one.value)}</b>
                  <small>{observerName(club, one.by)} {timeOf(Date.parse(one.at))}</small>
                </button>
              ))}
            </div>
          </div>
        )),
      )}
    </section>
  );
}
