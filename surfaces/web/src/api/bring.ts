import { Failure, send } from "./client";
import type { Imported, ImportedWeather, Refusal } from "./schemas";
import { words } from "../words";

export interface ReceivedFile {
  name: string;
  content: string;
}

/** Every byte as it is, a mark at the start too: export gives the same file back. */
export async function readFile(file: File): Promise<ReceivedFile> {
  try {
    const content = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(await file.arrayBuffer());
    return { name: file.name, content };
  } catch {
    throw new Failure(words.bring.notText(file.name));
  }
}

/** Looks through the files, or keeps them: all of them or, with one problem, none. */
export async function bringIn(files: ReceivedFile[], keep: boolean): Promise<Imported> {
  const { body } = await send("import", { dry_run: keep ? undefined : "true" }, { files }, [422]);
  const answer = body as Partial<Imported> & Partial<Refusal>;
  if (!answer.problems) throw new Failure(answer.sentence ?? words.failed.unreachable);
  return answer as Imported;
}

/** One daily weather file, by the mapping's lines; without lines they are guessed. */
export async function bringWeather(club: string, file: ReceivedFile, map: string, keep: boolean): Promise<ImportedWeather> {
  const query = { dry_run: keep ? undefined : "true", map: map || undefined };
  const { body } = await send(`clubs/${encodeURIComponent(club)}/weather`, query, { files: [file] }, [422]);
  const answer = body as Partial<ImportedWeather> & Partial<Refusal>;
  if (!answer.mapping) throw new Failure(answer.sentence ?? words.failed.unreachable);
  return answer as ImportedWeather;
}
