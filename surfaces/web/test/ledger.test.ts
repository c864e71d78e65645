import { describe, expect, it } from "vitest";
import type { Ledger, RecoveryInterval, WorkLine } from "../src/api/schemas";
import { elapsed, inGrowth, whyNone } from "../src/parts/interval";
import { ledgerByMonth, ledgerDays } from "../src/parts/ledger";
import { weatherByMonth } from "../src/parts/year_tables";
import { backText } from "../src/pages/works";
import { letter, standardOn } from "../src/state/year";
import { startSettings } from "../src/state/settings";
import { words } from "../src/words";

const ledger: Ledger = {
  period: { first: "2025-01-30", last: "2025-02-03" },
  days: ["measured_true", "between_true", "measured_true", "closed", "unmeasured"],
  measured_true: 2, measured_not: 0, between_true: 1, unmeasured: 1, closed: 1,
  open: 4, fewest_true: 2, most_true: 4,
};

describe("true days", () => {
  it("stand on their own day across months", () => {
    expect(ledgerDays(ledger).map((day) => day.iso)).toEqual([
      "2025-01-30", "2025-01-31", "2025-02-01", "2025-02-02", "2025-02-03",
    ]);
    expect(ledgerByMonth(ledger).map((row) => [row.month, row.counts.measured_true, row.counts.closed])).toEqual([
      [1, 1, 0], [2, 1, 1],
    ]);
  });
  it("are told with both extremes", () => {
    expect(words.year.ledgerSentence(ledger)).toBe(
      "Of 4 open days, 2 were measured true and 0 measured not true; 2 were not measured.",
    );
    expect(words.year.extremes(ledger)).toContain("there were 2 true days; if every one was, 4.");
  });
  it("use the singular for one", () => {
    const one = { ...ledger, open: 1, measured_true: 1, between_true: 0, unmeasured: 0, fewest_true: 1 };
    expect(words.year.ledgerSentence(one)).toContain("Of 1 open day, 1 was measured true");
  });
});

const interval = (change: Partial<RecoveryInterval>): RecoveryInterval => ({
  definition: "lasting", censoring: "none", last_below: "2025-03-27", after_days: 9, by_days: 14, visits: [], ...change,
});

describe("recovery", () => {
  it("is an interval of elapsed days, with both ends", () => {
    expect(elapsed(interval({}))).toBe("after 9, by 14 days");
    expect(elapsed(interval({ after_days: 0, by_days: 1 }))).toBe("after 0, by 1 day");
  });
  it("has no end where none is known", () => {
    expect(elapsed(interval({ censoring: "record_ends", by_days: undefined }))).toBe("not by 9 days");
    expect(elapsed(interval({ definition: "own_level", censoring: "not_asked" }))).toBe(
      "there is no score before the work",
    );
  });
  it("gives growth-days only where every temperature is known", () => {
    expect(inGrowth(interval({ after_growth_days: 2.44, by_growth_days: 6.1 }), startSettings)).toBe("after 2.4, by 6.1");
    expect(inGrowth(interval({ after_growth_days: 2.44 }), startSettings)).toBeUndefined();
  });
  it("says why there is no figure, never zero", () => {
    expect(whyNone({ visits_after: 3 })).toBe("no score before");
    expect(whyNone({ before: 8.4, visits_after: 0 })).toBe("no visit after");
  });
  it("of a work names the greens that have no known end", () => {
    const line = { censored: 2, back_after_days: 5 } as WorkLine;
    expect(backText(line)).toBe("2 greens without a known end");
    expect(backText({ ...line, censored: 0, back_by_days: 30 })).toBe("after 5, by 30 days");
  });
});

describe("a year", () => {
  it("letters its works A to Z, then AA", () => {
    expect([0, 25, 26, 51, 52].map(letter)).toEqual(["A", "Z", "AA", "AZ", "BA"]);
  });
  it("takes the standard of the day", () => {
    const standards = [{ from: "2025-01-01", score: 7.5 }, { from: "2025-03-01", score: 8 }];
    expect(standardOn(standards, "2025-02-28")).toBe(7.5);
    expect(standardOn(standards, "2025-03-01")).toBe(8);
  });
  it("sums the weather it has and leaves the rest absent", () => {
    const rows = weatherByMonth([
      { day: "2025-01-01", growth: 0.25, rain_mm: 3 }, { day: "2025-01-02", growth: 0.5 }, { day: "2025-02-01" },
    ]);
    expect(rows).toEqual([
      { month: 1, growth: 0.75, rain: 3, known: 2 }, { month: 2, growth: 0, rain: undefined, known: 0 },
    ]);
  });
});
