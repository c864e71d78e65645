import { describe, expect, it } from "vitest";
import type { GreenCard, Run, SpotSpeed, WorkAtGreen } from "../src/api/schemas";
import { ordered } from "../src/pages/greens";
import { markWords, rollRows } from "../src/pages/visit";
import { steps } from "../src/parts/speed_steps";
import { startSettings } from "../src/state/settings";
import { parameterText } from "../src/pages/work";
import { embedded } from "../src/api/report";
import { returnRows } from "../src/plots/return_rows";

const run: Run = {
  spot: "a", direction: "out",
  rolls: [{ order: 1, distance_m: 3.048, marks: [], score: 9 }, { order: 2, marks: [{ kind: "bobble", seconds: 0.9 }] }],
};

describe("rolls", () => {
  it("tell what was not measured from what was nothing", () => {
    expect(rollRows([run], startSettings)).toEqual([
      { direction: "out", roll: "1", distance: `10'0"`, marks: "nothing seen", score: "9" },
      { direction: "out", roll: "2", distance: "not measured", marks: "bobble at\u00a00.9\u00a0s", score: "not scored" },
    ]);
    expect(markWords(undefined, startSettings)).toBe("not noted");
  });
  it("of a run known by its total say so once", () => {
    const rows = rollRows([{ ...run, rolls: [], total: 25, total_of: 3 }], startSettings);
    expect(rows).toHaveLength(1);
    expect(rows[0]?.score).toBe("only the total was written down: 25 for 3 balls");
  });
});

// Slope formula 2UD/(U+D): Brede (1990), Green Section Record 28(6):10-12. Out 12 ft and
// back 8 ft: 2 x 12 x 8 / 20 = 9.6 ft, where the plain mean is 10 ft.
const sloped: SpotSpeed = {
  out: { mean_m: 3.6576, spread_m: 0.1, rolls: 3, within_tolerance: true },
  back: { mean_m: 2.4384, spread_m: 0.3, rolls: 3, within_tolerance: false },
  plain_mean_m: 3.048, slope_corrected_m: 2.92608, speed_m: 2.92608, standard_error_m: 0.05,
  ratio: 1.5, slope_class: "gentle", one_direction_only: false, directions_apart: true, warnings: [],
};

describe("how the speed came about", () => {
  it("is told step by step, both directions kept", () => {
    expect(steps(sloped, { unit: "m", decimal: "." })).toEqual([
      "out: mean of 3 rolls 3.66\u00a0m, spread 0.10\u00a0m",
      "back: mean of 3 rolls 2.44\u00a0m, spread 0.30\u00a0m (wider than the protocol allows)",
      "Plain mean of the two directions: 3.05\u00a0m",
      "By the slope formula 2UD/(U+D): 2.93\u00a0m",
      "Downhill over uphill: 1.50, gentle",
      "Speed used: 2.93\u00a0m, standard error 0.05\u00a0m",
    ]);
  });
});

describe("greens", () => {
  const card = (green: string, score?: number, days_since_visit?: number) =>
    ({ green, score, days_since_visit }) as GreenCard;
  const greens = [card("1", 8, 3), card("2"), card("3", 6, 9)];
  it("of which nothing is known come first when looking for trouble", () => {
    expect(ordered(greens, "walk").map((one) => one.green)).toEqual(["1", "2", "3"]);
    expect(ordered(greens, "lowest").map((one) => one.green)).toEqual(["2", "3", "1"]);
    expect(ordered(greens, "waiting").map((one) => one.green)).toEqual(["2", "3", "1"]);
  });
});

describe("a work", () => {
  it("tells its parameters with the reader's decimal mark", () => {
    expect(parameterText({ name: "tine_diameter", title: "Tine diameter", unit: "mm", number: 12.7, word: "" }, { unit: "m", decimal: "," })).toBe("Tine diameter: 12,7\u00a0mm");
    expect(parameterText({ name: "cores", title: "Cores", unit: "", word: "worked_in" }, startSettings)).toBe("Cores: worked in");
  });
  it("draws no return for a green nobody visited after it", () => {
    const green = (visits_after: number, by_days?: number) =>
      ({ green_name: "7th", loss: { half: "", visits_after, recovery: [{ definition: "lasting", censoring: by_days ? "none" : "record_ends", after_days: 4, by_days }] } }) as unknown as WorkAtGreen;
    expect(returnRows([green(0, 9), green(2, 9), green(2)], "lasting")).toEqual([
      { green: "7th", after: 4, by: 9, open: false }, { green: "7th", after: 4, by: 4, open: true },
    ]);
  });
});

describe("a report", () => {
  it("is refused when its data is no report", () => {
    for (const text of ["", "BAIZE_REPORT_DATA", "null", "{}", '{"greens":{}}']) expect(embedded(text)).toBeUndefined();
    expect(embedded('{"greens":{},"seasons":[],"works":[],"sentences":[]}')).toBeDefined();
  });
});
