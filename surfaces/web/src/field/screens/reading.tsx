import { useState } from "preact/hooks";
import type { MeasuredField } from "../core_types";
import { dayOf, timeOf } from "../capture/clock";
import { greenOf } from "../data/club";
import { go, useField, useShown } from "../field";
import { Frame, Keys } from "../parts/frame";
import { NumberPad, numberOf } from "../parts/number_pad";
import { greenName } from "./title";

const title = (terms: Record<string, string>, field: { name: string; title: string }) => terms[field.name] ?? field.title;

/** Any other measured quantity; kinds, units and ranges come from the table of measured fields. */
export function Reading({ of }: { of: string }) {
  const { core, words } = useField();
  const kinds = core?.fields({}).ok?.measured.filter((field) => field.record === "reading_kind") ?? [];
  const kind = kinds.find((field) => field.name === of);
  if (kind) return <Value kind={kind} />;
  return (
    <Frame title={words.reading.title} back>
      <div class="keys" style={{ "--columns": 2 }}>
        {kinds.map((field) => (
          <button key={field.name} class="key tall" onClick={() => go("reading", field.name)}>
            <span>{title(words.terms, field)}</span>
            <small>{field.rule.unit}</small>
          </button>
        ))}
      </div>
    </Frame>
  );
}

function Value({ kind }: { kind: MeasuredField }) {
  const { acts, act, words, club, prefs, prefer } = useField();
  const { number } = useShown();
  const session = acts.session();
  const green = session?.green ?? prefs.green;
  const spots = (club && greenOf(club, green)?.spots.map((one) => one.id)) ?? [];
  const [text, setText] = useState("");
  const [spot, setSpot] = useState("");
  const [kept, setKept] = useState(false);
  const value = numberOf(text);
  const { lowest, highest, unit } = kind.rule;
  const fits = value !== undefined && (lowest == null || value >= lowest) && (highest == null || value <= highest);
  const withRod = kind.name === "soil_moisture";
  const rod = Number(prefs.rod);
  const keep = async () => {
    if (!fits || !club) return;
    const now = Date.now();
    const set = {
      club: club.club.id, green, ...(spot && { spot }), observer: prefs.observer, day: dayOf(now), at: timeOf(now), measured: kind.name, value,
      ...(prefs.device && { device: prefs.device }), ...(withRod && rod > 0 && { rod_length: rod }),
    };
    if (!(await act(() => acts.reading(club.club.id, prefs.observer, set)))) return;
    setText("");
    setKept(true);
  };
  const place = (mm: number | null) => (mm == null ? "" : number(mm, Number.isInteger(mm) ? 0 : 1));
  return (
    <Frame title={title(words.terms, kind)} back end={<button class="go" disabled={!fits} onClick={keep}>{words.save}</button>}>
      <p class="asked">{greenName(club, green)}</p>
      {spots.length > 0 && <Keys of={["", ...spots.slice(0, 3)]} chosen={spot} text={(one) => one || words.reading.all} name={words.reading.at} choose={setSpot} />}
      <output class={`length-now ${text && !fits ? "wrong" : ""}`} aria-live="polite">
        {text ? text.replace(".", prefs.decimal) : kept ? words.reading.kept : "–"} <small>{unit}</small>
      </output>
      {text && !fits && <p class="strong">{words.reading.rule(place(lowest), place(highest), unit)}</p>}
      <NumberPad text={text} change={setText} signed={lowest != null && lowest < 0} />
      <div class="two">
        <label>{words.reading.device}<input value={prefs.device} onInput={(event) => prefer({ device: event.currentTarget.value })} /></label>
        {withRod && <label>{words.reading.rod}, mm<input inputMode="numeric" value={prefs.rod} onInput={(event) => prefer({ rod: event.currentTarget.value })} /></label>}
      </div>
    </Frame>
  );
}
