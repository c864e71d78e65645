import type { Session } from "../capture/session";
import { sameDayConditions } from "../capture/same_day";
import type { VisitFields } from "../data/entries";
import { goBack, useFeel, useField } from "../field";
import { Frame, Keys } from "../parts/frame";
import { greenName } from "./title";

const hours = [0, 1, 2, 4, 8, 12, 24, 48];
const worded = ["dew", "wind", "surface"] as const;

/** Five touches and done. The words come from the table of measured fields. */
export function Conditions() {
  const { acts, act, book, core, words, club } = useField();
  const felt = useFeel();
  const session = acts.session() as Session;
  const held = (book.thing(session.visit)?.values ?? {}) as VisitFields;
  const fields = core?.fields({}).ok?.measured ?? [];
  const set = (change: VisitFields) => {
    felt("key");
    void act(() => acts.visit(session, "conditions", change));
  };
  const w = words.conditions;
  const before = sameDayConditions(book, session);
  const hoursOf = (name: "hours_since_mowing" | "hours_since_rolling", title: string) => (
    <section>
      <h2>{title}</h2>
      <Keys of={hours} chosen={held[name] ?? undefined} text={String} name={title} columns={4} choose={(value) => set({ [name]: held[name] === value ? null : value })} />
    </section>
  );
  return (
    <Frame title={words.menu.conditions} back class="conditions" end={<button class="go" onClick={goBack}>{words.done}</button>}>
      {before && <button class="wide" onClick={() => set(before.set)}>{w.same(greenName(club, before.green))}</button>}
      {hoursOf("hours_since_mowing", w.mowing)}
      {hoursOf("hours_since_rolling", w.rolling)}
      {worded.map((name) => {
        const choices = fields.find((field) => field.record === "visit" && field.name === name)?.rule.words ?? [];
        return (
          <section key={name}>
            <h2>{w[name]}</h2>
            <Keys of={choices} chosen={held[name] ?? undefined} text={(word) => w.words[word] ?? word} name={w[name]} choose={(value) => set({ [name]: held[name] === value ? null : value })} />
          </section>
        );
      })}
    </Frame>
  );
}
