import type { Club } from "../data/club";
import type { Entry } from "../data/entries";

export interface Problem {
  code: string;
  field: string;
  value: string;
  rule: string;
  sentence?: string;
}
export interface HandOver {
  form: "baize-entries";
  version: 1;
  phone: string;
  sent_at: string;
  entries: Entry[];
  /** only in a file */
  photos?: { photo: string; jpeg: string }[];
}
export interface Receipt {
  kept: string[];
  refused: { id: string; problem: Problem }[];
  visits: { visit: string; state: "accepted" | "refused" | "open"; problems: string[]; conflicts: number }[];
  /** readings, works and photos; a server that names none has refused none */
  others?: { thing: string; state: "accepted" | "refused" | "open"; problems: string[]; conflicts: number }[];
  server_time: string;
}

/** The whole request was refused; trying again changes nothing until the reason is mended. */
export class Refused extends Error {}
/** Nobody is signed in on this phone any more; all of it stays here until somebody is. */
export class SignedOut extends Refused {}

/** What the sync needs of a server; tests have one of their own. */
export interface Server {
  clubs(): Promise<{ id: string; name: string }[]>;
  club(id: string, tag: string | undefined): Promise<{ club: Club; tag: string | undefined } | "same">;
  send(club: string, body: HandOver): Promise<Receipt>;
  entries(club: string, since: number, limit: number): Promise<{ entries: Entry[]; next: number }>;
  /** resolves when the picture is on the server's disk */
  picture(club: string, photo: string, bytes: ArrayBuffer): Promise<void>;
}

async function packed(text: string): Promise<{ body: BodyInit; headers: Record<string, string> }> {
  const headers: Record<string, string> = { "Content-Type": "application/json" };
  if (typeof CompressionStream === "undefined") return { body: text, headers };
  const stream = new Blob([text]).stream().pipeThrough(new CompressionStream("gzip"));
  return { body: await new Response(stream).blob(), headers: { ...headers, "Content-Encoding": "gzip" } };
}

async function answer(path: string, options: RequestInit = {}, wait = 30_000): Promise<Response> {
  const found = await fetch(new URL(`/api/v1/${path}`, location.origin), { cache: "no-store", ...options, signal: AbortSignal.timeout(wait) });
  if (found.ok || found.status === 304) return found;
  const said = (await found.json().catch(() => undefined)) as Problem | undefined;
  const sentence = said?.sentence ?? `${found.status}`;
  if (found.status === 401) throw new SignedOut(sentence);
  // 5xx and 429 pass; 4xx does not without a change.
  if (found.status >= 400 && found.status < 500 && found.status !== 408 && found.status !== 429) throw new Refused(sentence);
  throw new Error(sentence);
}

export const httpServer: Server = {
  async clubs() {
    return ((await (await answer("clubs")).json()) as { clubs: { id: string; name: string }[] }).clubs;
  },
  async club(id, tag) {
    const found = await answer(`clubs/${encodeURIComponent(id)}/field`, tag ? { headers: { "If-None-Match": tag } } : {});
    if (found.status === 304) return "same";
    return { club: (await found.json()) as Club, tag: found.headers.get("ETag") ?? undefined };
  },
  async send(club, body) {
    const { body: bytes, headers } = await packed(JSON.stringify(body));
    return (await answer(`clubs/${encodeURIComponent(club)}/entries`, { method: "POST", body: bytes, headers })).json() as Promise<Receipt>;
  },
  async entries(club, since, limit) {
    return (await answer(`clubs/${encodeURIComponent(club)}/entries?since=${since}&limit=${limit}`)).json() as Promise<{ entries: Entry[]; next: number }>;
  },
  async picture(club, photo, bytes) {
    await answer(`clubs/${encodeURIComponent(club)}/photos/${photo}`, { method: "PUT", body: bytes, headers: { "Content-Type": "image/jpeg" } }, 180_000);
  },
};
