// Every English text of the pages. Another language is another file of this shape.
import { consistencyWords } from "./words_consistency";
import { methodsWords } from "./words_methods";
import { observersWords } from "./words_observers";
import { peopleWords } from "./words_people";
import { trialsWords } from "./words_trials";
import type { DayKind, Definition, Ledger } from "./api/schemas";

const months = ["January", "February", "March", "April", "May", "June", "July", "August",
  "September", "October", "November", "December"];
const short = (month: number) => (months[month - 1] ?? "").slice(0, 3);
const count = (n: number, one: string, many = `${one}s`) => `${n} ${n === 1 ? one : many}`;

const dayKinds: Record<DayKind, string> = {
  measured_true: "measured true",
  measured_not: "measured not true",
  between_true: "between true days",
  unmeasured: "unmeasured",
  closed: "closed",
};

const dayKindRules: Record<DayKind, string> = {
  measured_true: "visited, at or above the standard",
  measured_not: "visited, below the standard",
  between_true: "not visited; true on the nearest visits before and after, at most 14 days apart, no disruptive work between",
  unmeasured: "not visited, and nothing else is known",
  closed: "closed to play",
};

const definitions: Record<Definition, { name: string; rule: string }> = {
  at_standard: { name: "First day at the standard", rule: "the first visited day at or above the standard" },
  two_running: { name: "Two days running", rule: "the first of two visited days running at or above the standard" },
  lasting: { name: "Lasting", rule: "the first day from which every visited day stays at or above the standard" },
  own_level: { name: "Own level", rule: "the first visited day back at the green's own score before the work" },
};

export const words = {
  months,
  monthLetters: months.map((name) => name.charAt(0)),
  monthShort: months.map((name) => name.slice(0, 3)),
  longDay: (day: number, month: number, year: number) => `${day} ${months[month - 1] ?? ""} ${year}`,
  middleDay: (day: number, month: number, year: number) => `${day} ${short(month)} ${year}`,
  shortDay: (day: number, month: number) => `${day} ${short(month)}`,

  program: "Baize",
  skip: "Skip to the content",
  loading: "Loading …",
  notMeasured: "not measured",
  unknown: "unknown",
  nav: { label: "Pages", greens: "Greens", works: "Works", methods: "Methods", trials: "Trials", consistency: "Consistency", observers: "Observers", records: "Records", field: "On the green" },
  club: "Club",
  noClub: {
    title: "No club yet",
    text: "Bring in the record files of your club here, or with the command below, which also takes a weather file.",
    command: "./baize import FOLDER --weather FILE",
  },
  trials: trialsWords,
  people: peopleWords,
  lost: { title: "There is no such page", text: "The address names nothing here.", back: "Go to the greens" },
  working: "Working it out.",
  failed: {
    title: "This could not be shown",
    unreachable: "The server does not answer; start it again with ./baize and reload this page.",
    answer: (status: number) => `The server answered with status ${status} and gave no reason.`,
    again: "Try again",
  },
  settings: {
    title: "Settings",
    unit: "Lengths in",
    units: { ft_in: "feet and inches", m: "metres", cm: "centimetres" },
    decimal: "Decimal mark",
    decimals: { ".": "point (8.5)", ",": "comma (8,5)" },
  },

  greens: {
    title: "Greens",
    asOf: (day: string) => `As known on ${day}`,
    order: "Order",
    orders: { walk: "Walking order", lowest: "Lowest score first", waiting: "Longest unvisited first" },
    green: "Green", score: "Score", speed: "Speed", recent: "Last scored days", work: "Last disruptive work",
    trueDays: "True days this year",
    lowest: "Below the standard when last scored:",
    stale: "Not visited for over four weeks:",
    days: (days: number) => count(days, "day"),
    never: "never visited", notScored: "not scored",
    visited: (days: number) => (days === 0 ? "visited today" : `visited ${count(days, "day")} ago`),
    since: (days: number) => (days === 0 ? "today" : `${count(days, "day")} since`),
    noWork: "none on record",
    at: "at the standard", below: "below the standard",
    standard: (score: string) => `standard ${score}`,
    fast: "Fast, but not true",
    trends: { better: "getting better", steady: "steady", worse: "getting worse", unknown: "too few visits to tell" },
    staleTrend: "too long ago to tell",
    trend: (points: string) => `${points} points`,
    spark: (scores: string) => `Scores, oldest first: ${scores}`,
    ofScored: (n: number, scored: number) => `${n} of ${count(scored, "scored day")}`,
    most: (most: number, open: number) => `at most ${most} of ${open} open days`,
    year: (year: number) => `Open the year ${year}`,
    report: (year: number) => `Report for the owner, ${year}`,
    key: "Solid: measured true. Striped: nobody measured, so it may be true or not. Fast, but not true: faster than half the greens, and below the standard.",
  },

  year: {
    title: (green: string, year: number) => `${green} in ${year}`,
    years: "Year", previous: "Previous green", next: "Next green",
    ledgerSentence: (l: Ledger) =>
      `Of ${count(l.open, "open day")}, ${l.measured_true} ${l.measured_true === 1 ? "was" : "were"} measured true and ` +
      `${l.measured_not} measured not true; ${l.between_true + l.unmeasured} were not measured.`,
    extremes: (l: Ledger) =>
      `If no unmeasured day was true, there were ${count(l.fewest_true, "true day")}; if every one was, ${l.most_true}. ` +
      "The truth lies between; more visits narrow it.",
    noVisits: "No visit was made in this year, so nothing can be said about it.",
    picture: "The year, visit by visit",
    pictureText: "Each point is one visit; the bar behind it runs from the lowest to the highest roll. Lettered lines are disruptive works.",
    pictureLabel: (green: string, year: number) => `Score, speed, growth and rain of ${green} through ${year}, with its works`,
    scoreAxis: "Score", speedAxis: "Speed", growthAxis: "Growth potential", rainAxis: "Rain, mm",
    standardLine: (low: string, high: string) => (low === high ? `standard ${low}` : `standard ${low} to ${high}`),
    works: "Works", routine: "routine",
    weatherMissing: (days: number) => `No temperature is known for ${count(days, "day")} of this period.`,
    noWeather: "No weather was brought in for this period.",
    growthSettings: (optimum: string, spread: string) => `Growth potential: optimum ${optimum} °C, spread ${spread} °C.`,
    ledger: "True days",
    ledgerLabel: "Calendar of the year: what is known of each day",
    byMonth: "Days by month",
    worksTitle: "Works of the year",
    noWorks: "No work is on record for this year.",
    visitsTable: "Visits of the year",
    weatherTable: "Weather by month",
    fixtures: (list: string) => `Fixtures (★): ${list}.`,
    growthSum: "Growth-days", rainSum: "Rain, mm", daysKnown: "Days with temperature",
  },
  dayKinds,
  dayKindRules,

  works: {
    title: "Works",
    intro: "What each disruptive work cost, newest first.",
    routine: "Routine works and closures",
    work: "Work", day: "Day", greens: "Greens", fall: "Mean fall", back: "Back at the standard", cost: "Mean loss",
    censored: (n: number) => `${count(n, "green")} without a known end`,
    points: (n: string) => `${n} points`,
    scoreDays: (n: string) => `${n} score-days`,
    backOf: (back: number, all: number) => `${back} of ${count(all, "green")}`,
    scoreDaysAtLeast: (n: string) => `at least ${n} score-days`,
    empty: "No work is on record yet.",
    noDisruptive: "No disruptive work is on record yet.",
    planned: "planned",
    note: "Fall: score before less the lowest after. Loss: score points times days below the level before.",
  },

  work: {
    onGreens: (n: number) => `on ${count(n, "green")}`,
    parameters: "How it was done",
    definition: "Back means",
    definitions,
    returns: "When each green came back",
    returnsText: "One bar for each green: it holds the day the green came back. An arrow: not back as far as is known.",
    returnsLabel: "Days after the work until each green was back",
    pictures: "Green by green",
    picturesText: "Days since the work run to the right. The shaded band holds the day the green came back.",
    pictureLabel: (green: string) => `Scores of ${green} before and after the work`,
    table: "The numbers, green by green",
    four: "The four definitions",
    green: "Green", before: "Before", lowest: "Lowest after", fall: "Fall", back: "Back", loss: "Loss", lossUnit: "Loss, score-days",
    band: (low: string, high: string) => `${low} to ${high}`,
    notEnded: "still below at the end", noneSeen: "none seen",
    noBefore: "no score before",
    nothingAfter: "no visit after",
    elapsed: "Days after the work", growth: "Growth-days", definitionColumn: "Definition", visits: "Rests on",
    within: (after: string, by: string) => `after ${after}, by ${by}`,
    withinDays: (after: number, by: number) => `after ${after}, by ${count(by, "day")}`,
    open: (after: number) => `not by ${count(after, "day")}`,
    censoring: {
      none: "", record_ends: "the record ends before it was back",
      next_work: "the next disruptive work began before it was back",
      not_asked: "there is no score before the work",
    },
    lossBounds: "Loss in score-days; in brackets the least and the most that the unvisited days allow.",
    growthLoss: (n: string) => `${n} weighted by growth`,
    half: (half: string) => `${half} half`,
    dayAxis: "days after the work",
    axis: "Days after the work run to the right.",
    visited: "Scored days",
    visitsOf: (n: number) => count(n, "visit"),
    noDisruption: "This work is not a disruptive one, so no loss is worked out for it.",
    points: (n: string) => `${n} points`,
    beforeLine: "before",
  },

  records: {
    title: "Visits", intro: (n: number) => count(n, "visit"),
    filter: "Show", all: "All greens", green: "Green", from: "From", to: "To", clear: "Show all",
    day: "Day", observer: "Observer", rolls: "Rolls", score: "Score", speed: "Speed",
    rollCount: (n: number) => count(n, "roll"), look: (n: number) => `worth a look: ${n}`, source: "Source", none: "No visit matches; widen the dates or choose another green.",
    newer: "Newer", older: "Older",
    range: (from: number, to: number, total: number) => `${from} to ${to} of ${total}`,
    line: (file: string, line: number) => (line ? `${file}, line ${line}` : file),
    noSource: "written here", pages: "Pages of visits",
  },

  visit: {
    title: (green: string, day: string) => `${green}, ${day}`,
    by: "Observer", time: "Time", at: (from: string, to?: string) => (to ? `${from} to ${to}` : from),
    score: "Roll score", of: (rolls: number) => `mean of ${count(rolls, "scored roll")}`, noScore: "not scored",
    speed: "Green speed", noSpeed: "not measured", plusMinus: (error: string) => `standard error ${error}`,
    conditions: "Conditions",
    mowing: "since mowing", rolling: "since rolling", dew: "dew", wind: "wind", surface: "surface",
    hours: (n: string) => `${n} h`, unknown: "not noted",
    remarks: "Worth a look", rolls: "The rolls", spot: (spot: string) => `Spot ${spot}`,
    direction: "Direction", directions: { out: "out", back: "back" },
    roll: "Roll", distance: "Distance", marks: "Marks",
    marksNotNoted: "not noted", marksNone: "nothing seen", after: (seconds: string) => `at\u00a0${seconds}\u00a0s`,
    marksOf: { bobble: "bobble", chatter: "chatter", snake: "snake" },
    total: (total: number, of: string) => `only the total was written down: ${total}${of}`,
    totalOf: (balls: number) => ` for ${balls} balls`,
    how: "How the speed came about",
    mean: (direction: string, rolls: number, mean: string, spread: string) =>
      `${direction}: mean of ${count(rolls, "roll")} ${mean}, spread ${spread}`,
    tooWide: "wider than the protocol allows",
    plain: (mean: string) => `Plain mean of the two directions: ${mean}`,
    oneWay: "Only one direction was measured, so the slope is not taken out.",
    corrected: (value: string) => `By the slope formula 2UD/(U+D): ${value}`,
    ratio: (ratio: string, slope: string) => `Downhill over uphill: ${ratio}, ${slope}`,
    used: (value: string, error: string) => `Speed used: ${value}, standard error ${error}`,
    apart: "The directions are further apart than the protocol allows: find a flatter place.",
    overSpots: (spots: number) => `The visit's speed is the mean over ${count(spots, "spot")}.`,
    source: "Where it came from", note: "Note", half: "Half", id: "Visit", back: "All visits",
    season: (year: number) => `The green's year ${year}`,
  },

  bring: {
    title: "Bring records in",
    link: "Bring records in",
    intro: "Choose the record files of one club, all together: club.csv, greens.csv, rolls.csv and what else there is. They are looked through first; nothing is kept until you say so.",
    rules: "Bringing the same files in again changes nothing. Records that are here and not in the files stay.",
    choose: "Record files",
    notText: (name: string) => `${name} is not text in UTF-8: save it again as "CSV UTF-8" and choose it once more.`,
    problems: (n: number) => `Nothing can be kept yet: ${count(n, "thing")} to put right in the files.`,
    fine: "All of it can be read.",
    keep: "Keep these records",
    files: "The files", file: "File", rows: "Rows", records: "Records", faults: "To put right",
    toMend: "To put right", worthALook: "Worth a look",
    more: (n: number) => `And ${n} more.`,
    kept: "Kept",
    receipt: (added: number, corrected: number, same: number) =>
      `${count(added, "record")} added, ${corrected} corrected, ${same} there already.`,
    look: "Look at the greens",
    weather: "The station's weather",
    weatherText: "A daily file of the nearest station, with lowest and highest temperature and rain. Growth-days are counted from it; without it days are days.",
    chooseWeather: "Weather file",
    mapping: "How the file is understood; change a line where it is wrong",
    again: "Look again",
    weatherFine: (days: number) => `${count(days, "day")} can be read.`,
    weatherProblems: (n: number) => `Nothing can be kept yet: ${count(n, "thing")} to put right.`,
    keepWeather: "Keep this weather",
    weatherKept: (days: number) => `Kept: ${count(days, "day")} of weather.`,
  },
  consistency: consistencyWords,

  methods: methodsWords,
  observers: observersWords,

  table: { numbers: "The numbers", visit: "Visit", day: "Day", spread: "Lowest to highest", month: "Month", rolls: "Rolls" },

  report: {
    title: (club: string, year: number, ended: boolean) =>
      `${club}: how true the greens rolled in ${year}${ended ? "" : " so far"}`,
    knownOn: (day: string) => `As known on ${day}.`,
    trueDays: "True days, green by green",
    trueDaysText: "Solid: measured true. Striped: nobody measured, so it may be true or not. The rest: measured, and not true. Figures: at least, at most, of the open days.",
    atLeastMost: (least: number, most: number, open: number) => ({ least: `${least}`, rest: ` to ${most} of ${open}` }),
    cost: "What each disruptive work cost", noWorks: "No disruptive work is on record for this year.",
    tableCaption: "Back: the first of two visited days running at or above the standard; in brackets the least and most loss.",
    howToRead: "In the pictures each point is one visit, and the bar behind it runs from the lowest to the highest roll; lettered lines are disruptive works, stars are fixtures.",
    methods: "How the figures were made",
    basis: (visits: number, observers: number, scored: number, measured: number) =>
      `They rest on ${count(visits, "visit")} by ${count(observers, "observer")}, with ${count(scored, "scored roll")} and ${count(measured, "measured roll")}.`,
    print: "Print", empty: "This file holds no report.",
  },
};

export type Words = typeof words;
