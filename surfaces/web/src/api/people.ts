import type { ClubPeople, InvitationOffer, NewInvitation, NewLink, Role, Session, SessionLine } from "./schemas";
import { get, send } from "./client";

const id = encodeURIComponent;
/** To tell one's sessions apart later: no more than that is said of the device. */
const device = () => (matchMedia("(pointer: coarse)").matches ? "phone" : "computer");

async function asked<T>(method: string, path: string, json?: unknown): Promise<T> {
  return (await send(path, {}, json, [], method)).body as T;
}

export const people = {
  session: () => get<Session>("session"),
  signIn: (name: string, password: string) => asked<Session>("POST", "session", { name, password, device: device() }),
  openLink: (link: string) => asked<Session>("POST", "session", { link, device: device() }),
  signOut: () => asked<Session>("DELETE", "session"),
  own: async () => (await get<{ sessions: SessionLine[] }>("sessions")).sessions,
  endOwn: (session: string) => asked("DELETE", `sessions/${id(session)}`),
  look: (token: string) => asked<InvitationOffer>("POST", "invitations/look", { token }),
  /** With a name: a new account. Without: the one that is signed in. */
  accept: (token: string, account?: { name: string; password: string }) =>
    asked<Session>("POST", "invitations/accept", { token, ...account, device: device() }),
  of: (club: string) => get<ClubPeople>(`clubs/${id(club)}/people`),
  setRole: (club: string, person: string, role: Role) =>
    asked<ClubPeople>("PUT", `clubs/${id(club)}/people/${id(person)}`, { role }),
  takeOut: (club: string, person: string) => asked<ClubPeople>("DELETE", `clubs/${id(club)}/people/${id(person)}`),
  cutOff: (club: string, person: string, session: string) =>
    asked<ClubPeople>("DELETE", `clubs/${id(club)}/people/${id(person)}/sessions/${id(session)}`),
  invite: (club: string, role: Role) => asked<NewInvitation>("POST", `clubs/${id(club)}/invitations`, { role }),
  endInvitation: (club: string, one: string) => asked<ClubPeople>("DELETE", `clubs/${id(club)}/invitations/${id(one)}`),
  makeLink: (club: string, label: string, days: number) =>
    asked<NewLink>("POST", `clubs/${id(club)}/links`, { label, days }),
  endLink: (club: string, one: string) => asked<ClubPeople>("DELETE", `clubs/${id(club)}/links/${id(one)}`),
};
