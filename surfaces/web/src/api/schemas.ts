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

/** What the report carries inside itself. */
export interface ReportData {
  greens: GreensReview;
  /** By the green's identifier. */
  seasons: Record<string, SeasonReview>;
  works: WorkLine[];
}
