import { useEffect, useState } from "preact/hooks";
import { dayOf } from "../capture/clock";
import { greenOf, observerName, type Green } from "../data/club";
import { go, useField, useShown } from "../field";
import { Frame, Keys, Row } from "../parts/frame";
import { nearestGreen, whereAmI, type Place } from "../phone";
import { takeUpdate, useUpdate } from "../worker/offer";
import { greenName } from "./title";

/** Before a visit: the next green of the walk is ready, one touch starts it. */
export function Home() {
  const { acts, act, book, words, club, prefs, prefer } = useField();
  const near = useNearest();
  const update = useUpdate();
  const session = acts.session();
  const green = (club && (greenOf(club, prefs.green) ?? club.greens[0])) as Green | undefined;
  const spots = green?.spots.map((one) => one.id) ?? [];
  const kept = green && prefs.spots[green.id];
  const spot = kept && (spots.length === 0 || spots.includes(kept)) ? kept : (spots[0] ?? "a");
  const [half, setHalf] = useState("");
  const pair = book.get<{ partner?: string; code?: string } | null>("pair") ?? undefined;
  const start = () =>
    act(async () => {
      if (!club || !green) return;
      prefer({ green: green.id, spots: { ...prefs.spots, [green.id]: spot } });
      await acts.start({
        club: club.club.id, green: green.id, half: half || undefined, spot, first: prefs.first, observer: prefs.observer,
        mode: pair && (prefs.mode === "totals" || prefs.mode === "speed") ? "scores" : prefs.mode, ...pair,
      });
      // A shared word is good for one green.
      if (pair?.code) await book.keep("pair", null);
      go("visit");
      if (prefs.nearest) void learnPlace(green.id);
    });
  const learnPlace = async (id: string) => {
    const here = await whereAmI();
    if (here) await book.keep("places", { ...(book.get<Record<string, Place>>("places") ?? {}), [id]: here });
  };
  const who = pair?.partner ? words.home.with(observerName(club, pair.partner)) : pair?.code ? words.home.code(pair.code) : words.home.alone;
  return (
    <Frame
      title={club?.club.name ?? words.title} class="home"
      end={session
        ? <button class="go" onClick={() => go("visit")}>{words.go.resume(greenName(club, session.green))}</button>
        : <button class="go" onClick={start}>{words.go.start(green?.name ?? "")}</button>}
    >
      {update && !session && <button class="wide" onClick={takeUpdate}>{words.kept.update}: {words.kept.updateUse}</button>}
      <button class="next-green" onClick={() => go("green")}>
        <span class="label">{near ? words.home.nearest : words.home.next}</span>
        <b class={(green?.name.length ?? 0) > 6 ? "long" : ""}>{green?.name ?? ""}</b>
        <LastOf green={green} />
      </button>
      <div class="two">
        <section>
          <h2>{words.home.spot}</h2>
          <Keys of={spots.length > 0 ? spots.slice(0, 4) : ["a", "b"]} chosen={spot} text={String} name={words.home.spot} choose={(one) => green && prefer({ spots: { ...prefs.spots, [green.id]: one } })} />
        </section>
        <section>
          <h2>{words.home.firstWay}</h2>
          <Keys of={["out", "back"] as const} chosen={prefs.first} text={(way) => (way === "out" ? words.out : words.backWay)} name={words.home.firstWay} choose={(first) => prefer({ first })} />
        </section>
      </div>
      {green && green.halves.length > 0 && (
        <Keys of={["", ...green.halves]} chosen={half} text={(one) => one || words.home.whole} name={words.home.half} choose={setHalf} />
      )}
      <Row label={words.home.observer} value={`${observerName(club, prefs.observer)}, ${who}`} go={() => go("pair")} />
      <Row label={words.home.mode} value={words.modes[prefs.mode]} go={() => go("mode")} />
      <div class="keys" style={{ "--columns": 3 }}>
        <button class="key" onClick={() => go("reading")}>{words.menu.reading}</button>
        <button class="key" onClick={() => go("work")}>{words.menu.work}</button>
        <button class="key" onClick={() => go("settings")}>{words.menu.settings}</button>
      </div>
      <a class="desk" href="../">{words.desk}</a>
    </Frame>
  );
}

function LastOf({ green }: { green: Green | undefined }) {
  const { book, words } = useField();
  const { length, number, day } = useShown();
  const today = dayOf(Date.now());
  if (green && book.things("visit").some(({ values }) => values.green === green.id && values.day === today)) return <small>✓ {words.home.today}</small>;
  const last = green?.last;
  if (!last) return <small>{words.home.never}</small>;
  const score = last.score_mean == null ? "" : number(last.score_mean, 1);
  return <small>{words.home.last(score, last.speed_m == null ? "" : length(last.speed_m), day(last.day))}</small>;
}

/** Where positions are allowed, the green whose learnt place is nearest comes first. */
function useNearest(): boolean {
  const { book, prefs, prefer, acts } = useField();
  const [near, setNear] = useState(false);
  useEffect(() => {
    const places = book.get<Record<string, Place>>("places");
    if (!prefs.nearest || !places || acts.session()) return;
    let here = true;
    void whereAmI().then((place) => {
      const found = place && nearestGreen(place, places);
      if (!here || !found) return;
      setNear(true);
      prefer({ green: found });
    });
    return () => void (here = false);
  }, []);
  return near;
}

