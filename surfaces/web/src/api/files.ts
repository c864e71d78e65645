import { Failure, send } from "./client";
import type { Refusal, Remark } from "./schemas";
import { words } from "../words";

/** A file as the reader chose it. */
export interface ChosenFile {
  name: string;
  content: string;
}

/** Every byte as it is, a mark at the start too: export gives the same file back. */
export async function readFile(file: File): Promise<ChosenFile> {
  try {
    const content = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(await file.arrayBuffer());
    return { name: file.name, content };
  } catch {
    throw new Failure(words.bring.notText(file.name));
  }
}

/**
 * Sends files and gives the answer, also one that lists what is wrong in them;
 * a plain refusal becomes a Failure.
 */
export async function sendFiles<T extends { problems?: Remark[] }>(
  path: string, query: Record<string, string | undefined>, files: ChosenFile[],
): Promise<T> {
  const { status, body } = await send(path, query, { files }, [422]);
  const answer = body as T & Partial<Refusal>;
  if (status === 422 && !answer.problems) throw new Failure(answer.sentence ?? words.failed.answer(status));
  return answer;
}
