import { useEffect, useState } from "preact/hooks";
import { people } from "../api/people";
import type { InvitationOffer, Session } from "../api/schemas";
import { Failure } from "../api/client";
import { Load } from "../parts/load";
import { middleDay } from "../state/format";
import { linkTo } from "../state/route";
import { words } from "../words";

const w = words.people;

/** A form's one request at a time, and the sentence of its refusal. */
function useTry() {
  const [busy, setBusy] = useState(false);
  const [sentence, setSentence] = useState("");
  const run = async (work: () => Promise<void>) => {
    setBusy(true);
    setSentence("");
    try {
      await work();
    } catch (problem) {
      if (!(problem instanceof Failure)) console.error(problem);
      const wrong = problem instanceof Failure && problem.code === "wrong_sign_in";
      setSentence(wrong ? w.signIn.wrong : (problem as Error).message);
    }
    setBusy(false);
  };
  return { busy, sentence, run };
}

function Field(props: { label: string; help?: string; type?: string; name: string; complete: string }) {
  return (
    <label>
      <span>{props.label}</span>
      <input name={props.name} type={props.type ?? "text"} autocomplete={props.complete} required maxLength={200} autocapitalize="none" />
      {props.help && <small>{props.help}</small>}
    </label>
  );
}

const textOf = (form: HTMLFormElement, name: string) => (form.elements.namedItem(name) as HTMLInputElement).value;

/** `to`: where to go afterwards; without it the place that was asked for. */
export function SignInPage(props: { to: string | undefined; done: (session: Session) => void }) {
  const { busy, sentence, run } = useTry();
  const submit = (event: SubmitEvent) => {
    event.preventDefault();
    const form = event.currentTarget as HTMLFormElement;
    void run(async () => {
      const session = await people.signIn(textOf(form, "name"), textOf(form, "password"));
      if (props.to === "field") location.assign("field/");
      else props.done(session);
    });
  };
  return (
    <section class="notice door">
      <h1 tabIndex={-1}>{w.signIn.title}</h1>
      <p>{w.signIn.lead}</p>
      <form class="trial-form" onSubmit={submit}>
        <Field label={w.signIn.name} name="name" complete="username" />
        <Field label={w.signIn.password} name="password" type="password" complete="current-password" />
        {sentence && <p class="wide refused" role="alert">{sentence}</p>}
        <button class="wide" disabled={busy}>{w.signIn.button}</button>
      </form>
      <p class="quiet">{w.signIn.help}</p>
    </section>
  );
}

/** An invitation, opened on the phone of the one who is invited. */
export function JoinPage(props: { token: string; session: Session; done: () => void }) {
  const [joined, setJoined] = useState<InvitationOffer>();
  if (joined) {
    return (
      <section class="notice door" role="status">
        <h1 tabIndex={-1}>{w.join.welcome}</h1>
        {joined.role !== "reader" && (
          <p>
            <a class="button chief" href="field/">{w.join.toPhone}</a>
          </p>
        )}
        <p>
          <a class="button" href={linkTo({ page: "greens", club: joined.club })} onClick={props.done}>{w.join.toDesk}</a>
        </p>
      </section>
    );
  }
  return (
    <Load of={props.token} ask={() => people.look(props.token)}>
      {(offer) => <Offer {...props} offer={offer} joined={() => setJoined(offer)} />}
    </Load>
  );
}

function Offer(props: { token: string; session: Session; offer: InvitationOffer; joined: () => void }) {
  const { offer, session } = props;
  const { busy, sentence, run } = useTry();
  const join = (account?: { name: string; password: string }) =>
    run(async () => {
      await people.accept(props.token, account);
      props.joined();
    });
  return (
    <section class="notice door">
      <h1 tabIndex={-1}>{w.join.title(offer.club_name || offer.club)}</h1>
      <p>{w.join.lead(offer.by, w.roles[offer.role].name.toLowerCase())}</p>
      {session.caller === "person" && (
        <div class="already">
          <p>{w.join.other}</p>
          <button type="button" class="chief" disabled={busy} onClick={() => void join()}>{w.join.as(session.name ?? "")}</button>
        </div>
      )}
      <form
        class="trial-form"
        onSubmit={(event) => {
          event.preventDefault();
          const form = event.currentTarget;
          void join({ name: textOf(form, "name"), password: textOf(form, "password") });
        }}
      >
        <Field label={w.join.name} help={w.join.nameHelp} name="name" complete="username" />
        <Field label={w.join.password} help={w.join.passwordHelp} name="password" type="password" complete="new-password" />
        {sentence && <p class="wide refused" role="alert">{sentence}</p>}
        <button class="wide" disabled={busy}>{w.join.button}</button>
      </form>
      <p class="quiet">{w.join.until(middleDay(offer.ends.slice(0, 10)))}</p>
    </section>
  );
}

/** A link for reading: opened at once. */
export function LinkPage(props: { token: string; done: (session: Session) => void }) {
  const [sentence, setSentence] = useState("");
  useEffect(() => {
    people.openLink(props.token).then(
      (session) => {
        const club = session.clubs[0]?.id;
        // The token leaves the address bar and the history: nobody reads it over a shoulder.
        location.replace(linkTo(club ? { page: "greens", club } : { page: "greens" }));
        props.done(session);
      },
      (problem: Error) => setSentence(problem.message),
    );
  }, [props.token]);
  return (
    <section class="notice door">
      <h1 tabIndex={-1}>{sentence ? w.link.failed : w.link.title}</h1>
      {sentence && <p role="alert">{sentence}</p>}
    </section>
  );
}
