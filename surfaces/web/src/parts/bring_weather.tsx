import { useState } from "preact/hooks";
import { bringWeather } from "../api/bring";
import { readFile, type ChosenFile } from "../api/files";
import type { ImportedWeather } from "../api/schemas";
import { words } from "../words";
import { Sentences } from "./sentences";
import { AnswerPlace, useAnswer } from "./answer";

const w = words.bring;

/** The station's daily file: how it is understood is shown, and can be put right. */
export function BringWeather(props: { club: string }) {
  const { club } = props;
  const [file, setFile] = useState<ChosenFile>();
  const [map, setMap] = useState("");
  const { state, ask } = useAnswer<ImportedWeather>();
  const look = async (chosen: ChosenFile, lines: string, keep: boolean) => {
    const answer = await bringWeather(club, chosen, lines, keep);
    setMap(answer.mapping.join("\n"));
    return answer;
  };
  const choose = async (chosen: File) => {
    const read = await readFile(chosen);
    setFile(read);
    return look(read, "", false);
  };
  return (
    <section>
      <h2>{w.weather}</h2>
      <p class="quiet">{w.weatherText}</p>
      <form class="trial-form" onSubmit={(event) => event.preventDefault()}>
        <label class="wide">
          <span>{w.chooseWeather}</span>
          <input
            type="file"
            onChange={(event) => {
              const chosen = event.currentTarget.files?.[0];
              if (chosen) ask(() => choose(chosen));
            }}
          />
        </label>
      </form>
      {file && map && (
        <form
          class="trial-form"
          onSubmit={(event) => {
            event.preventDefault();
            ask(() => look(file, map, false));
          }}
        >
          <label class="wide">
            <span>{w.mapping}</span>
            <textarea rows={Math.min(16, map.split("\n").length + 1)} spellcheck={false} value={map} onInput={(event) => setMap(event.currentTarget.value)} />
          </label>
          <div class="wide">
            <button type="submit">{w.again}</button>
          </div>
        </form>
      )}
      <AnswerPlace state={state}>
        {(answer) => {
          const days = answer.files[0]?.records ?? 0;
          if (answer.receipt) return <p class="notice" role="status">{w.weatherKept(days)}</p>;
          return (
            <>
              <p class="lead">{answer.problems.length > 0 ? w.weatherProblems(answer.problems.length) : w.weatherFine(days)}</p>
              {answer.problems.length === 0 && file && (
                <p>
                  <button type="button" class="chief" onClick={() => ask(() => look(file, map, true))}>{w.keepWeather}</button>
                </p>
              )}
              <Sentences title={w.toMend} all={answer.problems} />
              <Sentences title={w.worthALook} all={answer.remarks} />
            </>
          );
        }}
      </AnswerPlace>
    </section>
  );
}
