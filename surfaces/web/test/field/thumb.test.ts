import { describe, expect, it } from "vitest";
import { meant, rollTime, zoneAt } from "../../src/field/capture/bands";
import { newCode, readCode, sharedId } from "../../src/field/capture/code";
import { nearest, shown, toMetres, toSteps } from "../../src/field/capture/lengths";

describe("last digits first", () => {
  it("takes the length nearest to the ball before", () => {
    const before = 10 * 12 + 2; // 10'2"
    expect(nearest(before, 11, "ft_in")).toBe(9 * 12 + 11);
    expect(nearest(before, 5, "ft_in")).toBe(10 * 12 + 5);
    expect(nearest(before, 2, "ft_in")).toBe(before);
    expect(nearest(before, 8, "ft_in")).toBe(10 * 12 + 8);
    expect(nearest(before, 9, "ft_in")).toBe(9 * 12 + 9);
    expect(nearest(3, 10, "ft_in")).toBe(10); // never a length below zero
    expect(nearest(312, 5, "cm")).toBe(305);
    expect(nearest(312, 98, "cm")).toBe(298);
  });
  it("every length within half a ring of the one before is one touch away", () => {
    for (let value = 117; value <= 127; value += 1) expect(nearest(122, value % 12, "ft_in")).toBe(value);
    for (let value = 263; value <= 361; value += 1) expect(nearest(312, value % 100, "cm")).toBe(value);
  });
  it("comes back from metres to the same inch or centimetre", () => {
    for (let steps = 1; steps <= 1000; steps += 1) {
      expect(toSteps(toMetres(steps, "ft_in"), "ft_in")).toBe(steps);
      expect(toSteps(toMetres(steps, "cm"), "cm")).toBe(steps);
    }
    expect(toMetres(122, "ft_in")).toBe(3.0988); // 0.3048 m a foot, 0.0254 m an inch
  });
  it("is shown in the chosen unit and decimal mark", () => {
    expect(shown(3.0988, "ft_in", ".")).toBe(`10'2"`);
    expect(shown(3.0988, "cm", ".")).toBe("310\u00a0cm");
    expect(shown(3.0988, "m", ",")).toBe("3,10\u00a0m");
  });
});

describe("the thumb while the ball rolls", () => {
  it("finds each zone by its height, on any screen", () => {
    for (const height of [600, 844, 1000]) {
      expect([0.1, 0.45, 0.7, 0.92].map((share) => zoneAt(share * height, height, 2, 3.4))).toEqual(["snake", "chatter", "bobble", "stop"]);
    }
  });
  it("means a mark early and a stop late on the line between them", () => {
    const line = 0.82 * 844;
    for (const off of [-27, 0, 27]) {
      expect(zoneAt(line + off, 844, 1, 3.4)).toBe("bobble");
      expect(zoneAt(line + off, 844, 3, 3.4)).toBe("stop");
    }
    expect(zoneAt(line - 40, 844, 3, 3.4)).toBe("bobble");
    expect(zoneAt(line + 40, 844, 1, 3.4)).toBe("stop");
  });
  it("cannot stop a ball that has only just left the ramp, nor mark twice in one bounce", () => {
    expect(meant("stop", 0.3, undefined)).toBe(false);
    expect(meant("stop", 2, undefined)).toBe(true);
    expect(meant("bobble", 0.1, undefined)).toBe(true);
    expect(meant("bobble", 1.05, { zone: "bobble", seconds: 1 })).toBe(false);
    expect(meant("snake", 1.05, { zone: "bobble", seconds: 1 })).toBe(true);
    expect(meant("bobble", 1.2, { zone: "bobble", seconds: 1 })).toBe(true);
  });
  // v0 = 1.8288 m/s slowing evenly over S: t = 2 S / v0; 3.048 m (10 ft) take 3.333 s.
  it("knows how long the ball will run", () => {
    expect(rollTime(3.048)).toBeCloseTo(3.3333, 4);
  });
});

describe("the word two phones share", () => {
  it("is read however it was typed, and gives both the same id", () => {
    const code = newCode();
    expect(code).toMatch(/^[A-Z]{4}$/);
    expect(readCode(` ${code.toLowerCase().slice(0, 2)}-${code.slice(2)} `)).toBe(code);
    expect(sharedId("2026-05-03", "7", readCode("kaht"))).toBe("2026-05-03-7-KAHT");
  });
});
