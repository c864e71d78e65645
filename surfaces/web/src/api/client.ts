import type {
  ClubName, ConsistencyReview, Fields, GreensReview, MethodsReview, ObserversReview, Photo, Refusal, SeasonChecks, SeasonModel, SeasonReview, VisitDetail, VisitPage, WorkLine, WorkReview,
} from "./schemas";
import { words } from "../words";

/** A refusal or a failure, as the one sentence to show. */
export class Failure extends Error {
  /** The problem's code, where the server refused. */
  readonly code: string | undefined;
  constructor(sentence: string, code?: string) {
    super(sentence);
    this.code = code;
  }
}

/** The server's own sentence; at which path it was asked is of no interest on a page. */
function refused(status: number, body: unknown): Failure {
  const { sentence, problem } = (body ?? {}) as Partial<Refusal>;
  return new Failure(sentence?.replace(/^\/api\/v1\/\S*: /, "") ?? words.failed.answer(status), problem?.code);
}

/** Heard when the server no longer knows who asks: signed out, cut off, or too long ago. */
export const signedOut = "baize-signed-out";
function noteStatus(status: number): void {
  if (status === 401) dispatchEvent(new Event(signedOut));
}

export async function get<T>(path: string, query: Record<string, string | number | undefined> = {}): Promise<T> {
  const url = new URL(`api/v1/${path}`, document.baseURI);
  for (const [name, value] of Object.entries(query)) {
    if (value !== undefined && value !== "") url.searchParams.set(name, String(value));
  }
  let answer: Response;
  try {
    answer = await fetch(url, { headers: { Accept: "application/json" } });
  } catch {
    throw new Failure(words.failed.unreachable);
  }
  const body: unknown = await answer.json().catch(() => undefined);
  if (answer.ok && body !== undefined) return body as T;
  noteStatus(answer.status);
  throw refused(answer.status, body);
}

/** Sends JSON; a refusal becomes a Failure unless its status is among `expected`. */
export async function send(
  path: string, query: Record<string, string | undefined>, json: unknown, expected: number[] = [], method = "POST",
): Promise<{ status: number; body: unknown }> {
  const url = new URL(`api/v1/${path}`, document.baseURI);
  for (const [name, value] of Object.entries(query)) {
    if (value) url.searchParams.set(name, value);
  }
  const answer = await fetch(url, {
    method,
    headers: { Accept: "application/json", "Content-Type": "application/json" },
    ...(json === undefined ? {} : { body: JSON.stringify(json) }),
  }).catch(() => {
    throw new Failure(words.failed.unreachable);
  });
  const body: unknown = await answer.json().catch(() => undefined);
  if ((answer.ok || expected.includes(answer.status)) && body !== undefined) return { status: answer.status, body };
  if (path !== "session") noteStatus(answer.status);
  throw refused(answer.status, body);
}

const id = encodeURIComponent;

export interface VisitFilter {
  green?: string | undefined;
  from?: string | undefined;
  to?: string | undefined;
  offset?: number | undefined;
  limit?: number | undefined;
}

export interface MethodsFilter {
  kind?: string | undefined;
  by?: string | undefined;
  definition?: string | undefined;
}

export const api = {
  clubs: async () => (await get<{ clubs: ClubName[] }>("clubs")).clubs,
  greens: (club: string) => get<GreensReview>(`clubs/${id(club)}/greens`),
  season: (club: string, green: string, year: number) =>
    get<SeasonReview>(`clubs/${id(club)}/greens/${id(green)}/years/${year}`),
  seasonModel: (club: string, green: string, year: number) =>
    get<SeasonModel>(`clubs/${id(club)}/greens/${id(green)}/years/${year}/model`),
  seasonChecks: (club: string) => get<SeasonChecks>(`clubs/${id(club)}/model/checks`),
  works: async (club: string) => (await get<{ works: WorkLine[] }>(`clubs/${id(club)}/works`)).works,
  work: (club: string, work: string) => get<WorkReview>(`clubs/${id(club)}/works/${id(work)}`),
  methods: (club: string, { kind, by, definition }: MethodsFilter) =>
    get<MethodsReview>(`clubs/${id(club)}/methods`, { kind, by, definition }),
  fields: () => get<Fields>("fields"),
  consistency: (club: string) => get<ConsistencyReview>(`clubs/${id(club)}/consistency`),
  observers: (club: string) => get<ObserversReview>(`clubs/${id(club)}/observers`),
  // Field by field: the server refuses a query that holds anything else.
  visits: (club: string, { green, from, to, offset, limit }: VisitFilter) =>
    get<VisitPage>(`clubs/${id(club)}/visits`, { green, from, to, offset, limit }),
  /** of a visit or a work, or all */
  photos: async (club: string, of?: string) => (await get<{ photos: Photo[] }>(`clubs/${id(club)}/photos`, { of })).photos,
  visit: (club: string, visit: string) => get<VisitDetail>(`clubs/${id(club)}/visits/${id(visit)}`),
};
