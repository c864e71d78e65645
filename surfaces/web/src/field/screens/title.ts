import type { Session } from "../capture/session";
import { greenOf, type Club } from "../data/club";

export const greenName = (club: Club | undefined, green: string) => (club && greenOf(club, green)?.name) || green;
export const titleOf = (club: Club | undefined, session: Session) => `${greenName(club, session.green)} · ${session.spot}`;
