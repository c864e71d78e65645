import type { components } from "./types";

type Schemas = components["schemas"];
export type ClubName = Schemas["ClubName"];
export type DayKind = Schemas["DayKind"];
export type Definition = Schemas["Definition"];
export type Fixture = Schemas["Fixture"];
export type GreenCard = Schemas["GreenCard"];
export type GreensReview = Schemas["GreensReview"];
export type Ledger = Schemas["Ledger"];
export type LossArea = Schemas["LossArea"];
export type Parameter = Schemas["Parameter"];
export type RecoveryInterval = Schemas["RecoveryInterval"];
export type Refusal = Schemas["Refusal"];
export type Roll = Schemas["Roll"];
export type Run = Schemas["Run"];
export type RunSpeed = Schemas["RunSpeed"];
export type SeasonReview = Schemas["SeasonReview"];
export type RecordSource = Schemas["Source"];
export type SpotDetail = Schemas["SpotDetail"];
export type SpotSpeed = Schemas["SpotSpeed"];
export type VisitDetail = Schemas["VisitDetail"];
export type VisitLine = Schemas["VisitLine"];
export type VisitPage = Schemas["VisitPage"];
export type VisitPoint = Schemas["VisitPoint"];
export type VisitSpeed = Schemas["VisitSpeed"];
export type WorkAtGreen = Schemas["WorkAtGreen"];
export type WorkLine = Schemas["WorkLine"];
export type WorkLoss = Schemas["WorkLoss"];
export type WorkReview = Schemas["WorkReview"];
export type WorkTick = Schemas["WorkTick"];

/** What the report carries inside itself: services/include/baize/services/report_data.h
    in the names of the other answers. */
export interface ReportData {
  club: string;
  club_name: string;
  year: number;
  /** false: the report is of a year that still runs. */
  year_ended: boolean;
  today: string;
  greens: GreensReview;
  /** One for each green, in walking order. */
  seasons: SeasonReview[];
  /** The year's disruptive works, oldest first. */
  works: WorkReview[];
  basis: {
    visits: number;
    observers: number;
    scored_rolls: number;
    measured_rolls: number;
    weather_days: number;
    weather_days_missing: number;
  };
  /** For the committee, most important first. */
  sentences: string[];
  /** How the figures were computed. */
  methods: string[];
}
