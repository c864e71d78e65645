import { useState } from "preact/hooks";
import { bringIn } from "../api/bring";
import { readFile, type ChosenFile } from "../api/files";
import type { FileReport, Imported } from "../api/schemas";
import { BringWeather } from "../parts/bring_weather";
import { Sentences } from "../parts/sentences";
import { Table } from "../parts/table";
import { AnswerPlace, useAnswer } from "../parts/answer";
import { linkTo } from "../state/route";
import { words } from "../words";

const w = words.bring;

/** Files are looked through as soon as they are chosen; keeping them is a second step. */
export function BringPage(props: { club: string | undefined }) {
  const [files, setFiles] = useState<ChosenFile[]>([]);
  const { state, ask } = useAnswer<Imported>();
  const look = async (chosen: File[]) => {
    const read = await Promise.all(chosen.map(readFile));
    setFiles(read);
    return bringIn(read, false);
  };
  return (
    <article>
      <header class="page-head">
        <h1 tabIndex={-1}>{w.title}</h1>
        <p class="lead">{w.intro}</p>
        <p class="quiet">{w.rules}</p>
      </header>
      <form class="trial-form" onSubmit={(event) => event.preventDefault()}>
        <label class="wide">
          <span>{w.choose}</span>
          <input
            type="file"
            multiple
            accept=".csv,text/csv"
            onChange={(event) => {
              const chosen = [...(event.currentTarget.files ?? [])];
              if (chosen.length > 0) ask(() => look(chosen));
            }}
          />
        </label>
      </form>
      <AnswerPlace state={state}>
        {(answer) => (answer.receipt ? <Kept answer={answer} /> : <Looked answer={answer} keep={() => ask(() => bringIn(files, true))} />)}
      </AnswerPlace>
      {props.club && <BringWeather club={props.club} />}
    </article>
  );
}

function Looked(props: { answer: Imported; keep: () => void }) {
  const { answer } = props;
  return (
    <>
      <p class="lead">{answer.problems.length > 0 ? w.problems(answer.problems.length) : w.fine}</p>
      {answer.problems.length === 0 && (
        <p>
          <button type="button" class="chief" onClick={props.keep}>{w.keep}</button>
        </p>
      )}
      <Sentences title={w.toMend} all={answer.problems} />
      <Table<FileReport>
        caption={w.files}
        rows={answer.files}
        columns={[
          { head: w.file, cell: (file) => file.name },
          { head: w.rows, number: true, cell: (file) => file.rows },
          { head: w.records, number: true, cell: (file) => file.records },
          { head: w.faults, number: true, cell: (file) => file.problems },
        ]}
      />
      <Sentences title={w.worthALook} all={answer.remarks} />
    </>
  );
}

function Kept(props: { answer: Imported }) {
  const { answer } = props;
  const { added = 0, corrected = 0, unchanged = 0 } = answer.receipt ?? {};
  return (
    <section class="notice" role="status">
      <h2>{w.kept}</h2>
      <p>{w.receipt(added, corrected, unchanged)}</p>
      <p>
        <a
          href={linkTo({ page: "greens", club: answer.club })}
          onClick={(event) => {
            // The list of clubs is read once; a new club needs it again.
            event.preventDefault();
            location.hash = linkTo({ page: "greens", club: answer.club });
            location.reload();
          }}
        >
          {w.look}
        </a>
      </p>
    </section>
  );
}
