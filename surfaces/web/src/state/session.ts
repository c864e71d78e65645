import { createContext } from "preact";
import { useContext } from "preact/hooks";
import type { Right, Session } from "../api/schemas";

export const everyone: Session = { sign_in: false, caller: "everyone", clubs: [] };
export const SessionContext = createContext<Session>(everyone);

/** What the pages hide is refused by the server too; this only keeps them from offering it. */
export function may(session: Session, right: Right, club: string | undefined): boolean {
  if (session.caller === "everyone") return true;
  return session.clubs.some((one) => one.id === club && one.may.includes(right));
}
export function useMay(right: Right, club: string | undefined): boolean {
  return may(useContext(SessionContext), right, club);
}
