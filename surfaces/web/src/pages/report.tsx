import { useState } from "preact/hooks";
import type { GreenCard, ReportData, SeasonReview } from "../api/schemas";
import { LedgerCalendar } from "../parts/ledger";
import { LinkContext, type Linker } from "../parts/place";
import { SettingsMenu } from "../parts/settings_menu";
import { TrueStripe } from "../parts/true_bar";
import { YearWorksTable } from "../parts/year_works";
import { longDay, middleDay } from "../state/format";
import { loadSettings, keepSettings, SettingsContext, useSettings } from "../state/settings";
import { words } from "../words";
import { Costs, newestFirst } from "./works";
import { YearPicture } from "./year";

const w = words.report;
const anchor = (green: string) => `green-${encodeURIComponent(green)}`;

interface Part {
  card: GreenCard;
  season: SeasonReview;
}

/** Greens in walking order, with their year. */
export function parts(data: ReportData): Part[] {
  return data.greens.greens.flatMap((card) => {
    const season = data.seasons[card.green];
    return season ? [{ card, season }] : [];
  });
}

export function ReportPage(props: { data: ReportData }) {
  const { data } = props;
  const [settings, setSettings] = useState(loadSettings);
  const all = parts(data);
  const year = all[0]?.season.year ?? Number(data.greens.today.slice(0, 4));
  document.title = w.title(data.greens.club_name, year);
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
          <Summary data={data} all={all} year={year} />
          {all.map((part) => (
            <GreenSection key={part.card.green} part={part} />
          ))}
        </main>
      </LinkContext.Provider>
    </SettingsContext.Provider>
  );
}

function Summary(props: { data: ReportData; all: Part[]; year: number }) {
  const { data, all, year } = props;
  const settings = useSettings();
  const measured = all.reduce((sum, { season }) => sum + season.ledger.measured_true, 0);
  const visited = all.reduce((sum, { season }) => sum + season.ledger.measured_not, measured);
  const works = newestFirst(data.works)
    .filter((line) => line.work_class === "disruptive" && line.work.day.startsWith(String(year)))
    .reverse();
  return (
    <section class="report-page summary">
      <h1>{w.title(data.greens.club_name, year)}</h1>
      <p class="lead">
        {w.totals(measured, visited)} {data.greens.headline}
      </p>
      <p class="quiet">
        {w.knownOn(longDay(data.greens.today))} {w.method}
      </p>
      <h2>{w.trueDays}</h2>
      <TrueDays all={all} />
      <h2>{w.cost}</h2>
      {works.length === 0 && <p>{w.noWorks}</p>}
      <ol class="work-list">
        {works.map((line) => (
          <li key={line.work.id}>
            <div class="work-name">
              <h3 class="initial">{line.label}</h3>
              <p class="quiet">
                {middleDay(line.work.day)}, {words.work.onGreens(line.greens)}
              </p>
            </div>
            <Costs line={line} settings={settings} />
          </li>
        ))}
      </ol>
      <p class="quiet">
        {words.works.note} {w.howToRead}
      </p>
    </section>
  );
}

function TrueDays(props: { all: Part[] }) {
  return (
    <>
      <p class="quiet">{w.trueDaysText}</p>
      <ol class="true-list">
        {props.all.map(({ card, season: { ledger } }) => {
          const figures = w.atLeastMost(ledger.fewest_true, ledger.most_true, ledger.open);
          return (
            <li key={card.green}>
              <a href={`#${anchor(card.green)}`}>{card.name}</a>
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

function GreenSection(props: { part: Part }) {
  const { card, season } = props.part;
  return (
    <section class="report-page green-section" id={anchor(card.green)}>
      <h1>{words.year.title(card.name, season.year)}</h1>
      <p class="lead">{season.visits.length === 0 ? words.year.noVisits : words.year.ledgerSentence(season.ledger)}</p>
      <YearPicture season={season} numbers={false} fixedWidth={760} />
      <LedgerCalendar ledger={season.ledger} numbers={false} />
      <YearWorksTable season={season} />
    </section>
  );
}

