import { describe, expect, it } from "vitest";
import { addDays, length, longDay, number, signed, smallLength } from "../src/state/format";
import { readSettings, startSettings, type Settings } from "../src/state/settings";

const settings = (unit: Settings["unit"], decimal: Settings["decimal"] = "."): Settings => ({ unit, decimal });
const feet = settings("ft_in");

// 1 ft = 0.3048 m and 1 in = 0.0254 m exactly (international yard and pound agreement, 1959).
describe("lengths", () => {
  it("shows feet and inches to the nearest inch", () => {
    expect(length(3.048, feet)).toBe(`10'0"`);
    expect(length(3.048 + 2 * 0.0254, feet)).toBe(`10'2"`);
    expect(length(2.4384, feet)).toBe(`8'0"`);
  });
  it("carries twelve inches into a foot", () => {
    expect(length(3.048 - 0.4 * 0.0254, feet)).toBe(`10'0"`);
    expect(length(3.048 - 0.6 * 0.0254, feet)).toBe(`9'11"`);
  });
  it("shows metres to a centimetre and centimetres whole", () => {
    expect(length(3.1099, settings("m"))).toBe("3.11\u00a0m");
    expect(length(3.1099, settings("m", ","))).toBe("3,11\u00a0m");
    expect(length(3.1099, settings("cm"))).toBe("311\u00a0cm");
  });
  it("shows small lengths as inches beside feet", () => {
    expect(smallLength(0.0508, feet)).toBe(`2"`);
    expect(smallLength(0.0508, settings("cm"))).toBe("5\u00a0cm");
  });
  it("keeps the sign of a difference, but not of a zero", () => {
    expect(length(-0.3048, feet)).toBe(`\u22121'0"`);
    expect(length(-0.001, feet)).toBe(`0'0"`);
  });
});

describe("numbers", () => {
  it("rounds halves away from zero, also where binary fractions fall short", () => {
    expect(number(1.005, 2, feet)).toBe("1.01");
    expect(number(-2.5, 0, feet)).toBe("\u22123");
    expect(number(8.25, 1, feet)).toBe("8.3");
  });
  it("keeps trailing zeros and takes the decimal comma", () => {
    expect(number(8, 1, settings("m", ","))).toBe("8,0");
  });
  it("writes no minus before a zero", () => {
    expect(number(-0.04, 1, feet)).toBe("0.0");
    expect(signed(0.04, feet)).toBe("0.0");
    expect(signed(0.4, settings("m", ","))).toBe("+0,4");
  });
});

describe("days", () => {
  it("are the calendar's own, whatever the reader's time zone", () => {
    expect(longDay("2025-03-17")).toBe("17 March 2025");
    expect(addDays("2024-02-28", 1)).toBe("2024-02-29");
    expect(addDays("2025-02-28", 1)).toBe("2025-03-01");
    expect(addDays("2025-12-31", 1)).toBe("2026-01-01");
  });
});

describe("settings", () => {
  it("fall back where what was kept cannot be read", () => {
    expect(readSettings(null)).toEqual(startSettings);
    expect(readSettings("{")).toEqual(startSettings);
    expect(readSettings("null")).toEqual(startSettings);
    expect(readSettings('{"unit":"mile","decimal":","}')).toEqual({ unit: "ft_in", decimal: "," });
    expect(readSettings('{"unit":"cm"}')).toEqual({ unit: "cm", decimal: "." });
  });
});
