import { useState } from "preact/hooks";
import { newCode, readCode } from "../capture/code";
import { observerName } from "../data/club";
import { go, useField } from "../field";
import { Frame, Row } from "../parts/frame";
import { Observers } from "./picks";

/** Who scores: one alone, two in turn on this phone, or two phones on the same balls. */
export function Pair({ of }: { of: string }) {
  const { book, words, club, prefs } = useField();
  const take = async (pair: { partner?: string; code?: string } | null) => {
    await book.keep("pair", pair);
    go("home");
  };
  if (of === "turn") {
    return (
      <Frame title={words.pair.whom} back>
        <Observers without={prefs.observer} choose={(partner) => void take({ partner })} />
      </Frame>
    );
  }
  if (of === "phones") return <TwoPhones take={(code) => void take({ code })} />;
  return (
    <Frame title={words.pair.title} back>
      <Row label={words.home.observer} value={observerName(club, prefs.observer)} go={() => go("observer")} />
      <Row label="" value={words.pair.alone} go={() => void take(null)} />
      <Row label="" value={words.pair.turn} go={() => go("pair", "turn")} />
      <Row label="" value={words.pair.phones} go={() => go("pair", "phones")} />
      <p class="lead">{words.pair.text}</p>
    </Frame>
  );
}

function TwoPhones({ take }: { take: (code: string) => void }) {
  const { words } = useField();
  const [code, setCode] = useState("");
  return (
    <Frame title={words.pair.phones} back end={<button class="go" disabled={code.length !== 4} onClick={() => take(code)}>{words.pair.same}</button>}>
      <button class="wide" onClick={() => setCode(newCode())}>{words.pair.make}</button>
      <label class="code">
        {words.pair.word}
        <input autocapitalize="characters" autocomplete="off" maxLength={6} value={code} onInput={(event) => setCode(readCode(event.currentTarget.value))} />
      </label>
      <p class="lead">{words.pair.text}</p>
    </Frame>
  );
}
