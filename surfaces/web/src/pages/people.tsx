import { useState } from "preact/hooks";
import { people } from "../api/people";
import type { ClubPeople, NewInvitation, NewLink, PersonLine, Role, SessionLine } from "../api/schemas";
import { Failure } from "../api/client";
import { Load } from "../parts/load";
import { middleDay } from "../state/format";
import { words } from "../words";

const w = words.people.page;
const roles = words.people.roles;
const roleNames = Object.keys(roles) as Role[];
const day = (instant: string) => middleDay(instant.slice(0, 10));

interface Acting {
  club: string;
  /** does it, and shows how things stand then */
  act: (work: () => Promise<ClubPeople | void>) => void;
}

export function PeoplePage(props: { club: string }) {
  return (
    <Load of={`people ${props.club}`} ask={() => people.of(props.club)}>
      {(first) => <Standing club={props.club} first={first} />}
    </Load>
  );
}

function Standing(props: { club: string; first: ClubPeople }) {
  const { club } = props;
  const [all, setAll] = useState(props.first);
  const [sentence, setSentence] = useState("");
  const act = (work: () => Promise<ClubPeople | void>) => {
    setSentence("");
    work()
      .then(async (now) => setAll(now ?? (await people.of(club))))
      .catch((problem: Error) => {
        if (!(problem instanceof Failure)) console.error(problem);
        setSentence(problem.message);
      });
  };
  const acting = { club, act };
  return (
    <article class="people">
      <header class="page-head">
        <h1 tabIndex={-1}>{w.title}</h1>
        <p class="lead">{w.lead}</p>
      </header>
      {sentence && <p class="notice refused" role="alert">{sentence}</p>}
      <section>
        <h2>{w.who}</h2>
        <ul class="persons">{all.people.map((person) => <Person key={person.id} {...acting} person={person} />)}</ul>
      </section>
      <Invite {...acting} all={all} />
      <Links {...acting} all={all} />
    </article>
  );
}

function Person(props: Acting & { person: PersonLine }) {
  const { club, act, person } = props;
  const [asking, setAsking] = useState(false);
  return (
    <li class="notice person">
      <div class="person-head">
        <h3>{person.name}{person.you && <small> ({w.you})</small>}</h3>
        <label>
          <span class="unseen">{w.role(person.name)}</span>
          <select value={person.role} onChange={(event) => act(() => people.setRole(club, person.id, event.currentTarget.value as Role))}>
            {roleNames.map((role) => <option key={role} value={role}>{roles[role].name}</option>)}
          </select>
        </label>
      </div>
      <p class="quiet">{roles[person.role].may}</p>
      {person.sessions.length === 0 && <p class="quiet">{w.none}</p>}
      <ul class="sessions">
        {person.sessions.map((session) => (
          <li key={session.id}>
            <span>{w.seen(session.device, day(session.seen))}</span>
            <button type="button" aria-label={w.cutOffOne(session.device, person.name)} onClick={() => act(() => people.cutOff(club, person.id, session.id))}>
              {w.cutOff}
            </button>
          </li>
        ))}
      </ul>
      {asking ? (
        <p class="sure">
          {w.takeOutSure(person.name)}{" "}
          <button type="button" onClick={() => act(() => people.takeOut(club, person.id))}>{w.yes}</button>{" "}
          <button type="button" onClick={() => setAsking(false)}>{w.no}</button>
        </p>
      ) : (
        <button type="button" class="plain" onClick={() => setAsking(true)}>{w.takeOut}</button>
      )}
    </li>
  );
}

/** Told once: afterwards only its digest is known. */
function Told(props: { made: NewInvitation | NewLink; done: () => void }) {
  const { made } = props;
  const [copied, setCopied] = useState(false);
  const picture = "scan_code" in made ? made.scan_code : "";
  return (
    <div class="notice told-link" role="status">
      {picture && (
        <figure>
          <img src={`data:image/svg+xml,${encodeURIComponent(picture)}`} width="260" height="260" alt={w.scan} />
          <figcaption>{w.scan}</figcaption>
        </figure>
      )}
      <div>
        <p>{w.or}</p>
        <p class="link-text">{made.url}</p>
        <button type="button" onClick={() => void navigator.clipboard?.writeText(made.url).then(() => setCopied(true))}>
          {copied ? w.copied : w.copy}
        </button>{" "}
        <button type="button" onClick={props.done}>{w.done}</button>
      </div>
    </div>
  );
}

function Invite(props: Acting & { all: ClubPeople }) {
  const { club, act, all } = props;
  const [role, setRole] = useState<Role>("observer");
  const [made, setMade] = useState<NewInvitation>();
  return (
    <section>
      <h2>{w.invite}</h2>
      <p>{w.inviteText}</p>
      {made ? (
        <Told made={made} done={() => (setMade(undefined), act(async () => undefined))} />
      ) : (
        <form class="trial-form" onSubmit={(event) => (event.preventDefault(), act(async () => setMade(await people.invite(club, role))))}>
          <label>
            <span>{w.as}</span>
            <select value={role} onChange={(event) => setRole(event.currentTarget.value as Role)}>
              {roleNames.map((one) => <option key={one} value={one}>{`${roles[one].name}: ${roles[one].may}`}</option>)}
            </select>
          </label>
          <button>{w.inviteButton}</button>
        </form>
      )}
      {all.invitations.length > 0 && <h3>{w.open}</h3>}
      <ul class="sessions">
        {all.invitations.map((one) => (
          <li key={one.id}>
            <span>{w.openLine(roles[one.role].name, one.by, day(one.ends))}</span>
            <button type="button" onClick={() => act(() => people.endInvitation(club, one.id))}>{w.takeBack}</button>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Links(props: Acting & { all: ClubPeople }) {
  const { club, act, all } = props;
  const [label, setLabel] = useState("");
  const [days, setDays] = useState(30);
  const [made, setMade] = useState<NewLink>();
  return (
    <section>
      <h2>{w.links}</h2>
      <p>{w.linksText}</p>
      {made ? (
        <Told made={made} done={() => setMade(undefined)} />
      ) : (
        <form class="trial-form" onSubmit={(event) => (event.preventDefault(), act(async () => setMade(await people.makeLink(club, label, days))))}>
          <label>
            <span>{w.label}</span>
            <input required maxLength={60} value={label} onInput={(event) => setLabel(event.currentTarget.value)} />
          </label>
          <label>
            <span>{w.days}</span>
            <input type="number" required min={1} max={400} value={days} onInput={(event) => setDays(event.currentTarget.valueAsNumber)} />
          </label>
          <button>{w.linkButton}</button>
        </form>
      )}
      <ul class="sessions">
        {all.links.map((one) => (
          <li key={one.id}>
            <span>{w.linkLine(one.label, day(one.ends), one.opened)}</span>
            <button type="button" aria-label={`${w.cutOff}: ${one.label}`} onClick={() => act(() => people.endLink(club, one.id))}>{w.cutOff}</button>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Everybody's own sessions. */
export function SessionsPage() {
  const own = words.people.own;
  const [turn, setTurn] = useState(0);
  const end = (session: SessionLine) => void people.endOwn(session.id).then(() => setTurn(turn + 1), () => setTurn(turn + 1));
  return (
    <article class="people">
      <header class="page-head">
        <h1 tabIndex={-1}>{own.title}</h1>
        <p class="lead">{own.lead}</p>
      </header>
      <Load of={`sessions ${turn}`} ask={people.own}>
        {(all) => (
          <ul class="sessions">
            {all.map((session) => (
              <li key={session.id}>
                <span>{w.seen(session.device, day(session.seen))}{session.this && ` (${own.this})`}</span>
                <button type="button" onClick={() => end(session)}>{own.end}</button>
              </li>
            ))}
          </ul>
        )}
      </Load>
    </article>
  );
}
