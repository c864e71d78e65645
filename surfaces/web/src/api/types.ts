// Written by `npm run types` from surfaces/api/openapi.yaml. Change that, not this.
export interface paths {
    "/healthz": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The server and its store answer. */
        get: operations["healthz"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/fields": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The data dictionary, kinds of works, measured fields and the roll score's rule. */
        get: operations["fields"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The clubs whose records are kept here. */
        get: operations["clubs"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/greens": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Every green at a glance. */
        get: operations["greensReview"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/greens/{green}/years/{year}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One green's year, with visits, works, weather, true days and losses. */
        get: operations["seasonReview"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/greens/{green}/years/{year}/model": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The year as the season model estimates it, day by day, with a forecast. */
        get: operations["seasonModel"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/years/{year}/report": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The club's year for its owner, one HTML file that opens without a server. */
        get: operations["reportFile"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/model/checks": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** How far the season model may be trusted; three further fits of it, so it takes seconds. */
        get: operations["seasonChecks"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/works": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The works and what each cost. */
        get: operations["works"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/works/{work}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One work, green by green, with fall, recovery under each definition, and loss. */
        get: operations["workReview"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/methods": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Methods beside one another over all works, in days, growth-days, depth and score-days. */
        get: operations["methodsReview"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/observers": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** How the observers score the same balls, apart and in time. */
        get: operations["observersReview"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/consistency": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Greens out of line, what differs between and within greens, out against back, speed against score. */
        get: operations["consistencyReview"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/visits": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Visits, newest first, a page at a time. */
        get: operations["visits"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/visits/{visit}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One visit with every roll, and its speed worked out in steps. */
        get: operations["visitDetail"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/visits/{visit}/history": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Every revision of one visit, oldest first. */
        get: operations["visitHistory"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/field": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What a phone needs to work for weeks without a network. */
        get: operations["fieldKit"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/entries": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Entries of phones in the order in which they arrived. */
        get: operations["entriesSince"];
        put?: never;
        /**
         * Hand in what a phone wrote down.
         * @description The body is a file of entries (docs/howto/phone_file.md), up to 8 MiB as it
         *     is sent and 32 MiB unpacked; it may be packed with gzip (Content-Encoding).
         *     The answer comes after every entry named in `kept` is on disk. An entry that
         *     is refused stops no other. Sending the same again changes nothing. What is
         *     whole becomes a record: a closed visit, a reading, a work.
         */
        post: operations["handIn"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/conflicts": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Fields of which phones say different things, and a person must choose. */
        get: operations["conflicts"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/photos": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Photos taken at a visit or of a work, in the order in which they were taken. */
        get: operations["photos"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/photos/{photo}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The picture of a photo. Its bytes never change under its id. */
        get: operations["picture"];
        /**
         * Keep the picture of a photo whose entry was handed in before.
         * @description A JPEG of at most 1.5 MiB and 4000 pixels a side that holds the picture alone,
         *     with the SHA-256 that its entry tells. The answer comes after it is on disk.
         *     Sending the same again changes nothing.
         */
        put: operations["keepPicture"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/import": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Bring in record files, all of them or none.
         * @description The files are read and checked together. With any problem nothing is kept
         *     and the answer is 422. With `dry_run` nothing is kept either way. Sending
         *     the same files again changes nothing. A club that is not known yet is made.
         */
        post: operations["importFiles"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/weather": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Bring in one daily weather file of the club's station.
         * @description How the file is understood is guessed and comes back as lines "name=value"
         *     (docs/howto/weather.md); the same lines, changed, go into `map`. With
         *     `dry_run` nothing is kept. Days that are here already are corrected.
         */
        post: operations["importWeather"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/import": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Bring in record files of the club that they name themselves.
         * @description As for a club's own import; the club stands in club.csv.
         */
        post: operations["importClub"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/trials/design": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Draw a trial's random layout, and say what it could find.
         * @description Nothing is kept: the plan file in the answer is the record of the draw. The
         *     same body gives the same answer.
         */
        post: operations["designTrial"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/trials/analyse": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Compare the treatments of a trial from its plan and its records.
         * @description Two files, the plan first (docs/howto/trials.md). Nothing is kept. At most
         *     4 MiB. With any problem in them the answer is 422.
         */
        post: operations["analyseTrial"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/trials/analyse": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Compare the treatments of a trial from its plan and the club's own rolls.
         * @description One file, the plan; each plot is a green or a half of its own. Nothing is kept.
         *     With any problem in it the answer is 422.
         */
        post: operations["analyseTrialRolls"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/session": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Who is asking, and what that person may do. */
        get: operations["session"];
        put?: never;
        /**
         * Sign in by name and password, or with the token of a link for reading.
         * @description A wrong password and an unknown name get the same answer. After some wrong tries
         *     each further one must wait, longer each time (429 with Retry-After).
         */
        post: operations["signIn"];
        /** Sign out. */
        delete: operations["signOut"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/sessions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Where one is signed in. */
        get: operations["ownSessions"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/sessions/{session}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /** End one of one's own sessions. */
        delete: operations["endOwnSession"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/invitations/look": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** What an invitation offers. */
        post: operations["lookAtInvitation"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/invitations/accept": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Accept an invitation.
         * @description With name and password a new account is made and signed in. With neither, the
         *     person who is signed in takes the role. An invitation is good for one time.
         */
        post: operations["acceptInvitation"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/people": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** People of a club with their sessions, invitations and links for reading. */
        get: operations["peopleOfClub"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/people/{person}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /** Give a person of the club another role there. */
        put: operations["setRole"];
        post?: never;
        /** Take a person out of the club. */
        delete: operations["takeRole"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/people/{person}/sessions/{session}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /** Cut off a session, a lost phone say; it is refused from this moment. */
        delete: operations["cutOff"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/invitations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Invite somebody into a role, by scan code or link. */
        post: operations["invite"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/invitations/{invitation}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /** Take an invitation back. */
        delete: operations["endInvitation"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/links": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Make a link for reading, for a committee say. */
        post: operations["makeLink"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/clubs/{club}/links/{link}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /** Cut a link off, with all that was opened by it. */
        delete: operations["endLink"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
}
export type webhooks = Record<string, never>;
export interface components {
    schemas: {
        /**
         * @description A day of the club's calendar.
         * @example 2025-03-17
         */
        Day: string;
        /**
         * @description Local time, 24 hours.
         * @example 07:40
         */
        TimeOfDay: string;
        /**
         * @description Month and day, of any year.
         * @example 11-01
         */
        MonthDay: string;
        /** @description Roll score in points, 1 (worst) to 10. */
        Score: number;
        /** @description First and last day, both inside. */
        Period: {
            first: components["schemas"]["Day"];
            last: components["schemas"]["Day"];
        };
        /** @description Why a value was refused or is pointed out, as data. */
        Problem: {
            /**
             * @description Short and stable.
             * @example score_out_of_range
             */
            code: string;
            /**
             * @description The field as the data dictionary names it.
             * @example score
             */
            field: string;
            /**
             * @description What was found.
             * @example 11
             */
            value: string;
            /**
             * @description What would have been accepted.
             * @example a whole number from 1 to 10
             */
            rule: string;
            /**
             * @description Where; may be empty.
             * @example rolls.csv line 12
             */
            place: string;
        };
        Refusal: {
            problem: components["schemas"]["Problem"];
            /** @description The problem as one sentence for people. */
            sentence: string;
        };
        /** @description One problem or remark with its sentence. */
        Remark: {
            problem: components["schemas"]["Problem"];
            /** @description The same as one sentence for people. */
            sentence: string;
        };
        Health: {
            /** @enum {string} */
            status: "ok";
            /** @description Grows with every write to the store. */
            change_number: number;
        };
        ClubName: {
            id: string;
            name: string;
        };
        Clubs: {
            clubs: components["schemas"]["ClubName"][];
        };
        /** @description Where a record came from. */
        Source: {
            /** @description Name of the file it was read from; empty where there is none. */
            file: string;
            /** @description Line in the file, from 1; 0 where there is no file. */
            line: number;
        };
        /**
         * @description bobble: the ball leaves the ground; chatter: it vibrates but stays down; snake: an unexpected sideways move.
         * @enum {string}
         */
        MarkKind: "bobble" | "chatter" | "snake";
        Mark: {
            kind: components["schemas"]["MarkKind"];
            /** @description Seconds since release. */
            seconds?: number;
        };
        /** @description One ball. */
        Roll: {
            /** @description Place in the run, from 1. */
            order: number;
            /** @description Distance rolled, metres; absent: not measured. */
            distance_m?: number;
            /** @description Absent: marks were not noted. Empty: watched, and nothing was seen. */
            marks?: components["schemas"]["Mark"][];
            /** @description The observer's own score; absent: not scored. */
            score?: number;
        };
        /** @enum {string} */
        Direction: "out" | "back";
        /** @description The rolls of one direction at a spot. */
        Run: {
            spot: string;
            direction: components["schemas"]["Direction"];
            rolls: components["schemas"]["Roll"][];
            /** @description Total of the scores, points, where only that was written down. */
            total?: number;
            /** @description Balls the total is of. */
            total_of?: number;
        };
        /** @description State of the green at a visit; each may be unknown. */
        Conditions: {
            /** @description Hours. */
            hours_since_mowing?: number;
            /** @description Hours. */
            hours_since_rolling?: number;
            /** @description none, light, heavy */
            dew?: string;
            /** @description calm, breeze, strong */
            wind?: string;
            /** @description dry, moist, wet, frosted */
            surface?: string;
        };
        /** @description One observer at one green. */
        Visit: {
            id: string;
            green: string;
            /** @description Empty: the whole green. */
            half: string;
            observer: string;
            day: components["schemas"]["Day"];
            from?: components["schemas"]["TimeOfDay"];
            to?: components["schemas"]["TimeOfDay"];
            /** @description Visits with the same one are the same balls, scored apart by several observers. Absent: none. */
            shared_rolls?: string;
            conditions: components["schemas"]["Conditions"];
            runs: components["schemas"]["Run"][];
            /** @description May be empty. */
            note: string;
            source: components["schemas"]["Source"];
        };
        /**
         * @description disruptive: lowers the score and is followed; routine: does not; closing: shuts the green to play.
         * @enum {string}
         */
        WorkClass: "disruptive" | "routine" | "closing";
        /** @description One named quantity of a work. */
        Parameter: {
            /** @example tine_diameter */
            name: string;
            /** @example Tine diameter */
            title: string;
            /**
             * @description Empty where the number has none and for words.
             * @example mm
             */
            unit: string;
            number?: number;
            /** @description For parameters that are words; else empty. */
            word: string;
        };
        /** @description Something done to the surface. */
        Work: {
            id: string;
            /** @example coring */
            kind: string;
            day: components["schemas"]["Day"];
            until?: components["schemas"]["Day"];
            at?: components["schemas"]["TimeOfDay"];
            /** @description Empty: every green. */
            greens: string[];
            /** @description Empty: the whole green. */
            half: string;
            /** @description Absent: as the table of kinds says. */
            disruptive?: boolean;
            parameters: components["schemas"]["Parameter"][];
            /** @description May be empty. */
            note: string;
            source: components["schemas"]["Source"];
        };
        /** @description A day or days on the calendar with what is wanted of the greens. */
        Fixture: {
            id: string;
            name: string;
            days: components["schemas"]["Period"];
            /** @description 1 ordinary, 2 important, 3 the club's greatest. */
            importance: number;
            score_wanted?: components["schemas"]["Score"];
            /** @description Green speed wanted, metres. */
            speed_wanted_m?: number;
            source: components["schemas"]["Source"];
        };
        /** @description Green speed of a visit, the mean over its spots. */
        VisitSpeed: {
            /** @description Metres. */
            speed_m: number;
            /** @description Standard error, metres. */
            standard_error_m: number;
            /** @description Spots it is the mean of. */
            spots: number;
            /** @description A spot is steep; find a flatter place. */
            steep: boolean;
            /** @description Sentences; empty when all is well. */
            warnings: string[];
        };
        /** @description One direction. */
        RunSpeed: {
            /** @description Mean of the measured distances, metres. */
            mean_m: number;
            /** @description Longest less shortest, metres. */
            spread_m: number;
            /** @description Measured rolls. */
            rolls: number;
            /** @description The spread is inside the protocol's tolerance. */
            within_tolerance: boolean;
        };
        /**
         * @description Downhill over uphill below 2, 2 to 3, above 3.
         * @enum {string}
         */
        SlopeClass: "gentle" | "moderate" | "steep";
        /** @description Green speed at a spot from its two directions, both kept. */
        SpotSpeed: {
            out?: components["schemas"]["RunSpeed"];
            back?: components["schemas"]["RunSpeed"];
            /** @description Mean of the two directions, metres. */
            plain_mean_m: number;
            /** @description 2UD/(U+D), metres, when both directions are there. */
            slope_corrected_m?: number;
            /** @description The one to use, metres. */
            speed_m: number;
            /** @description Standard error, metres. */
            standard_error_m: number;
            /** @description Downhill over uphill. */
            ratio?: number;
            slope_class?: components["schemas"]["SlopeClass"];
            one_direction_only: boolean;
            /** @description The directions differ by more than the protocol's gap. */
            directions_apart: boolean;
            warnings: string[];
        };
        /** @enum {string} */
        Trend: "unknown" | "better" | "steady" | "worse";
        /** @description One green at a glance. */
        GreenCard: {
            /** @description Identifier. */
            green: string;
            name: string;
            /** @description Free words; may be empty. */
            grass_mix: string;
            last_visit?: components["schemas"]["Day"];
            /** @description Days from the last visit to today. */
            days_since_visit?: number;
            /** @description Of the last scored day, points. */
            score?: components["schemas"]["Score"];
            speed?: components["schemas"]["VisitSpeed"];
            speed_day?: components["schemas"]["Day"];
            /** @description Score that makes today a true day, points. */
            standard: number;
            /** @description Absent: never scored. */
            at_standard?: boolean;
            trend: components["schemas"]["Trend"];
            /** @description Mean of the last three scored days less the three before, points. */
            trend_points?: number;
            /** @description Identifier of the last disruptive work; empty: none. */
            last_work: string;
            /** @description In words; empty: none. */
            last_work_label: string;
            /** @description Days from it to today. */
            days_since_work?: number;
            /** @description Speed at or above the club's median, score below the standard. */
            fast_but_not_true: boolean;
            /** @description True days measured this calendar year so far. */
            measured_true: number;
            /** @description True days this year if no unmeasured day was true. */
            fewest_true: number;
            /** @description True days this year if every unmeasured day was true. */
            most_true: number;
            /** @description Days open to play this year so far. */
            open_days: number;
            /** @description Last scored days, oldest first, points. */
            recent_scores: number[];
        };
        GreensReview: {
            club: string;
            club_name: string;
            today: components["schemas"]["Day"];
            /** @description Years with any visit, newest first. */
            years: number[];
            greens: components["schemas"]["GreenCard"][];
            /** @description Median of the greens' last speeds, metres. */
            median_speed_m?: number;
            /** @description One plain sentence. */
            headline: string;
        };
        /** @description Settings of growth potential exp(-((T - optimum) / spread)^2 / 2). */
        GrowthOptions: {
            /** @description Degrees Celsius. */
            optimum_c: number;
            /** @description Degrees Celsius. */
            spread_c: number;
            /** @description Stays 1 above the optimum. */
            plateau: boolean;
        };
        /** @description One visit as a point of the year's picture. */
        VisitPoint: {
            /** @description Identifier. */
            visit: string;
            day: components["schemas"]["Day"];
            at?: components["schemas"]["TimeOfDay"];
            observer: string;
            /** @description Empty: the whole green. */
            half: string;
            /** @description Mean of its rolls, points; absent: not scored. */
            score?: components["schemas"]["Score"];
            /** @description Lowest roll, points. */
            lowest?: number;
            /** @description Highest roll, points. */
            highest?: number;
            scored_rolls: number;
            speed?: components["schemas"]["VisitSpeed"];
            /** @description Things to look at in it. */
            remarks: number;
        };
        WorkTick: {
            /** @description Identifier. */
            work: string;
            kind: string;
            /** @example coring 13 mm */
            label: string;
            day: components["schemas"]["Day"];
            until?: components["schemas"]["Day"];
            /** @description Empty: the whole green. */
            half: string;
            work_class: components["schemas"]["WorkClass"];
        };
        WeatherPoint: {
            day: components["schemas"]["Day"];
            /** @description Growth potential, 0 to 1. */
            growth?: number;
            /** @description Millimetres. */
            rain_mm?: number;
            /** @description Degrees Celsius. */
            tmin_c?: number;
            /** @description Degrees Celsius. */
            tmax_c?: number;
        };
        StandardPoint: {
            from: components["schemas"]["Day"];
            /** @description The standard from this day on, points. */
            score: number;
        };
        /**
         * @description measured_true: visited, at or above the standard; measured_not: visited, below; between_true: not visited, true visits on both sides at most 14 days apart and no disruptive work between; unmeasured: not visited, anything else; closed: closed to play.
         * @enum {string}
         */
        DayKind: "measured_true" | "measured_not" | "between_true" | "unmeasured" | "closed";
        /** @description What is known of each day. Never silently assumed. */
        Ledger: {
            period: components["schemas"]["Period"];
            /** @description One for each day of the period, in order. */
            days: components["schemas"]["DayKind"][];
            /** @description Days. */
            measured_true: number;
            /** @description Days. */
            measured_not: number;
            /** @description Days. */
            between_true: number;
            /** @description Days. */
            unmeasured: number;
            /** @description Days. */
            closed: number;
            /** @description Days open to play: all but the closed. */
            open: number;
            /** @description True days if no unmeasured day (of both kinds) was true. */
            fewest_true: number;
            /** @description True days if every unmeasured day (of both kinds) was. */
            most_true: number;
        };
        /**
         * @description at_standard: first day at the standard; two_running: first of two visited days running at it; lasting: first day from which every visited day stays at it; own_level: first day back at its own score before the work.
         * @enum {string}
         */
        Definition: "at_standard" | "two_running" | "lasting" | "own_level";
        /**
         * @description Why no right end is known. none: it is known; record_ends: not back when the record ends; next_work: not back when the next disruptive work began; not_asked: own level, with no score before.
         * @enum {string}
         */
        Censoring: "none" | "record_ends" | "next_work" | "not_asked";
        /** @description The half-open interval (after, by] in days since the work that holds the day of recovery. */
        RecoveryInterval: {
            definition: components["schemas"]["Definition"];
            censoring: components["schemas"]["Censoring"];
            /** @description The work's own day where no visit was below. */
            last_below: components["schemas"]["Day"];
            /** @description Absent when censored. */
            first_back?: components["schemas"]["Day"];
            /** @description Later than this many days after the work. */
            after_days: number;
            /** @description No later than this many days after the work; absent when censored. */
            by_days?: number;
            /** @description by_days, had visits been missed only because the roll was good again; absent where none were missed, or what is usual is not known. */
            by_days_if_good?: number;
            /** @description The same in growth-days; absent when a temperature is missing. */
            after_growth_days?: number;
            /** @description Likewise. */
            by_growth_days?: number;
            /** @description Identifiers of the visits it rests on. */
            visits: string[];
        };
        /** @description Score points times days below the level before. */
        LossArea: {
            /** @description Score-days. */
            score_days: number;
            /** @description Least, score-days. */
            low: number;
            /** @description Most, score-days. */
            high: number;
            /** @description Each day weighted by its growth potential, score-days. */
            growth_score_days?: number;
            /** @description false: still below when the record or the next work ends it. */
            ended: boolean;
        };
        /** @description One disruptive work at one green or half. */
        WorkLoss: {
            /** @description Identifier. */
            work: string;
            kind: string;
            green: string;
            /** @description Empty: the whole green. */
            half: string;
            day: components["schemas"]["Day"];
            /** @description Last day that belongs to it. */
            horizon: components["schemas"]["Day"];
            horizon_reason: components["schemas"]["Censoring"];
            /** @description On the work's day, points. */
            standard: number;
            /** @description Score before, points; absent: there is none, and none is invented. */
            before?: number;
            /** @description Identifiers of the visits it is the mean of. */
            before_visits: string[];
            /** @description Lowest score after, points. */
            trough?: number;
            trough_day?: components["schemas"]["Day"];
            /** @description Before less trough, points. */
            depth?: number;
            /** @description One for each definition, in the order of Definition. */
            recovery: components["schemas"]["RecoveryInterval"][];
            area?: components["schemas"]["LossArea"];
            /** @description Lasting recovery met the standard of its day, but not the work's day's. */
            back_at_lower_standard: boolean;
            visits_after: number;
            /** @description Sentences. */
            notes: string[];
        };
        /** @description One green's year, ready to draw. */
        SeasonReview: {
            club: string;
            green: string;
            green_name: string;
            year: number;
            /** @description The year, cut at today. */
            period: components["schemas"]["Period"];
            growth_options: components["schemas"]["GrowthOptions"];
            visits: components["schemas"]["VisitPoint"][];
            works: components["schemas"]["WorkTick"][];
            weather: components["schemas"]["WeatherPoint"][];
            standards: components["schemas"]["StandardPoint"][];
            fixtures: components["schemas"]["Fixture"][];
            ledger: components["schemas"]["Ledger"];
            /** @description Of works whose day lies in the period. */
            losses: components["schemas"]["WorkLoss"][];
            /** @description Days of the period without a temperature. */
            weather_days_missing: number;
        };
        /** @description A number with its standard error and 95 % interval. */
        Estimate: {
            value: number;
            standard_error: number;
            low: number;
            high: number;
        };
        /** @description Days until something is back; absent figures are not reached by the end of what was followed. */
        Return: {
            median?: number;
            low?: number;
            high?: number;
            /** @description Chance of being back by then. */
            share: number;
            /** @description Days. */
            followed: number;
        };
        /** @description One day as the model sees it, in the morning and for the mean of all observers. */
        ModelDay: {
            day: components["schemas"]["Day"];
            /** @description After today; growth is normal for the day of the year. */
            to_come: boolean;
            closed: boolean;
            standard: number;
            score: components["schemas"]["Score"];
            score_low: components["schemas"]["Score"];
            score_high: components["schemas"]["Score"];
            /** @description Without any loss. */
            undisturbed: components["schemas"]["Score"];
            undisturbed_low: components["schemas"]["Score"];
            undisturbed_high: components["schemas"]["Score"];
            /** @description That the level is at or above the standard. */
            chance: number;
            /** @description Points, in the order of works. */
            losses: number[];
        };
        /** @description What the works of one day and surface cost, as the model sees it. */
        ModelWork: {
            /** @description Identifiers. */
            works: string[];
            label: string;
            day: components["schemas"]["Day"];
            /** @description Empty for the whole green. */
            half: string;
            /** @description Points. */
            depth: components["schemas"]["Estimate"];
            /** @description Per unit of the clock. */
            rate: components["schemas"]["Estimate"];
            /** @description Until half of the loss is gone. */
            half_life: components["schemas"]["Estimate"];
            /** @description Sum of the loss over all days, also those to come. */
            score_days: components["schemas"]["Estimate"];
            /** @description Until the loss is within the tolerance. */
            growth_days_back: components["schemas"]["Estimate"];
            /** @description Days from the work. */
            within_tolerance: components["schemas"]["Return"];
            /** @description Days from the work. */
            at_standard: components["schemas"]["Return"];
        };
        ModelMethod: {
            method: string;
            /** @description Works at greens. */
            losses: number;
            /** @description Different days they were done on. */
            work_days: number;
            depth: components["schemas"]["Estimate"];
            rate: components["schemas"]["Estimate"];
            half_life: components["schemas"]["Estimate"];
            /** @description False where the records say little of it. */
            rate_determined: boolean;
        };
        ModelObserver: {
            observer: string;
            visits: number;
            /** @description Points above the mean of all observers. */
            above: components["schemas"]["Estimate"];
        };
        /** @description One green's year as the season model estimates it, beside what was measured. */
        SeasonModel: {
            club: string;
            green: string;
            green_name: string;
            year: number;
            /** @description The answer in plain words. */
            sentence: string;
            /**
             * @description What losses decay with.
             * @enum {string}
             */
            clock: "growth_days" | "calendar_days";
            open_days: number;
            /** @description Of the open days. */
            true_days: components["schemas"]["Estimate"];
            days: components["schemas"]["ModelDay"][];
            works: components["schemas"]["ModelWork"][];
            /** @description Days from today until at the standard; absent where it is there. */
            forecast?: components["schemas"]["Return"];
            methods: components["schemas"]["ModelMethod"][];
            observers: components["schemas"]["ModelObserver"][];
            /** @description Points of a whole day's play. */
            play: components["schemas"]["Estimate"];
            /** @description Standard deviation of a day's step of the undisturbed level, points. */
            level_walk: components["schemas"]["Estimate"];
            /** @description Of what all rolls of a visit share, points. */
            visit_sd: components["schemas"]["Estimate"];
            /** @description Of one line and direction about its green, points. */
            line_sd: components["schemas"]["Estimate"];
            /** @description Of one roll about its run, points. */
            roll_sd: number;
            /** @description A loss no greater than this is over, points. */
            tolerance: number;
            log_likelihood: number;
            draws: number;
            notes: string[];
        };
        /** @description How far the season model may be trusted. */
        SeasonChecks: {
            club: string;
            /** @description Each visit's mean less what the model expected just before it, in standard deviations. */
            surprises: {
                sentence: string;
                like_chance: boolean;
                mean: number;
                sd: number;
                /** @description Share beyond 2; chance gives 0.046. */
                outside: number;
                visits: number;
                /** @description At lags of 1, 2 ... visits of a green. */
                autocorrelation?: number[];
                /** @description Of Ljung and Box. */
                statistic?: number;
                df?: number;
                p?: number;
            };
            /** @description Log-likelihood of the records with either clock; absent where the weather is too thin. */
            clocks?: {
                sentence: string;
                growth_days: number;
                calendar_days: number;
                /** @description Above 0: growth-days are likelier. */
                difference: number;
                /** @description More than 2 either way. */
                told_apart: boolean;
            };
            /** @description How far depths and rates move when the beliefs are narrower or wider, in their standard errors. */
            leaning: {
                sentence: string;
                fits: {
                    /** @description Width of the beliefs against the usual ones. */
                    times: number;
                    most: number;
                    methods: {
                        method: string;
                        depth: number;
                        rate: number;
                    }[];
                }[];
            };
        };
        /** @description A scored day before or after the work. */
        WorkDay: {
            day: components["schemas"]["Day"];
            /** @description Days since the work; negative before. */
            days_after: number;
            score: components["schemas"]["Score"];
            /** @description Scored rolls. */
            rolls: number;
            /** @description Identifiers. */
            visits: string[];
            /** @description Of that day, points; it may differ from the work's own day. */
            standard: number;
        };
        WorkAtGreen: {
            green_name: string;
            loss: components["schemas"]["WorkLoss"];
            /** @description From the window before the work to its horizon. */
            days: components["schemas"]["WorkDay"][];
        };
        WorkReview: {
            club: string;
            work: components["schemas"]["Work"];
            /** @example coring 13 mm */
            label: string;
            work_class: components["schemas"]["WorkClass"];
            greens: components["schemas"]["WorkAtGreen"][];
            /** @description The result in plain words. */
            sentence: string;
        };
        WorkLine: {
            work: components["schemas"]["Work"];
            label: string;
            work_class: components["schemas"]["WorkClass"];
            /** @description Greens it touched. */
            greens: number;
            /** @description Mean fall over its greens that have a before and an after, points. */
            mean_depth?: number;
            /** @description Two visits running at the standard: least last-below over the greens that are back, days since the work. */
            back_after_days?: number;
            /** @description Two visits running at the standard: most first-back over the greens that are back, days since the work. */
            back_by_days?: number;
            /** @description Greens seen back at the standard. */
            back: number;
            /** @description Of these, greens whose score would not have met the standard of the work's day. */
            back_at_lower_standard: number;
            /** @description Greens whose recovery has no known right end. */
            censored: number;
            /** @description Mean loss over its greens, score-days; a least where losses_open is above 0. */
            mean_score_days?: number;
            /** @description Greens still below when their record or the next work ended the count. */
            losses_open: number;
        };
        Works: {
            works: components["schemas"]["WorkLine"][];
        };
        /** @description A figure with its standard error and 95 % interval, where there is enough to tell them. */
        Figure: {
            value: number;
            se?: number;
            low?: number;
            high?: number;
        };
        /** @description One observer against the others in one quarter. */
        QuarterLean: {
            year: number;
            quarter: number;
            sessions: number;
            balls: number;
            bias: components["schemas"]["Figure"];
        };
        /** @description A straight line in time through the sessions' mean differences. */
        Slope: {
            /** @description Points a year. */
            per_year: number;
            se: number;
            low: number;
            high: number;
            /** @description Of a slope so far from 0 where there is none; two-sided. */
            p: number;
        };
        /** @description One observer against those who scored the same balls. */
        ObserverLine: {
            observer: string;
            name: string;
            /** @description With a score, shared or not. */
            visits: number;
            /** @description Visits at which another observer scored the same balls. */
            sessions: number;
            balls: number;
            /** @description Observers who scored the same balls. */
            beside: string[];
            sentence: string;
            bias?: components["schemas"]["Figure"];
            quarters: components["schemas"]["QuarterLean"][];
            trend?: components["schemas"]["Slope"];
            correction?: components["schemas"]["Figure"];
        };
        /** @description Items with one mean and one difference of two observers. */
        AgreementPoint: {
            mean: number;
            /** @description First less second. */
            difference: number;
            items: number;
        };
        /** @description Shared balls that would give bias and limits to half_width either side. */
        Needed: {
            balls_for_bias: number;
            sessions_for_bias: number;
            balls_for_limits: number;
            sessions_for_limits: number;
            /** @description How many balls of a session do the work of one, for they are judged in one mood. */
            design_effect: number;
        };
        /** @description Two observers over the same balls. Differences are first less second, in points. */
        PairLine: {
            first: string;
            second: string;
            sentence: string;
            /** @description Items are means of runs, because one of the two writes only totals. */
            of_runs: boolean;
            items: number;
            balls: number;
            sessions: number;
            bias?: components["schemas"]["Figure"];
            equal_share?: number;
            within_one?: number;
            sd_within?: number;
            sd_between?: number;
            sd?: number;
            lower_limit?: components["schemas"]["Figure"];
            upper_limit?: components["schemas"]["Figure"];
            kappa_quadratic?: components["schemas"]["Figure"];
            kappa_linear?: components["schemas"]["Figure"];
            icc?: components["schemas"]["Figure"];
            concordance?: components["schemas"]["Figure"];
            needed?: components["schemas"]["Needed"];
            points: components["schemas"]["AgreementPoint"][];
        };
        /** @description Two observers at the same greens within days, not over the same balls: weaker evidence. */
        NearbyLine: {
            first: string;
            second: string;
            sentence: string;
            /** @description Pairs of visits. */
            pairs: number;
            greens: number;
            sd: number;
            bias: components["schemas"]["Figure"];
        };
        /** @description A figure with its interval; none where one work gives no spread. */
        MethodFigure: {
            value: number;
            low?: number;
            high?: number;
        };
        MethodWork: {
            club: string;
            work: string;
            /** Format: date */
            day: string;
            /** @description Greens and halves looked at after it. */
            looks: number;
        };
        /** @description A share of the greens that were back after `left` and by `right` days; without right: after the last look. */
        CurvePart: {
            left: number;
            right?: number;
            mass: number;
        };
        /** @description One method over all its works. */
        MethodLine: {
            method: string;
            sentence: string;
            /** @description Work days: the number that counts. */
            works: number;
            /** @description Greens and halves looked at. */
            looks: number;
            /** @description Looks without a day back. */
            censored: number;
            /**
             * @description Why there is no median.
             * @enum {string}
             */
            no_median: "none" | "never_back" | "never_below";
            /** @description Median days until back. */
            days?: components["schemas"]["MethodFigure"];
            /** @description Looks after which visits were missed: longer than usual without one before the first good one. */
            missed: number;
            /** @description Median days, had visits been missed only because the roll was good again; absent where none were missed. */
            days_if_good?: components["schemas"]["MethodFigure"];
            /** @description Median growth-days until back. */
            growth_days?: components["schemas"]["MethodFigure"];
            /** @description Mean fall over works, points. */
            depth?: components["schemas"]["MethodFigure"];
            /** @description Mean loss over works, score-days; a least where losses_open is above 0. */
            score_days?: components["schemas"]["MethodFigure"];
            losses_open: number;
            /** @description Mean growth potential of a day after its works. */
            growth?: number;
            curve: components["schemas"]["CurvePart"][];
            work_list: components["schemas"]["MethodWork"][];
        };
        /** @description Two methods; every difference is second less first. */
        MethodPair: {
            first: string;
            second: string;
            sentence: string;
            /**
             * @description How far the design carries.
             * @enum {string}
             */
            evidence: "one_work" | "before_after" | "repeated" | "randomised";
            caution: string;
            /** @description Days on which both were done. */
            shared_days: number;
            /** @description Each was done more than once, and the interval of days leaves 0 out. */
            told_apart?: boolean;
            p?: number;
            days?: components["schemas"]["MethodFigure"];
            /** @description By how much days stretch. */
            ratio?: components["schemas"]["MethodFigure"];
            growth_days?: components["schemas"]["MethodFigure"];
            depth?: components["schemas"]["MethodFigure"];
            score_days?: components["schemas"]["MethodFigure"];
            /** @description Works of each that would show a difference of days_wanted four times in five. */
            works_needed?: number;
        };
        /** @description What days were adjusted for, or why not. */
        MethodAdjustment: {
            /** @enum {string} */
            name: "growth" | "score_before" | "grass";
            used: boolean;
            reason?: string;
            /** @description The value at which medians are given. */
            reference?: number;
            /** @description Of log days. */
            effect?: number;
            standard_error?: number;
        };
        /** @description Does it take fewer days when ...? Methods beside one another. */
        MethodsReview: {
            clubs: string[];
            /** @description The answer, or why there is none yet. */
            sentence: string;
            notes: string[];
            definition: components["schemas"]["Definition"];
            /** @description Asked for; empty where any. */
            kind: string;
            /** @description Asked for; empty where none. */
            by: string;
            cuts: number[];
            alongside: string[];
            growth_window_days: number;
            days_wanted: number;
            level: number;
            /** @enum {string} */
            distribution: "exponential" | "weibull" | "log_normal" | "log_logistic";
            works: number;
            looks: number;
            /** @description Whether days could be compared. */
            estimated: boolean;
            /** @description Why not. */
            reason?: string;
            /** @description Of log days, between works of one method. */
            work_sd?: number;
            /** @description Of log days, between greens of one work. */
            look_scale?: number;
            /** @description Works less methods less what is adjusted for. */
            df?: number;
            tried: {
                /** @enum {string} */
                distribution: "exponential" | "weibull" | "log_normal" | "log_logistic";
                log_likelihood: number;
            }[];
            adjustments: components["schemas"]["MethodAdjustment"][];
            methods: components["schemas"]["MethodLine"][];
            pairs: components["schemas"]["MethodPair"][];
        };
        /** @description How far the observers' eyes agree. */
        ObserversReview: {
            club: string;
            sentence: string;
            sessions: number;
            balls: number;
            /** @description Visits whose shared rolls nobody else has scored. */
            waiting: number;
            /** @description Points to either side that needed is worked out for. */
            half_width: number;
            nearby_days: number;
            observers: components["schemas"]["ObserverLine"][];
            pairs: components["schemas"]["PairLine"][];
            nearby: components["schemas"]["NearbyLine"][];
            alpha_ordinal?: components["schemas"]["Figure"];
            alpha_interval?: components["schemas"]["Figure"];
        };
        VarianceLevel: {
            /** @example visit */
            name: string;
            groups: number;
            variance: number;
            /** @description Of the sum of all levels. */
            share: number;
        };
        /** @description Components of variance, outermost first; no levels where there is too little. */
        VarianceParts: {
            values: number;
            mean?: number;
            levels: components["schemas"]["VarianceLevel"][];
        };
        /** @description A green against the club's median on the same days: points, or metres for the speed. */
        GreenStanding: {
            days: number;
            mean: number;
            /** @description Median of the days' differences. */
            level: number;
            difference: components["schemas"]["Figure"];
            robust_z?: number;
            /** @description The robust z lies beyond 3.5. */
            out_of_line: boolean;
        };
        GreenConsistency: {
            green: string;
            name: string;
            score?: components["schemas"]["GreenStanding"];
            speed?: components["schemas"]["GreenStanding"];
            standard: number;
            fast_but_not_true: boolean;
        };
        /**
         * @description slope: balls run further one way at every visit; score_apart: one direction scores lower; changing: the apparent slope changes from visit to visit.
         * @enum {string}
         */
        DirectionFinding: "too_few" | "alike" | "slope" | "score_apart" | "changing";
        /** @description Out against back at one spot. */
        SpotConsistency: {
            green: string;
            name: string;
            spot: string;
            finding: components["schemas"]["DirectionFinding"];
            visits: number;
            speeds: number;
            score?: components["schemas"]["Figure"];
            rise?: components["schemas"]["Figure"];
            p?: number;
            /** @description Corrected for the number of spots. */
            p_all?: number;
            rise_sd?: number;
            p_changing?: number;
        };
        SpeedScore: {
            green: string;
            speed_m: number;
            score: number;
        };
        RankCorrelation: {
            pairs: number;
            /** @description Greens. */
            groups: number;
            estimate: components["schemas"]["Figure"];
        };
        /** @description Are the greens alike, and alike within? */
        ConsistencyReview: {
            club: string;
            days: components["schemas"]["Period"];
            sentence: string;
            /** @description Shared balls once. */
            visits: number;
            score_parts: components["schemas"]["VarianceParts"];
            speed_parts: components["schemas"]["VarianceParts"];
            greens: components["schemas"]["GreenConsistency"][];
            spots: components["schemas"]["SpotConsistency"][];
            speed_and_score?: components["schemas"]["RankCorrelation"];
            points: components["schemas"]["SpeedScore"][];
            /** @description Afternoon visits with a morning beside them. */
            score_pairs: number;
            afternoon_score?: components["schemas"]["Figure"];
            speed_pairs: number;
            afternoon_speed_m?: components["schemas"]["Figure"];
        };
        /** @description The ledgers of all greens added up, in green-days: 19 greens open on one day are 19. */
        LedgerTotals: {
            greens: number;
            /** @description Green-days. */
            measured_true: number;
            /** @description Green-days. */
            measured_not: number;
            /** @description Green-days. */
            between_true: number;
            /** @description Green-days. */
            unmeasured: number;
            /** @description Green-days. */
            closed: number;
            /** @description Green-days. */
            open: number;
            /** @description Green-days. */
            fewest_true: number;
            /** @description Green-days. */
            most_true: number;
        };
        /** @description What the report's figures rest on. */
        ReportBasis: {
            visits: number;
            /** @description Who made them. */
            observers: number;
            scored_rolls: number;
            /** @description With a distance. */
            measured_rolls: number;
            /** @description Days of the period with a temperature. */
            weather_days: number;
            weather_days_missing: number;
        };
        /** @description Everything the printed report of one club and year needs; the report file carries it inside itself. */
        ReportData: {
            club: string;
            club_name: string;
            year: number;
            /** @description The year, cut at today. */
            period: components["schemas"]["Period"];
            /** @description false: the report is of a part of the year. */
            year_ended: boolean;
            today: components["schemas"]["Day"];
            greens: components["schemas"]["GreensReview"];
            /** @description One for each green, in walking order. */
            seasons: components["schemas"]["SeasonReview"][];
            /** @description The year's disruptive works, oldest first. */
            works: components["schemas"]["WorkReview"][];
            totals: components["schemas"]["LedgerTotals"];
            basis: components["schemas"]["ReportBasis"];
            /** @description For the committee, most important first. */
            sentences: string[];
            /** @description How the figures were computed, a sentence each. */
            methods: string[];
        };
        VisitLine: {
            /** @description Identifier. */
            visit: string;
            green: string;
            green_name: string;
            /** @description Empty: the whole green. */
            half: string;
            observer: string;
            day: components["schemas"]["Day"];
            at?: components["schemas"]["TimeOfDay"];
            rolls: number;
            /** @description Mean of its rolls, points; absent: not scored. */
            score?: components["schemas"]["Score"];
            speed?: components["schemas"]["VisitSpeed"];
            remarks: number;
            source: components["schemas"]["Source"];
        };
        VisitPage: {
            /** @description Visits that match in all. */
            total: number;
            /** @description Visits passed over. */
            offset: number;
            /** @description Newest first. */
            visits: components["schemas"]["VisitLine"][];
        };
        SpotDetail: {
            spot: string;
            speed?: components["schemas"]["SpotSpeed"];
        };
        VisitDetail: {
            visit: components["schemas"]["Visit"];
            green_name: string;
            /** @description Mean of its rolls, points; absent: not scored. */
            score?: components["schemas"]["Score"];
            scored_rolls: number;
            speed?: components["schemas"]["VisitSpeed"];
            spots: components["schemas"]["SpotDetail"][];
            remarks: components["schemas"]["Remark"][];
        };
        /** @description UUID of version 7 (RFC 9562), in lower case. */
        Uuid: string;
        /** @enum {string} */
        EntryKind: "visit" | "roll" | "total" | "reading" | "work" | "photo";
        /** @description Something a phone wrote down; never changed, never removed. docs/howto/phone_file.md names the fields. */
        Entry: {
            id: components["schemas"]["Uuid"];
            phone: components["schemas"]["Uuid"];
            /**
             * @description By the phone's clock, UTC.
             * @example 2026-05-03T07:10:31.250Z
             */
            at: string;
            /** @description Identifier of the observer; may be empty. */
            by: string;
            kind: components["schemas"]["EntryKind"];
            thing: components["schemas"]["Uuid"];
            /** @description Fields and their values; null: taken back. */
            set: Record<string, never>;
            /** @description Newest entries of the thing that the phone knew. */
            over: components["schemas"]["Uuid"][];
        };
        EntriesFile: {
            /** @enum {string} */
            form: "baize-entries";
            /** @enum {integer} */
            version: 1;
            phone: components["schemas"]["Uuid"];
            /**
             * @description UTC.
             * @example 2026-05-03T07:12:00.000Z
             */
            sent_at: string;
            entries: components["schemas"]["Entry"][];
            /** @description Only in a file that is handed over; sent to a server a picture goes to its own path. */
            photos?: {
                photo: components["schemas"]["Uuid"];
                /** Format: byte */
                jpeg: string;
            }[];
        };
        EntriesPage: {
            entries: components["schemas"]["Entry"][];
            /** @description To be asked for as `since` the next time. */
            next: number;
        };
        /** @description A problem with its sentence. */
        EntryProblem: {
            code: string;
            field: string;
            value: string;
            rule: string;
            place: string;
            /** @example entry 0190a0b0-0000-7000-8000-000000000001: set is missing, but must be at least one field with its value. */
            sentence: string;
        };
        RefusedEntry: {
            /** @description Empty where it could not be read. */
            id: string;
            problem: components["schemas"]["EntryProblem"];
        };
        /**
         * @description accepted: a record. refused: kept as entries, no record, and why stands in problems. open: the visit is not closed.
         * @enum {string}
         */
        ThingState: "accepted" | "refused" | "open";
        VisitOutcome: {
            visit: components["schemas"]["Uuid"];
            state: components["schemas"]["ThingState"];
            /** @description Taken out; its record is withdrawn. */
            removed: boolean;
            /** @description Sentences. */
            problems: string[];
            /** @description Fields of the visit, its rolls and totals that a person must settle. */
            conflicts: number;
        };
        ThingOutcome: {
            kind: components["schemas"]["EntryKind"];
            thing: components["schemas"]["Uuid"];
            state: components["schemas"]["ThingState"];
            removed: boolean;
            problems: string[];
            conflicts: number;
        };
        HandInReceipt: {
            /** @description On disk now, also those that were there before. */
            kept: components["schemas"]["Uuid"][];
            refused: components["schemas"]["RefusedEntry"][];
            visits: components["schemas"]["VisitOutcome"][];
            /** @description Readings, works and photos. */
            others: components["schemas"]["ThingOutcome"][];
            /** @description Sentences that refuse nothing: a clock that differs, a roll whose visit has not come. */
            remarks: string[];
            /** @description UTC. */
            server_time: string;
        };
        /** @description What its entries say of a photo. It is of a visit or of a work. */
        Photo: {
            photo: components["schemas"]["Uuid"];
            visit?: components["schemas"]["Uuid"];
            work?: components["schemas"]["Uuid"];
            /**
             * @description By the phone's clock, UTC.
             * @example 2026-05-03T07:10:31.250Z
             */
            taken: string;
            /** @description Identifier of the observer; may be empty. */
            by: string;
            note: string;
            sha256: string;
            bytes: number;
            /** @description Its picture has come; false: its phone has not sent it yet. */
            here: boolean;
            /** @description Of its visit or work. */
            day: components["schemas"]["Day"];
            /** @description Of its visit, or of its work where that is of one green only; else empty. */
            green: string;
        };
        Photos: {
            photos: components["schemas"]["Photo"][];
        };
        KeptPicture: {
            photo: components["schemas"]["Uuid"];
        };
        StandingValue: {
            entry: components["schemas"]["Uuid"];
            /** @description Anything a field may hold; null: taken back. */
            value: unknown;
            by: string;
            at: string;
        };
        Conflict: {
            thing: components["schemas"]["Uuid"];
            kind: components["schemas"]["EntryKind"];
            field: string;
            /** @description The last is used until a person has chosen. */
            values: components["schemas"]["StandingValue"][];
        };
        Conflicts: {
            conflicts: components["schemas"]["Conflict"][];
        };
        FieldSpot: {
            id: string;
            /** @description Of the way out, degrees from north. */
            bearing_deg?: number;
            /** @description Empty: none. */
            half: string;
        };
        LastSeen: {
            day: components["schemas"]["Day"];
            score_mean?: components["schemas"]["Score"];
            /** @description Green speed in metres. */
            speed_m?: number;
            /** @description Of its first run; may be empty. */
            spot: string;
        };
        FieldGreen: {
            id: string;
            name: string;
            halves: string[];
            /** @description None: any spot is taken. */
            spots: components["schemas"]["FieldSpot"][];
            last?: components["schemas"]["LastSeen"];
        };
        FieldObserver: {
            id: string;
            name: string;
        };
        FieldStandard: {
            /** @description Empty: every green. */
            green: string;
            from?: components["schemas"]["MonthDay"];
            to?: components["schemas"]["MonthDay"];
            score: number;
        };
        FieldKit: {
            club: components["schemas"]["ClubName"];
            greens: components["schemas"]["FieldGreen"][];
            observers: components["schemas"]["FieldObserver"][];
            standards: components["schemas"]["FieldStandard"][];
            /** @description Done today or under way. */
            works_today: components["schemas"]["Work"][];
        };
        Revision: {
            number: number;
            author: string;
            /** @description When it was written, RFC 3339, UTC. */
            at: string;
            /** @description The record as it stood. */
            contents: {
                [key: string]: unknown;
            };
        };
        History: {
            /** @description Oldest first. */
            revisions: components["schemas"]["Revision"][];
        };
        ReceivedFile: {
            /**
             * @description A file name without folders.
             * @example rolls.csv
             */
            name: string;
            /** @description The whole file. */
            content: string;
        };
        ImportRequest: {
            files: components["schemas"]["ReceivedFile"][];
        };
        FileReport: {
            name: string;
            /** @description Data rows read. */
            rows: number;
            /** @description Records they make. */
            records: number;
            problems: number;
        };
        /** @description What a write did, counted by record. */
        Receipt: {
            added: number;
            /** @description Same identifier, other contents: a new revision beside the old one. */
            corrected: number;
            unchanged: number;
        };
        ImportAnswer: {
            dry_run: boolean;
            files: components["schemas"]["FileReport"][];
            /** @description With any of these nothing was kept. */
            problems: components["schemas"]["Remark"][];
            /** @description Pointed out; refuses nothing. */
            remarks: components["schemas"]["Remark"][];
            receipt?: components["schemas"]["Receipt"];
            /** @description Whose records were kept; empty where none were. */
            club: string;
        };
        ImportWeatherAnswer: {
            dry_run: boolean;
            files: components["schemas"]["FileReport"][];
            /** @description With any of these nothing was kept. */
            problems: components["schemas"]["Remark"][];
            /** @description By date: gaps, doubles, swapped or impossible values. */
            remarks: components["schemas"]["Remark"][];
            receipt?: components["schemas"]["Receipt"];
            /** @description Whose weather was kept; empty where none was. */
            club: string;
            /** @description How the file was understood, lines of name=value. */
            mapping: string[];
        };
        TrialRequest: {
            /** @description Its name. */
            trial: string;
            /**
             * @default randomised_blocks
             * @enum {string}
             */
            layout: "completely_randomised" | "randomised_blocks" | "split_plot" | "strip_plot";
            treatments: string[];
            /** @description Of split plots and strip plots. */
            second_treatments?: string[];
            control?: string;
            /** @default 4 */
            blocks: number;
            greens?: string[];
            /** @description Names of a green's two halves, which are the plots then. */
            halves?: string[];
            /** @description Plots in a row of a block. */
            across?: number;
            /** @default 1 */
            seed: number;
            /**
             * Format: date
             * @description Without it there is no record sheet.
             */
            first_visit?: string;
            visits?: number;
            /** @default 3 */
            every_days: number;
            /** @default 0.4 */
            plot_sd: number;
            /** @default 0.5 */
            visit_sd: number;
            /** @default 0.3 */
            whole_plot_sd: number;
        };
        TrialPlot: {
            plot: number;
            block?: number;
            whole_plot?: number;
            strip?: number;
            treatment: string;
            second_treatment?: string;
            green?: string;
            half?: string;
            row?: number;
            column?: number;
            /** @description Place in the first walk. */
            walk?: number;
        };
        TrialErrorDf: {
            of: string;
            df: number;
        };
        TrialPower: {
            of: string;
            error_df: number;
            /** @description Found in 80 of 100 simulated trials. */
            detectable: number;
            curve: {
                difference: number;
                power: number;
                low: number;
                high: number;
            }[];
        };
        TrialDesign: {
            sentence: string;
            trial: string;
            layout: string;
            seed: number;
            control: string;
            plots: components["schemas"]["TrialPlot"][];
            error_df: components["schemas"]["TrialErrorDf"][];
            power: components["schemas"]["TrialPower"][];
            other_blocks: {
                blocks: number;
                detectable: number;
            }[];
            notes: string[];
            map_text: string;
            map_svg: string;
            /** @description The file trial.csv. */
            plan_csv: string;
            /** @description The file trial_records.csv with empty scores; empty without days. */
            sheet_csv: string;
            /** @description The sheet as an HTML page to print; empty without days. */
            sheet_page: string;
        };
        TrialInterval: {
            low: number;
            high: number;
        };
        TrialMean: {
            name: string;
            mean: number;
            plots: number;
            /** @description Means that share a letter cannot be told apart. */
            letters: string;
        };
        TrialPair: {
            first: string;
            second: string;
            difference: number;
            standard_error: number;
            df: number;
            alone: components["schemas"]["TrialInterval"];
            p_alone: number;
            among_all: components["schemas"]["TrialInterval"];
            p_among_all: number;
        };
        TrialAgainstControl: {
            name: string;
            difference: number;
            interval: components["schemas"]["TrialInterval"];
            p: number;
        };
        TrialComparison: {
            of: string;
            f: number;
            df: number;
            error_df: number;
            p: number;
            lsd: number;
            means: components["schemas"]["TrialMean"][];
            pairs: components["schemas"]["TrialPair"][];
            against_control: components["schemas"]["TrialAgainstControl"][];
        };
        TrialValues: {
            usable: boolean;
            message: string;
            mean?: number;
            /** @description Coefficient of variation, a fraction. */
            cv?: number;
            /** @description Plots without a value. */
            lost?: number;
            comparisons: components["schemas"]["TrialComparison"][];
        };
        TrialDay: {
            /** Format: date */
            day: string;
            analysis: components["schemas"]["TrialValues"];
        };
        TrialRepeated: {
            usable: boolean;
            message: string;
            epsilon?: number;
            lower_bound?: boolean;
            lost?: number;
            tests: {
                of: string;
                f: number;
                df: number;
                error_df: number;
                p: number;
                p_corrected: number;
            }[];
        };
        TrialBack: {
            usable: boolean;
            message: string;
            df?: number;
            blocks_differ?: boolean;
            plots: {
                plot: number;
                treatment: string;
                after_days: number;
                /** @description Absent where it was not back at the last visit. */
                by_days?: number;
                never_below: boolean;
            }[];
            treatments: {
                treatment: string;
                median_days: number;
                interval: components["schemas"]["TrialInterval"];
                plots: number;
                not_back: number;
            }[];
            differences: {
                first: string;
                second: string;
                days: number;
                interval: components["schemas"]["TrialInterval"];
                p: number;
            }[];
        };
        /** @description Scores as ranks: cumulative logit regression beside the means. */
        TrialOrdinal: {
            usable: boolean;
            message: string;
            /** @description With a score. */
            plots?: number;
            df?: number;
            pairs: {
                first: string;
                second: string;
                /** @description Of a score above any given one: first's times second's. */
                odds: number;
                interval: components["schemas"]["TrialInterval"];
                p: number;
            }[];
        };
        TrialChecks: {
            spread_p?: number;
            normality?: number;
            normal_enough: boolean;
            outlier?: number;
            outlier_p?: number;
        };
        TrialAnalysis: {
            sentence: string;
            /** @enum {string} */
            evidence: "randomised";
            trial: string;
            layout: string;
            control: string;
            quantity: string;
            plots: number;
            records: number;
            overall: components["schemas"]["TrialValues"];
            days: components["schemas"]["TrialDay"][];
            repeated: components["schemas"]["TrialRepeated"];
            back?: components["schemas"]["TrialBack"];
            ordinal: components["schemas"]["TrialOrdinal"];
            checks: components["schemas"]["TrialChecks"];
            notes: string[];
        };
        TrialProblems: {
            problems: components["schemas"]["Remark"][];
        };
        /** @description What a value may be. */
        ValueRule: {
            /** @enum {string} */
            type: "number" | "whole" | "word";
            /**
             * @description Empty: none.
             * @example mm
             */
            unit: string;
            /** @description Least value, in the unit; absent for words. */
            lowest?: number;
            /** @description Greatest value, in the unit; absent for words. */
            highest?: number;
            /** @description true: the lowest itself is refused; absent for words. */
            above_lowest?: boolean;
            /** @description The words it may be; empty for a word: any. */
            words: string[];
            /**
             * @description The same for people.
             * @example a number above 0 and up to 30 m
             */
            clause: string;
        };
        /** @description A named quantity of a kind of work. */
        ParameterKind: {
            /** @example tine_diameter */
            name: string;
            /** @example Tine diameter */
            title: string;
            rule: components["schemas"]["ValueRule"];
            /** @description The one that labels show: coring 13 mm. */
            leading: boolean;
            /** @description May be empty. */
            meaning: string;
        };
        WorkKind: {
            /** @example coring */
            name: string;
            /** @example Coring */
            title: string;
            work_class: components["schemas"]["WorkClass"];
            parameters: components["schemas"]["ParameterKind"][];
            meaning: string;
        };
        MeasuredField: {
            /**
             * @description reading_kind: what readings of that name hold.
             * @enum {string}
             */
            record: "roll" | "run" | "visit" | "reading" | "reading_kind";
            name: string;
            title: string;
            rule: components["schemas"]["ValueRule"];
            /** @description measured, counted, judged or stated */
            kind: string;
            /** @description What it is read from. */
            source: string;
            /** @description How far it can be trusted. */
            trust: string;
        };
        /** @description One line of the roll score's rule. Counts from and to, both inside, and what they suggest. */
        ScoreRule: {
            bobbles_from: number;
            /** @description Absent: any number above. */
            bobbles_to?: number;
            /** @description Chatters and snakes together. */
            others_from: number;
            /** @description Absent: any number above. */
            others_to?: number;
            /** @description Score offered, points. */
            offered: number;
            /** @description Lowest score of the band, points. */
            lowest: number;
            /** @description Highest score of the band, points. */
            highest: number;
        };
        Fields: {
            work_kinds: components["schemas"]["WorkKind"][];
            /** @description In the order that forms show. */
            measured_fields: components["schemas"]["MeasuredField"][];
            /** @description Every pair of counts is met by exactly one line. */
            score_rules: components["schemas"]["ScoreRule"][];
        };
        /** @enum {string} */
        Role: "reader" | "observer" | "agronomist" | "head_greenkeeper";
        /**
         * @description look: see everything of the club. enter: hand in what a phone wrote down, and compare trials. bring: bring in files. people: invite, change roles, cut off, make links.
         * @enum {string}
         */
        Right: "look" | "enter" | "bring" | "people";
        /** @description role is absent where nobody signs in. */
        OwnClub: {
            id: string;
            name: string;
            role?: components["schemas"]["Role"];
            may: components["schemas"]["Right"][];
        };
        Session: {
            /** @description The server asks people to sign in. */
            sign_in: boolean;
            /**
             * @description everyone: no sign-in here. nobody: not signed in. link: reading by a link.
             * @enum {string}
             */
            caller: "everyone" | "nobody" | "person" | "link";
            /** @description Of the person, or what the link is for. */
            name?: string;
            /** @description One's own clubs by identifier; empty for nobody. */
            clubs: components["schemas"]["OwnClub"][];
        };
        SignIn: {
            name?: string;
            password?: string;
            /** @description Token of a link for reading; then neither name nor password. */
            link?: string;
            /** @description What kind of device signs in, to tell one's sessions apart. */
            device: string;
        };
        InvitationToken: {
            token: string;
        };
        InvitationOffer: {
            club: string;
            club_name: string;
            role: components["schemas"]["Role"];
            /** @description Who invites. */
            by: string;
            /**
             * Format: date-time
             * @description Until when it can be accepted.
             */
            ends: string;
        };
        Acceptance: {
            token: string;
            /** @description Up to 60 characters. */
            name?: string;
            /** @description 10 characters or more, at most 200 bytes. */
            password?: string;
            /** @description What kind of device signs in, to tell one's sessions apart. */
            device: string;
        };
        SessionLine: {
            id: string;
            device: string;
            /**
             * Format: date-time
             * @description Signed in.
             */
            began: string;
            /**
             * Format: date-time
             * @description Last asked for something, to the hour.
             */
            seen: string;
            /**
             * Format: date-time
             * @description Ends by itself.
             */
            ends: string;
            /** @description The session that asks. */
            this: boolean;
        };
        Sessions: {
            sessions: components["schemas"]["SessionLine"][];
        };
        PersonLine: {
            id: string;
            name: string;
            role: components["schemas"]["Role"];
            /** @description The one who asks. */
            you: boolean;
            sessions: components["schemas"]["SessionLine"][];
        };
        InvitationLine: {
            id: string;
            role: components["schemas"]["Role"];
            by: string;
            /**
             * Format: date-time
             * @description Made.
             */
            made: string;
            /**
             * Format: date-time
             * @description Until when it can be accepted.
             */
            ends: string;
        };
        LinkLine: {
            id: string;
            /** @description Whom it is for. */
            label: string;
            by: string;
            /**
             * Format: date-time
             * @description Made.
             */
            made: string;
            /**
             * Format: date-time
             * @description Ends by itself.
             */
            ends: string;
            /** @description Sessions opened by it that still hold. */
            opened: number;
        };
        ClubPeople: {
            people: components["schemas"]["PersonLine"][];
            /** @description Not accepted yet and still good. */
            invitations: components["schemas"]["InvitationLine"][];
            links: components["schemas"]["LinkLine"][];
        };
        RoleChange: {
            role: components["schemas"]["Role"];
        };
        InvitationRequest: {
            role: components["schemas"]["Role"];
        };
        NewInvitation: {
            id: string;
            role: components["schemas"]["Role"];
            /**
             * Format: date-time
             * @description Until when it can be accepted.
             */
            ends: string;
            /** @description The link. */
            url: string;
            /** @description The link as a picture to scan, SVG (ISO/IEC 18004). */
            scan_code: string;
        };
        LinkRequest: {
            /** @description Whom it is for, up to 60 characters. */
            label: string;
            /** @description Days it is good for. */
            days: number;
        };
        NewLink: {
            id: string;
            label: string;
            /**
             * Format: date-time
             * @description Ends by itself.
             */
            ends: string;
            /** @description The link. */
            url: string;
        };
    };
    responses: {
        /** @description Nothing changed since the ETag in If-None-Match; no body. */
        Same: {
            headers: {
                [name: string]: unknown;
            };
            content?: never;
        };
        /** @description The request was refused; nothing was changed. */
        Refused: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                "application/json": components["schemas"]["Refusal"];
            };
        };
    };
    parameters: {
        /** @description Identifier of the club. */
        Club: string;
        /** @description Identifier of the visit, percent-encoded. */
        Visit: string;
        /** @description Identifier of the photo. */
        Photo: string;
        /** @description The last day that counts as known. The server's own date when absent. */
        Today: components["schemas"]["Day"];
    };
    requestBodies: never;
    headers: never;
    pathItems: never;
}
export type $defs = Record<string, never>;
export interface operations {
    healthz: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Both do. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Health"];
                };
            };
            503: components["responses"]["Refused"];
        };
    };
    fields: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The dictionary; it changes only with the program. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Fields"];
                };
            };
            304: components["responses"]["Same"];
        };
    };
    clubs: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Every club, by identifier; empty when nothing was brought in yet. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Clubs"];
                };
            };
            304: components["responses"]["Same"];
        };
    };
    greensReview: {
        parameters: {
            query?: {
                /** @description The last day that counts as known. The server's own date when absent. */
                today?: components["parameters"]["Today"];
            };
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description One card per green, in walking order. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["GreensReview"];
                };
            };
            304: components["responses"]["Same"];
            400: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
        };
    };
    seasonReview: {
        parameters: {
            query?: {
                /** @description The last day that counts as known. The server's own date when absent. */
                today?: components["parameters"]["Today"];
            };
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
                /** @description Identifier of the green. */
                green: string;
                /** @description Calendar year. */
                year: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The year, cut at today. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SeasonReview"];
                };
            };
            304: components["responses"]["Same"];
            400: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
        };
    };
    seasonModel: {
        parameters: {
            query?: {
                /** @description The last day that counts as known. The server's own date when absent. */
                today?: components["parameters"]["Today"];
            };
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
                /** @description Identifier of the green. */
                green: string;
                /** @description Calendar year. */
                year: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Estimates beside what was measured, each with its 95 % interval. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SeasonModel"];
                };
            };
            304: components["responses"]["Same"];
            400: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
        };
    };
    reportFile: {
        parameters: {
            query?: {
                /** @description The last day that counts as known. The server's own date when absent. */
                today?: components["parameters"]["Today"];
            };
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
                /** @description Calendar year. */
                year: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description To be saved, named by club and year. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/html": string;
                };
            };
            304: components["responses"]["Same"];
            400: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
        };
    };
    seasonChecks: {
        parameters: {
            query?: {
                /** @description The last day that counts as known. The server's own date when absent. */
                today?: components["parameters"]["Today"];
            };
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Each finding with its sentence. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SeasonChecks"];
                };
            };
            304: components["responses"]["Same"];
            400: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
            503: components["responses"]["Refused"];
        };
    };
    works: {
        parameters: {
            query?: {
                /** @description The last day that counts as known. The server's own date when absent. */
                today?: components["parameters"]["Today"];
            };
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description One line per work. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Works"];
                };
            };
            304: components["responses"]["Same"];
            400: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
        };
    };
    workReview: {
        parameters: {
            query?: {
                /** @description The last day that counts as known. The server's own date when absent. */
                today?: components["parameters"]["Today"];
            };
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
                /** @description Identifier of the work, percent-encoded. */
                work: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The work. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WorkReview"];
                };
            };
            304: components["responses"]["Same"];
            400: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
        };
    };
    methodsReview: {
        parameters: {
            query?: {
                /** @description Only works of this kind. */
                kind?: string;
                /** @description A parameter that parts the works of a kind. */
                by?: string;
                /** @description Where the bands of a number begin, rising, parted by commas; without it each value by itself. */
                cuts?: string;
                /** @description Kinds of work, parted by commas: works are parted by whether these were done with them. */
                alongside?: string;
                /** @description What back means; two_running where it is not said. */
                definition?: components["schemas"]["Definition"];
                /** @description The last day that counts as known. The server's own date when absent. */
                today?: components["parameters"]["Today"];
            };
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The comparison. Where nothing can be told yet its sentence says why. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MethodsReview"];
                };
            };
            304: components["responses"]["Same"];
            400: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
        };
    };
    observersReview: {
        parameters: {
            query?: {
                /** @description The last day that counts as known. The server's own date when absent. */
                today?: components["parameters"]["Today"];
            };
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The comparison. Without shared rolls its sentence says what to do. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ObserversReview"];
                };
            };
            304: components["responses"]["Same"];
            400: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
        };
    };
    consistencyReview: {
        parameters: {
            query?: {
                /** @description First day; with neither from nor to the last 365 days. */
                from?: string;
                /** @description Last day. */
                to?: string;
                /** @description The last day that counts as known. The server's own date when absent. */
                today?: components["parameters"]["Today"];
            };
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The comparison. With too little to compare its sentence says so. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ConsistencyReview"];
                };
            };
            304: components["responses"]["Same"];
            400: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
        };
    };
    visits: {
        parameters: {
            query?: {
                /** @description Only this green; all when absent. */
                green?: string;
                /** @description First day wanted. */
                from?: components["schemas"]["Day"];
                /** @description Last day wanted. */
                to?: components["schemas"]["Day"];
                /** @description Visits to pass over. */
                offset?: number;
                /** @description Visits on the page. */
                limit?: number;
            };
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["VisitPage"];
                };
            };
            304: components["responses"]["Same"];
            400: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
        };
    };
    visitDetail: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
                /** @description Identifier of the visit, percent-encoded. */
                visit: components["parameters"]["Visit"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The visit. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["VisitDetail"];
                };
            };
            304: components["responses"]["Same"];
            400: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
        };
    };
    visitHistory: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
                /** @description Identifier of the visit, percent-encoded. */
                visit: components["parameters"]["Visit"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description At least the first revision. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["History"];
                };
            };
            304: components["responses"]["Same"];
            400: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
        };
    };
    fieldKit: {
        parameters: {
            query?: {
                /** @description The last day that counts as known. The server's own date when absent. */
                today?: components["parameters"]["Today"];
            };
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Greens in walking order with what was last seen there, observers, standards, works of the day. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FieldKit"];
                };
            };
            304: components["responses"]["Same"];
            404: components["responses"]["Refused"];
        };
    };
    entriesSince: {
        parameters: {
            query?: {
                /** @description `next` of the answer before; 0: from the first. */
                since?: number;
                limit?: number;
            };
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Those that arrived after `since`; none where there are no more. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["EntriesPage"];
                };
            };
            304: components["responses"]["Same"];
            400: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
        };
    };
    handIn: {
        parameters: {
            query?: {
                /** @description The last day that counts as known. The server's own date when absent. */
                today?: components["parameters"]["Today"];
            };
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["EntriesFile"];
            };
        };
        responses: {
            /** @description What is on disk, what was refused, and what has become of each visit. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["HandInReceipt"];
                };
            };
            400: components["responses"]["Refused"];
            403: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
            413: components["responses"]["Refused"];
            415: components["responses"]["Refused"];
        };
    };
    conflicts: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Every version of each; an entry over all of them solves it. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Conflicts"];
                };
            };
            304: components["responses"]["Same"];
            404: components["responses"]["Refused"];
        };
    };
    photos: {
        parameters: {
            query?: {
                /** @description A visit or a work; absent: every photo of the club. */
                of?: string;
            };
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description None that was taken out, itself or with its visit or work. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Photos"];
                };
            };
            304: components["responses"]["Same"];
            404: components["responses"]["Refused"];
        };
    };
    picture: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
                /** @description Identifier of the photo. */
                photo: components["parameters"]["Photo"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description As its phone sent it. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "image/jpeg": string;
                };
            };
            404: components["responses"]["Refused"];
        };
    };
    keepPicture: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
                /** @description Identifier of the photo. */
                photo: components["parameters"]["Photo"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "image/jpeg": string;
            };
        };
        responses: {
            /** @description It is kept. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["KeptPicture"];
                };
            };
            400: components["responses"]["Refused"];
            403: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
            409: components["responses"]["Refused"];
            413: components["responses"]["Refused"];
            415: components["responses"]["Refused"];
        };
    };
    importFiles: {
        parameters: {
            query?: {
                /** @description true: read and check only. */
                dry_run?: boolean;
                /** @description The last day that counts as known. The server's own date when absent. */
                today?: components["parameters"]["Today"];
            };
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ImportRequest"];
            };
        };
        responses: {
            /** @description Read without a problem, and kept unless `dry_run`. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ImportAnswer"];
                };
            };
            400: components["responses"]["Refused"];
            403: components["responses"]["Refused"];
            413: components["responses"]["Refused"];
            415: components["responses"]["Refused"];
            /** @description Read with problems; nothing was kept. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ImportAnswer"];
                };
            };
        };
    };
    importWeather: {
        parameters: {
            query?: {
                /** @description true: read and check only. */
                dry_run?: boolean;
                /** @description Corrections to the mapping, one a line. */
                map?: string;
                /** @description The last day that counts as known. The server's own date when absent. */
                today?: components["parameters"]["Today"];
            };
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ImportRequest"];
            };
        };
        responses: {
            /** @description Read without a problem, and kept unless `dry_run`. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ImportWeatherAnswer"];
                };
            };
            400: components["responses"]["Refused"];
            403: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
            413: components["responses"]["Refused"];
            415: components["responses"]["Refused"];
            /** @description Read with problems; nothing was kept. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ImportWeatherAnswer"];
                };
            };
        };
    };
    importClub: {
        parameters: {
            query?: {
                /** @description true: read and check only. */
                dry_run?: boolean;
                /** @description The last day that counts as known. The server's own date when absent. */
                today?: components["parameters"]["Today"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ImportRequest"];
            };
        };
        responses: {
            /** @description Read without a problem, and kept unless `dry_run`. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ImportAnswer"];
                };
            };
            400: components["responses"]["Refused"];
            403: components["responses"]["Refused"];
            413: components["responses"]["Refused"];
            415: components["responses"]["Refused"];
            /** @description Read with problems; nothing was kept. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ImportAnswer"];
                };
            };
        };
    };
    designTrial: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["TrialRequest"];
            };
        };
        responses: {
            /** @description The plan, its map and sheets. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TrialDesign"];
                };
            };
            400: components["responses"]["Refused"];
            403: components["responses"]["Refused"];
            413: components["responses"]["Refused"];
            415: components["responses"]["Refused"];
        };
    };
    analyseTrial: {
        parameters: {
            query?: {
                /** @description Day of the treatment; without it nothing is said of days back. */
                treated?: string;
                /** @description A plot is back at this value or above it. */
                standard?: number;
                /** @description Of intervals and letters, above 0 and below 1. */
                confidence?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ImportRequest"];
            };
        };
        responses: {
            /** @description The comparison, or why the records cannot answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TrialAnalysis"];
                };
            };
            400: components["responses"]["Refused"];
            403: components["responses"]["Refused"];
            413: components["responses"]["Refused"];
            415: components["responses"]["Refused"];
            /** @description The files break rules. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TrialProblems"];
                };
            };
        };
    };
    analyseTrialRolls: {
        parameters: {
            query?: {
                /** @description Day of the treatment; absent: the last on which disruptive works differed between the plots. */
                treated?: string;
                /** @description Last day that counts; absent: the day before the next disruptive work on a plot, at most 90 days after. */
                until?: string;
                /** @description A plot is back at this value or above it. */
                standard?: number;
                /** @description Of intervals and letters, above 0 and below 1. */
                confidence?: number;
                /** @description The last day that counts as known. The server's own date when absent. */
                today?: components["parameters"]["Today"];
            };
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ImportRequest"];
            };
        };
        responses: {
            /** @description The comparison, or why the rolls cannot answer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TrialAnalysis"];
                };
            };
            400: components["responses"]["Refused"];
            403: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
            413: components["responses"]["Refused"];
            415: components["responses"]["Refused"];
            /** @description The plan breaks rules, or does not fit the club. */
            422: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TrialProblems"];
                };
            };
        };
    };
    session: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Also for who has not signed in. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Session"];
                };
            };
        };
    };
    signIn: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SignIn"];
            };
        };
        responses: {
            /** @description Signed in; the cookie of the session comes with it. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Session"];
                };
            };
            400: components["responses"]["Refused"];
            401: components["responses"]["Refused"];
            403: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
            413: components["responses"]["Refused"];
            415: components["responses"]["Refused"];
            429: components["responses"]["Refused"];
            503: components["responses"]["Refused"];
        };
    };
    signOut: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Nobody is signed in with this cookie any more. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Session"];
                };
            };
            403: components["responses"]["Refused"];
        };
    };
    ownSessions: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Last seen first. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Sessions"];
                };
            };
            401: components["responses"]["Refused"];
            403: components["responses"]["Refused"];
        };
    };
    endOwnSession: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Identifier of the session. */
                session: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Those that are left. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Sessions"];
                };
            };
            401: components["responses"]["Refused"];
            403: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
        };
    };
    lookAtInvitation: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["InvitationToken"];
            };
        };
        responses: {
            /** @description It holds still. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["InvitationOffer"];
                };
            };
            400: components["responses"]["Refused"];
            403: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
            413: components["responses"]["Refused"];
            415: components["responses"]["Refused"];
            429: components["responses"]["Refused"];
        };
    };
    acceptInvitation: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["Acceptance"];
            };
        };
        responses: {
            /** @description Signed in, with the role. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Session"];
                };
            };
            400: components["responses"]["Refused"];
            403: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
            409: components["responses"]["Refused"];
            413: components["responses"]["Refused"];
            415: components["responses"]["Refused"];
            429: components["responses"]["Refused"];
            503: components["responses"]["Refused"];
        };
    };
    peopleOfClub: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Nothing of other clubs. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClubPeople"];
                };
            };
            401: components["responses"]["Refused"];
            403: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
        };
    };
    setRole: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
                /** @description Identifier of the person. */
                person: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["RoleChange"];
            };
        };
        responses: {
            /** @description As it stands now. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClubPeople"];
                };
            };
            400: components["responses"]["Refused"];
            401: components["responses"]["Refused"];
            403: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
            409: components["responses"]["Refused"];
            413: components["responses"]["Refused"];
            415: components["responses"]["Refused"];
        };
    };
    takeRole: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
                /** @description Identifier of the person. */
                person: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description As it stands now. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClubPeople"];
                };
            };
            401: components["responses"]["Refused"];
            403: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
            409: components["responses"]["Refused"];
        };
    };
    cutOff: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
                /** @description Identifier of the person. */
                person: string;
                /** @description Identifier of the session. */
                session: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description As it stands now. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClubPeople"];
                };
            };
            401: components["responses"]["Refused"];
            403: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
        };
    };
    invite: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["InvitationRequest"];
            };
        };
        responses: {
            /** @description The link is told this once and never again. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["NewInvitation"];
                };
            };
            400: components["responses"]["Refused"];
            401: components["responses"]["Refused"];
            403: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
            409: components["responses"]["Refused"];
            413: components["responses"]["Refused"];
            415: components["responses"]["Refused"];
        };
    };
    endInvitation: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
                /** @description Identifier of the invitation. */
                invitation: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description As it stands now. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClubPeople"];
                };
            };
            401: components["responses"]["Refused"];
            403: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
        };
    };
    makeLink: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["LinkRequest"];
            };
        };
        responses: {
            /** @description The link is told this once and never again. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["NewLink"];
                };
            };
            400: components["responses"]["Refused"];
            401: components["responses"]["Refused"];
            403: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
            409: components["responses"]["Refused"];
            413: components["responses"]["Refused"];
            415: components["responses"]["Refused"];
        };
    };
    endLink: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                /** @description Identifier of the club. */
                club: components["parameters"]["Club"];
                /** @description Identifier of the link. */
                link: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description As it stands now. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClubPeople"];
                };
            };
            401: components["responses"]["Refused"];
            403: components["responses"]["Refused"];
            404: components["responses"]["Refused"];
        };
    };
}
