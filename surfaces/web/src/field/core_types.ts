// Written by `npm run types` from surfaces/wasm/functions.json. Change that, not this.
interface components {
    schemas: {
        /** @description Why a value was refused; the codes stand in docs/howto/problems.md. */
        Problem: {
            code: string;
            field: string;
            /** @description as it was found; empty: missing */
            value: string;
            /** @description what would have been accepted */
            rule: string;
            /** @description all of it, with the place, for people */
            sentence: string;
        };
        /** @enum {string} */
        LengthUnit: "ft_in" | "ft" | "cm" | "m";
        /**
         * @description the decimal mark; '.' where it is left out
         * @enum {string|null}
         */
        Decimal: "." | "," | null;
        Mark: {
            /** @enum {string} */
            kind: "bobble" | "chatter" | "snake";
            /** @description since release, 0 to 60; s */
            seconds?: number | null;
        };
        /** @description an empty list: watched, and nothing was seen; null: not watched */
        Marks: components["schemas"]["Mark"][] | null;
        /** @description One ball. A roll of which nothing is known yet is passed over. */
        Roll: {
            /** @description 1, 2, 3 ... within the run; its place in the list where left out */
            order?: number | null;
            /** @description m */
            distance?: number | null;
            marks?: components["schemas"]["Marks"];
            /** @description 1 to 10 */
            score?: number | null;
        };
        RollList: components["schemas"]["Roll"][] | null;
        Total: {
            /** @description sum of the scores as written down */
            total: number;
            /** @description how many rolls it is of */
            total_of: number;
        } | null;
        RunRolls: {
            rolls: components["schemas"]["RollList"];
            total?: number | null;
            total_of?: number | null;
        };
        ScoreSum: {
            total: number;
            scored: number;
            mean: number;
        };
        SpotScore: {
            total: number;
            scored: number;
            /** @description each roll counts once */
            mean: number;
            out: components["schemas"]["ScoreSum"] | null;
            back: components["schemas"]["ScoreSum"] | null;
        };
        SpotSpeed: {
            /** @description the one to use; m */
            metres: number;
            /** @description one standard error; m */
            error: number;
            /** @enum {string} */
            method: "plain_mean" | "slope_formula" | "one_direction";
            /** @description m */
            plain_mean: number;
            /** @description m */
            slope_corrected: number | null;
            /** @description mean of that direction; m */
            out: number | null;
            /** @description m */
            back: number | null;
            /** @description downhill over uphill */
            ratio: number | null;
            /** @enum {string|null} */
            slope_class: "gentle" | "moderate" | "steep" | null;
            /** @description what to look at */
            sentences: string[];
        };
        /** @description what a field of an entry may hold */
        FieldValue: unknown;
        /** @enum {string} */
        EntryKind: "visit" | "roll" | "total" | "reading" | "work" | "photo";
        Entry: {
            /** @description UUID, version 7 */
            id: string;
            phone: string;
            /** @description the phone's clock, UTC: 2026-05-03T07:10:31.250Z */
            at: string;
            /** @description id of the observer */
            by: string;
            kind: components["schemas"]["EntryKind"];
            /** @description UUID of what the entry speaks of */
            thing: string;
            /** @description null: taken back */
            set: {
                [key: string]: components["schemas"]["FieldValue"];
            };
            /** @description entries of this thing that this one was written on top of */
            over: string[];
        };
        EntryList: components["schemas"]["Entry"][];
        Thing: {
            kind: components["schemas"]["EntryKind"];
            thing: string;
            values: {
                [key: string]: components["schemas"]["FieldValue"];
            };
            /** @description its newest entries: what the next one is written over */
            heads: string[];
        };
        Conflict: {
            thing: string;
            kind: components["schemas"]["EntryKind"];
            field: string;
            values: components["schemas"]["ConflictValue"][];
        };
        ConflictValue: {
            entry: string;
            value: components["schemas"]["FieldValue"];
            by: string;
            at: string;
        };
        ValueRule: {
            /** @enum {string} */
            type: "number" | "whole" | "word";
            /** @description empty: none */
            unit: string;
            lowest: number | null;
            highest: number | null;
            /** @description the lowest itself is refused */
            above_lowest: boolean;
            /** @description empty: any */
            words: string[];
            /** @description the rule as words: a number above 0 and up to 30 m */
            clause: string;
        };
        MeasuredField: {
            /** @enum {string} */
            record: "roll" | "run" | "visit" | "reading" | "reading_kind";
            name: string;
            title: string;
            rule: components["schemas"]["ValueRule"];
            /** @enum {string} */
            kind: "measured" | "counted" | "judged" | "stated";
            source: string;
            trust: string;
        };
        Parameter: {
            name: string;
            title: string;
            rule: components["schemas"]["ValueRule"];
            /** @description the one that labels show */
            leading: boolean;
            meaning: string;
        };
        WorkKind: {
            name: string;
            title: string;
            /** @enum {string} */
            work_class: "disruptive" | "routine" | "closing";
            parameters: components["schemas"]["Parameter"][];
            meaning: string;
        };
        OfferTakes: {
            marks: components["schemas"]["Marks"];
        };
        OfferGives: {
            /** @description null: marks were not watched, so nothing is suggested */
            score: number | null;
            lowest: number;
            highest: number;
        };
        ContradictsTakes: {
            marks: components["schemas"]["Marks"];
            /** @description 1 to 10 */
            score: number | null;
        };
        ContradictsGives: {
            contradicts: boolean;
            /** @description one sentence */
            remark: string | null;
        };
        PlaceOfMarkTakes: {
            /** @description since release; s */
            seconds: number;
            /** @description of the whole roll, above 0 and up to 30; m */
            distance: number;
        };
        PlaceOfMarkGives: {
            /** @description from the ramp's foot; null within the ramp's own hops, which say nothing of the green; m */
            metres: number | null;
            /** @description one standard error; m */
            error: number | null;
        };
        RunSummaryTakes: components["schemas"]["RunRolls"];
        RunSummaryGives: {
            /** @description sum of the scores */
            total: number | null;
            /** @description how many rolls the total is of */
            scored: number;
            /** @description mean score */
            mean: number | null;
            /** @description longest less shortest; m */
            spread_m: number | null;
            /** @description m */
            distance_mean: number | null;
            /** @description how many rolls have a distance */
            measured: number;
            remarks: string[];
        };
        SpotSummaryTakes: {
            out: components["schemas"]["RollList"];
            back: components["schemas"]["RollList"];
            /** @description where a direction has only a total of its scores */
            totals?: {
                out?: components["schemas"]["Total"];
                back?: components["schemas"]["Total"];
            } | null;
            /** @description the last reading there: its rolls (out, back), or its speed (metres, and error where it is known) */
            last?: {
                out?: components["schemas"]["RollList"];
                back?: components["schemas"]["RollList"];
                /** @description m */
                metres?: number | null;
                /** @description m */
                error?: number | null;
            } | null;
            unit?: components["schemas"]["LengthUnit"];
            decimal?: components["schemas"]["Decimal"];
        };
        SpotSummaryGives: {
            score: components["schemas"]["SpotScore"] | null;
            speed: components["schemas"]["SpotSpeed"] | null;
            change: {
                /** @description null: nothing to compare with, or its error is not known */
                real: boolean | null;
                /** @description this reading less the last; m */
                metres: number | null;
                sentence: string;
            };
        };
        CheckVisitTakes: {
            entries: components["schemas"]["EntryList"];
            /** @description YYYY-MM-DD, the day on the club's calendar */
            today: string;
        };
        CheckVisitGives: {
            problems: components["schemas"]["Problem"][];
            remarks: string[];
        };
        FoldTakes: {
            entries: components["schemas"]["EntryList"];
        };
        FoldGives: {
            things: components["schemas"]["Thing"][];
            conflicts: components["schemas"]["Conflict"][];
        };
        ParseLengthTakes: {
            text: string;
            unit: components["schemas"]["LengthUnit"];
            decimal?: components["schemas"]["Decimal"];
        };
        ParseLengthGives: {
            /** @description m */
            metres: number;
        };
        ShowLengthTakes: {
            /** @description m */
            metres: number;
            unit: components["schemas"]["LengthUnit"];
            decimal?: components["schemas"]["Decimal"];
        };
        ShowLengthGives: {
            text: string;
        };
        FieldsTakes: Record<string, never>;
        FieldsGives: {
            measured: components["schemas"]["MeasuredField"][];
            works: components["schemas"]["WorkKind"][];
        };
    };
    responses: never;
    parameters: never;
    requestBodies: never;
    headers: never;
    pathItems: never;
}

export type CheckVisitGives = components["schemas"]["CheckVisitGives"];
export type CheckVisitTakes = components["schemas"]["CheckVisitTakes"];
export type Conflict = components["schemas"]["Conflict"];
export type ConflictValue = components["schemas"]["ConflictValue"];
export type ContradictsGives = components["schemas"]["ContradictsGives"];
export type ContradictsTakes = components["schemas"]["ContradictsTakes"];
export type Decimal = components["schemas"]["Decimal"];
export type Entry = components["schemas"]["Entry"];
export type EntryKind = components["schemas"]["EntryKind"];
export type EntryList = components["schemas"]["EntryList"];
export type FieldValue = components["schemas"]["FieldValue"];
export type FieldsGives = components["schemas"]["FieldsGives"];
export type FieldsTakes = components["schemas"]["FieldsTakes"];
export type FoldGives = components["schemas"]["FoldGives"];
export type FoldTakes = components["schemas"]["FoldTakes"];
export type LengthUnit = components["schemas"]["LengthUnit"];
export type Mark = components["schemas"]["Mark"];
export type Marks = components["schemas"]["Marks"];
export type MeasuredField = components["schemas"]["MeasuredField"];
export type OfferGives = components["schemas"]["OfferGives"];
export type OfferTakes = components["schemas"]["OfferTakes"];
export type Parameter = components["schemas"]["Parameter"];
export type ParseLengthGives = components["schemas"]["ParseLengthGives"];
export type ParseLengthTakes = components["schemas"]["ParseLengthTakes"];
export type PlaceOfMarkGives = components["schemas"]["PlaceOfMarkGives"];
export type PlaceOfMarkTakes = components["schemas"]["PlaceOfMarkTakes"];
export type Problem = components["schemas"]["Problem"];
export type Roll = components["schemas"]["Roll"];
export type RollList = components["schemas"]["RollList"];
export type RunRolls = components["schemas"]["RunRolls"];
export type RunSummaryGives = components["schemas"]["RunSummaryGives"];
export type RunSummaryTakes = components["schemas"]["RunSummaryTakes"];
export type ScoreSum = components["schemas"]["ScoreSum"];
export type ShowLengthGives = components["schemas"]["ShowLengthGives"];
export type ShowLengthTakes = components["schemas"]["ShowLengthTakes"];
export type SpotScore = components["schemas"]["SpotScore"];
export type SpotSpeed = components["schemas"]["SpotSpeed"];
export type SpotSummaryGives = components["schemas"]["SpotSummaryGives"];
export type SpotSummaryTakes = components["schemas"]["SpotSummaryTakes"];
export type Thing = components["schemas"]["Thing"];
export type Total = components["schemas"]["Total"];
export type ValueRule = components["schemas"]["ValueRule"];
export type WorkKind = components["schemas"]["WorkKind"];

export interface Functions {
  /** The score that a roll's marks suggest, and the band it may move in. */
  offer: { takes: OfferTakes; gives: OfferGives };
  /** Does a score stand outside the band of its marks? Pointed out, never changed. */
  contradicts: { takes: ContradictsTakes; gives: ContradictsGives };
  /** Where on the line a mark was, from its time and the roll's own distance, at the ramp's release speed. */
  place_of_mark: { takes: PlaceOfMarkTakes; gives: PlaceOfMarkGives };
  /** The rolls of one direction: scores added up, distances and what to look at. */
  run_summary: { takes: RunSummaryTakes; gives: RunSummaryGives };
  /** Both directions at a spot: mean score, green speed with its error, and whether it differs from the last reading. */
  spot_summary: { takes: SpotSummaryTakes; gives: SpotSummaryGives };
  /** The entries of a visit as they would be taken into the records: what is wrong, and what to look at. */
  check_visit: { takes: CheckVisitTakes; gives: CheckVisitGives };
  /** What the entries say together, per thing and field, and where they contradict each other. */
  fold: { takes: FoldTakes; gives: FoldGives };
  /** Reads a length as people write it. */
  parse_length: { takes: ParseLengthTakes; gives: ParseLengthGives };
  /** A length for people: 10'2", 3.11 m, 311 cm, 10.2 ft. */
  show_length: { takes: ShowLengthTakes; gives: ShowLengthGives };
  /** The measured fields and the kinds of work of data/, in the order of its files, for forms. */
  fields: { takes: FieldsTakes; gives: FieldsGives };
}
