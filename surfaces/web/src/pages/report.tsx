import { useState } from "preact/hooks";
import type { ReportData, SeasonReview } from "../api/schemas";
import { LedgerCalendar } from "../parts/ledger";
import { LinkContext, type Linker } from "../parts/place";
import { SettingsMenu } from "../parts/settings_menu";
import { TrueStripe } from "../parts/true_bar";
import { YearWorksTable } from "../parts/year_works";
import { longDay, middleDay } from "../state/format";
import { keepSettings, loadSettings, SettingsContext } from "../state/settings";
import { words } from "../words";
import { YearPicture } from "./year";
import { Said } from "../parts/said";

const w = words.report;
const anchor = (green: string) => `green-${encodeURIComponent(green)}`;

export function ReportPage(props: { data: ReportData }) {
  const { data } = props;
  const [settings, setSettings] = useState(loadSettings);
  document.title = w.title(data.club_name, data.year, data.year_ended);
  // A report holds greens; works and visits are not pages of it.
  const link: Linker = (route) => (route.page === "year" ? `#${anchor(route.green)}` : undefined);
  return (
    <SettingsContext.Provider value={settings}>
      <LinkContext.Provider value={link}>
        <main class="report" id="main">
          <div class="report-tools">
            <SettingsMenu
              settings={settings}
              choose={(chosen) => {
                keepSettings(chosen);
                setSettings(chosen);
              }}
            />
            <button type="button" onClick={() => print()}>
              {w.print}
            </button>
          </div>
          <Summary data={data} />
          {data.seasons.map((season) => (
            <GreenSection key={season.green} season={season} />
          ))}
          <Methods data={data} />
        </main>
      </LinkContext.Provider>
    </SettingsContext.Provider>
  );
}

function Summary(props: { data: ReportData }) {
  const { data } = props;
  const [first, ...more] = data.sentences;
  return (
    <section class="report-page summary">
      <p class="over">{w.knownOn(longDay(data.today))}</p>
      <h1>{w.title(data.club_name, data.year, data.year_ended)}</h1>
      <p class="lead">{first}</p>
      <ul class="said">
        {more.map((sentence) => (
          <li key={sentence}><Said text={sentence} /></li>
        ))}
      </ul>
      <h2>{w.trueDays}</h2>
      <TrueDays seasons={data.seasons} />
      <h2>{w.cost}</h2>
      {data.works.length === 0 && <p>{w.noWorks}</p>}
      <ol class="cost-list">
        {data.works.map((review) => (
          <li key={review.work.id}>
            <div>
              <h3 class="initial">{review.label}</h3>
              <p class="quiet">{middleDay(review.work.day)}</p>
            </div>
            <p><Said text={review.sentence} /></p>
          </li>
        ))}
      </ol>
    </section>
  );
}

function Methods(props: { data: ReportData }) {
  const { basis, methods } = props.data;
  return (
    <section class="report-page methods">
      <h2>{w.methods}</h2>
      <ul class="said">
        <li>{w.basis(basis.visits, basis.observers, basis.scored_rolls, basis.measured_rolls)}</li>
        <li>{w.howToRead}</li>
        <li>{words.works.note}</li>
        <li>{w.tableCaption}</li>
        {methods.map((method) => (
          <li key={method}>{method}</li>
        ))}
      </ul>
    </section>
  );
}

function TrueDays(props: { seasons: SeasonReview[] }) {
  return (
    <>
      <p class="quiet">{w.trueDaysText}</p>
      <ol class="true-list">
        {props.seasons.map(({ green, green_name, ledger }) => {
          const figures = w.atLeastMost(ledger.fewest_true, ledger.most_true, ledger.open);
          return (
            <li key={green}>
              <a href={`#${anchor(green)}`}>{green_name}</a>
              <TrueStripe fewest={ledger.fewest_true} most={ledger.most_true} open={ledger.open} />
              <span class="true-figures">
                <strong>{figures.least}</strong>
                {figures.rest}
              </span>
            </li>
          );
        })}
      </ol>
    </>
  );
}

function GreenSection(props: { season: SeasonReview }) {
  const { season } = props;
  return (
    <section class="report-page green-section" id={anchor(season.green)}>
      <h1>{words.year.title(season.green_name, season.year)}</h1>
      <p class="lead">{season.visits.length === 0 ? words.year.noVisits : words.year.ledgerSentence(season.ledger)}</p>
      <YearPicture season={season} numbers={false} fixedWidth={760} />
      <LedgerCalendar ledger={season.ledger} numbers={false} />
      <YearWorksTable season={season} />
    </section>
  );
}
