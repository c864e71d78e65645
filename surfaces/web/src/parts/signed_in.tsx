import { useContext } from "preact/hooks";
import { people } from "../api/people";
import { linkTo } from "../state/route";
import { SessionContext } from "../state/session";
import { words } from "../words";

const w = words.people.here;

/** Who is signed in, and the way out; nothing where nobody signs in. */
export function SignedIn() {
  const session = useContext(SessionContext);
  if (session.caller !== "person" && session.caller !== "link") return null;
  const out = async () => {
    await people.signOut().catch(() => undefined);
    location.hash = linkTo({ page: "sign-in" });
    location.reload();
  };
  return (
    <details class="settings signed-in">
      <summary>{session.caller === "person" ? session.name : w.link(session.name ?? "")}</summary>
      <div class="settings-box">
        <p>{session.caller === "person" ? w.person(session.name ?? "") : w.link(session.name ?? "")}</p>
        {session.caller === "person" && <a href={linkTo({ page: "sessions" })}>{w.sessions}</a>}
        <button type="button" onClick={out}>{w.out}</button>
      </div>
    </details>
  );
}
