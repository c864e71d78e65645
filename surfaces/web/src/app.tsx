import { useContext, useEffect, useRef, useState } from "preact/hooks";
import { api, signedOut } from "./api/client";
import { people } from "./api/people";
import type { ClubName, Session } from "./api/schemas";
import { Load } from "./parts/load";
import { SettingsMenu } from "./parts/settings_menu";
import { SignedIn } from "./parts/signed_in";
import { BringPage } from "./pages/bring";
import { GreensPage } from "./pages/greens";
import { ConsistencyPage } from "./pages/consistency";
import { MethodsPage } from "./pages/methods";
import { ObserversPage } from "./pages/observers";
import { PeoplePage, SessionsPage } from "./pages/people";
import { PhotosPage } from "./pages/photos";
import { RecordsPage, visitsPerPage } from "./pages/records";
import { JoinPage, LinkPage, SignInPage } from "./pages/sign_in";
import { TrialsPage } from "./pages/trials";
import { VisitPageView } from "./pages/visit";
import { WorkPage } from "./pages/work";
import { WorksPage } from "./pages/works";
import { YearPage } from "./pages/year";
import { linkTo, parseRoute, type Route } from "./state/route";
import { may, SessionContext } from "./state/session";
import { keepSettings, loadSettings, SettingsContext, type Settings } from "./state/settings";
import { words } from "./words";

function useRoute(): Route {
  const [hash, setHash] = useState(location.hash);
  useEffect(() => {
    const changed = () => setHash(location.hash);
    addEventListener("hashchange", changed);
    return () => removeEventListener("hashchange", changed);
  }, []);
  return parseRoute(hash);
}

export function App() {
  const [settings, setSettings] = useState<Settings>(loadSettings);
  const route = useRoute();
  const choose = (chosen: Settings) => {
    keepSettings(chosen);
    setSettings(chosen);
  };
  return (
    <SettingsContext.Provider value={settings}>
      <Doors route={route}>
        <Load of="clubs" ask={api.clubs}>
          {(clubs) => {
            const club = "club" in route && route.club ? route.club : clubs[0]?.id;
            return (
              <Shell clubs={clubs} club={club} route={route} settings={settings} choose={choose}>
                {route.page === "sessions" ? <SessionsPage /> : route.page === "bring" ? <BringPage club={club} /> : club ? <Page club={club} route={route} /> : <NoClub />}
              </Shell>
            );
          }}
        </Load>
      </Doors>
    </SettingsContext.Provider>
  );
}

/** Asks the server who we are. Who has not signed in where people do comes no further. */
function Doors(props: { route: Route; children: preact.ComponentChildren }) {
  const { route } = props;
  const [turn, setTurn] = useState(0);
  const again = () => setTurn((n) => n + 1);
  useEffect(() => {
    addEventListener(signedOut, again);
    return () => removeEventListener(signedOut, again);
  }, []);
  const inside = (of: Session) => {
    if (route.page === "join") return <JoinPage token={route.token} session={of} done={again} />;
    if (route.page === "link") return <LinkPage token={route.token} done={arrive} />;
    if (of.caller === "nobody" || route.page === "sign-in")
      return <SignInPage to={route.page === "sign-in" ? route.to : undefined} done={arrive} />;
    return undefined;
  };
  const arrive = () => {
    if (route.page === "sign-in") location.hash = "#/";
    again();
  };
  return (
    <Load of={`session ${turn}`} ask={people.session}>
      {(of) => {
        const door = inside(of);
        return door ? <main id="main">{door}</main> : <SessionContext.Provider value={of}>{props.children}</SessionContext.Provider>;
      }}
    </Load>
  );
}

function Shell(props: {
  clubs: ClubName[];
  club: string | undefined;
  route: Route;
  settings: Settings;
  choose: (settings: Settings) => void;
  children: preact.ComponentChildren;
}) {
  const { clubs, club, route } = props;
  const session = useContext(SessionContext);
  const main = useRef<HTMLElement>(null);
  useArrival(main, linkTo(route));
  const here = (pages: Route["page"][]) => (pages.includes(route.page) ? "page" : undefined);
  return (
    <>
      <a class="skip" href="#main" onClick={(event) => (event.preventDefault(), main.current?.focus())}>
        {words.skip}
      </a>
      <header class="top">
        <a class="brand" href="#/">
          <svg viewBox="0 0 32 32" width="34" height="34" aria-hidden="true">
            <rect width="32" height="32" rx="8" class="brand-ground" />
            <path d="M5 22c6 0 7-9 12-9 4 0 4 4 10 4" class="brand-line" />
            <circle cx="22" cy="10" r="4" class="brand-ball" />
          </svg>
          {words.program}
        </a>
        {club && (
          <nav aria-label={words.nav.label} class="places">
            <a href={linkTo({ page: "greens", club })} aria-current={here(["greens", "year"])}>{words.nav.greens}</a>
            <a href={linkTo({ page: "works", club })} aria-current={here(["works", "work"])}>{words.nav.works}</a>
            <a href={linkTo({ page: "methods", club })} aria-current={here(["methods"])}>{words.nav.methods}</a>
            <a href={linkTo({ page: "consistency", club })} aria-current={here(["consistency"])}>{words.nav.consistency}</a>
            <a href={linkTo({ page: "observers", club })} aria-current={here(["observers"])}>{words.nav.observers}</a>
            {may(session, "enter", club) && <a href={linkTo({ page: "trials", club })} aria-current={here(["trials"])}>{words.nav.trials}</a>}
            <a href={linkTo({ page: "records", club })} aria-current={here(["records", "visit", "photos", "bring"])}>{words.nav.records}</a>
            {session.caller === "person" && may(session, "people", club) && (
              <a href={linkTo({ page: "people", club })} aria-current={here(["people"])}>{words.people.page.nav}</a>
            )}
            {may(session, "enter", club) && <a href="field/">{words.nav.field}</a>}
          </nav>
        )}
        <div class="top-end">
          <ClubPick clubs={clubs} club={club} />
          <SignedIn />
          <SettingsMenu settings={props.settings} choose={props.choose} />
        </div>
      </header>
      <main id="main" ref={main} tabIndex={-1}>
        {props.children}
      </main>
    </>
  );
}

/** On a new page: the top is shown, and the reader's place is its heading. */
function useArrival(main: preact.RefObject<HTMLElement>, address: string) {
  const first = useRef(true);
  useEffect(() => {
    const element = main.current;
    if (!element) return;
    const arrive = () => {
      const heading = element.querySelector("h1");
      if (!heading) return false;
      document.title = `${heading.textContent ?? ""} · ${words.program}`;
      // Not on the first page: there the reader starts at the very top.
      if (!first.current && !element.contains(document.activeElement)) {
        heading.focus({ preventScroll: true });
        scrollTo(0, 0);
      }
      first.current = false;
      return true;
    };
    const leaving = document.activeElement;
    if (!first.current && leaving instanceof HTMLAnchorElement) leaving.blur();
    if (arrive()) return;
    const watch = new MutationObserver(() => arrive() && watch.disconnect());
    watch.observe(element, { childList: true, subtree: true });
    return () => watch.disconnect();
  }, [address]);
}

function ClubPick(props: { clubs: ClubName[]; club: string | undefined }) {
  const { clubs, club } = props;
  if (clubs.length < 2) return <span class="club-name">{clubs[0]?.name}</span>;
  return (
    <label class="pick">
      <span class="unseen">{words.club}</span>
      <select
        value={club}
        onChange={(event) => (location.hash = linkTo({ page: "greens", club: event.currentTarget.value }))}
      >
        {clubs.map((one) => (
          <option key={one.id} value={one.id}>
            {one.name}
          </option>
        ))}
      </select>
    </label>
  );
}

function NoClub() {
  const { caller } = useContext(SessionContext);
  if (caller !== "everyone")
    return (
      <section class="notice">
        <h1 tabIndex={-1}>{words.people.noClub.title}</h1>
        <p>{words.people.noClub.text}</p>
      </section>
    );
  return (
    <section class="notice">
      <h1 tabIndex={-1}>{words.noClub.title}</h1>
      <p>{words.noClub.text}</p>
      <p>
        <a href={linkTo({ page: "bring" })}>{words.bring.link}</a>
      </p>
      <pre>{words.noClub.command}</pre>
    </section>
  );
}

function Page(props: { club: string; route: Route }) {
  const { club, route } = props;
  const of = linkTo(route);
  switch (route.page) {
    case "greens":
      return (
        <Load of={`greens ${club}`} ask={() => api.greens(club)}>
          {(review) => <GreensPage review={review} />}
        </Load>
      );
    case "year":
      return (
        <Load of={of} ask={() => Promise.all([api.season(club, route.green, route.year), api.greens(club)])}>
          {([season, review]) => <YearPage season={season} review={review} />}
        </Load>
      );
    case "works":
      return (
        <Load of={of} ask={() => api.works(club)}>
          {(works) => <WorksPage club={club} works={works} />}
        </Load>
      );
    case "work":
      return (
        <Load of={of} ask={() => api.work(club, route.work)}>
          {(review) => <WorkPage review={review} />}
        </Load>
      );
    case "methods":
      return (
        <Load of={of} ask={() => Promise.all([api.methods(club, route), api.fields()])}>
          {([review, fields]) => <MethodsPage route={route} review={review} fields={fields} />}
        </Load>
      );
    case "consistency":
      return (
        <Load of={of} ask={() => api.consistency(club)}>
          {(review) => <ConsistencyPage review={review} />}
        </Load>
      );
    case "observers":
      return (
        <Load of={of} ask={() => api.observers(club)}>
          {(review) => <ObserversPage review={review} />}
        </Load>
      );
    case "bring":
      return <BringPage club={club} />;
    case "trials":
      return <TrialsPage club={club} />;
    case "people":
      return <PeoplePage club={club} />;
    case "records":
      return (
        <Load of={of} ask={() => Promise.all([api.visits(club, { ...route, limit: visitsPerPage }), api.greens(club)])}>
          {([visits, review]) => <RecordsPage route={route} review={review} visits={visits} />}
        </Load>
      );
    case "photos":
      return (
        <Load of={of} ask={() => Promise.all([api.photos(club), api.greens(club)])}>
          {([photos, review]) => <PhotosPage club={club} photos={photos} review={review} />}
        </Load>
      );
    case "visit":
      return (
        <Load of={of} ask={() => api.visit(club, route.visit)}>
          {(detail) => <VisitPageView club={club} detail={detail} />}
        </Load>
      );
    default: // the doors have shown the rest
      return (
        <section class="notice">
          <h1 tabIndex={-1}>{words.lost.title}</h1>
          <p>{words.lost.text}</p>
          <p>
            <a href="#/">{words.lost.back}</a>
          </p>
        </section>
      );
  }
}
