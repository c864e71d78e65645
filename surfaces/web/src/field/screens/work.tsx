import { useState } from "preact/hooks";
import type { Parameter, WorkKind } from "../core_types";
import { dayOf, timeOf } from "../capture/clock";
import { go, useField } from "../field";
import { Frame, Keys } from "../parts/frame";
import { NumberPad, numberOf } from "../parts/number_pad";

/** What was done to the surface; kinds and their parameters come from the table of kinds. */
export function Work({ of }: { of: string }) {
  const { core, words } = useField();
  const kinds = core?.fields({}).ok?.works ?? [];
  const kind = kinds.find((one) => one.name === of);
  if (kind) return <Details key={kind.name} kind={kind} />;
  return (
    <Frame title={words.work.title} back>
      <h2>{words.work.which}</h2>
      <div class="keys" style={{ "--columns": 2 }}>
        {kinds.map((one) => <button key={one.name} class="key" onClick={() => go("work", one.name)}>{words.terms[one.name] ?? one.title}</button>)}
      </div>
      <p class="quiet">{words.work.caution}</p>
    </Frame>
  );
}

/** Works lower the score only against a score before them. */
function ScoreBefore({ greens }: { greens: string[] }) {
  const { book, words, club, prefer } = useField();
  const today = dayOf(Date.now());
  const visited = new Set(book.things("visit").filter(({ values }) => values.day === today).map(({ values }) => values.green));
  const wanted = (greens.length > 0 ? greens : (club?.greens.map((green) => green.id) ?? [])).filter((id) => !visited.has(id));
  if (wanted.length === 0) return null;
  return (
    <section class="notice">
      <h2>{words.work.before}</h2>
      <p>{words.work.beforeText(wanted.length)}</p>
      <button class="wide" onClick={() => (prefer({ green: wanted[0] as string }), go("home"))}>{words.work.scoreNow}</button>
    </section>
  );
}

function Details({ kind }: { kind: WorkKind }) {
  const { acts, act, words, club, prefs } = useField();
  const [greens, setGreens] = useState<string[]>([]);
  const [given, setGiven] = useState<Record<string, string>>({});
  const [open, setOpen] = useState(kind.parameters.find((one) => one.leading)?.name ?? "");
  const [lowers, setLowers] = useState<"yes" | "no" | "usual">("usual");
  const [note, setNote] = useState("");
  const [until, setUntil] = useState("");
  const [kept, setKept] = useState("");
  const usually = kind.work_class === "disruptive";
  const title = words.terms[kind.name] ?? kind.title;
  const keep = async () => {
    if (!club) return;
    const parameters = Object.fromEntries(
      kind.parameters.flatMap((one) => {
        const text = given[one.name] ?? "";
        const value = one.rule.type === "word" ? text || undefined : numberOf(text);
        return value === undefined ? [] : [[one.name, value]];
      }),
    );
    const now = Date.now();
    const set = {
      club: club.club.id, day: dayOf(now), at: timeOf(now), greens, done_as: kind.name, parameters, ...(until && { until }),
      ...(lowers !== "usual" && { disruptive: lowers === "yes" }), ...(note.trim() && { note: note.trim() }),
    };
    await act(async () => setKept(await acts.work(club.club.id, prefs.observer, set)));
  };
  if (kept) {
    return (
      <Frame title={title} end={<button class="go" onClick={() => go(acts.session() ? "visit" : "home")}>{words.done}</button>}>
        <p class="lead strong" role="status">{words.work.kept}</p>
        <button class="wide" onClick={() => go("photos", kept)}>{words.menu.photo}</button>
      </Frame>
    );
  }
  return (
    <Frame title={title} back end={<button class="go" onClick={keep}>{words.save}</button>}>
      {(lowers === "yes" || (lowers === "usual" && usually)) && <ScoreBefore greens={greens} />}
      <h2>{words.work.greens}</h2>
      <div class="keys fit" role="group" aria-label={words.work.greens}>
        <button class="key span" aria-pressed={greens.length === 0} onClick={() => setGreens([])}>{words.work.all}</button>
        {club?.greens.map(({ id, name }) => (
          <button key={id} class={id.length > 3 ? "key wider" : "key"} aria-pressed={greens.includes(id)} onClick={() => setGreens(greens.includes(id) ? greens.filter((one) => one !== id) : [...greens, id])}>{id.length > 3 ? name : id}</button>
        ))}
      </div>
      {kind.parameters.length > 0 && <h2>{words.work.details}</h2>}
      {kind.parameters.map((one) => (
        <OneParameter key={one.name} of={one} text={given[one.name] ?? ""} open={open === one.name} toggle={() => setOpen(open === one.name ? "" : one.name)} change={(text) => setGiven({ ...given, [one.name]: text })} />
      ))}
      {kind.work_class !== "closing" && (
        <>
          <h2>{words.work.disruptive}</h2>
          <Keys of={["usual", "yes", "no"] as const} chosen={lowers} text={(one) => (one === "usual" ? words.work.usual : one === "yes" ? words.work.yes : words.work.no)} name={words.work.disruptive} choose={setLowers} />
        </>
      )}
      <label>{words.work.until}<input type="date" min={dayOf(Date.now())} value={until} onInput={(event) => setUntil(event.currentTarget.value)} /></label>
      <textarea aria-label={words.menu.note} placeholder={words.menu.note} rows={2} value={note} onInput={(event) => setNote(event.currentTarget.value)} />
    </Frame>
  );
}

function OneParameter(props: { of: Parameter; text: string; open: boolean; toggle: () => void; change: (text: string) => void }) {
  const { words, prefs } = useField();
  const { of: one, text } = props;
  const title = words.terms[one.name] ?? one.title;
  const word = (value: string) => words.terms[value] ?? value.replace(/_/g, " ");
  return (
    <section class={props.open ? "parameter open" : "parameter"}>
      <button class="row" aria-expanded={props.open} onClick={props.toggle}>
        <span class="label">{title}</span>
        <span class="value">{text ? `${one.rule.type === "word" ? word(text) : text.replace(".", prefs.decimal)} ${one.rule.unit}` : "–"}</span>
      </button>
      {props.open && one.rule.type === "word" && one.rule.words.length > 0 && (
        <Keys of={one.rule.words} chosen={text} text={word} name={title} columns={2} choose={(value) => props.change(value === text ? "" : value)} />
      )}
      {props.open && one.rule.type === "word" && one.rule.words.length === 0 && (
        <input aria-label={title} value={text} onInput={(event) => props.change(event.currentTarget.value)} />
      )}
      {props.open && one.rule.type !== "word" && <NumberPad text={text} change={props.change} signed={one.rule.lowest != null && one.rule.lowest < 0} />}
    </section>
  );
}
