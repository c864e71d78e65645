import { describe, expect, it } from "vitest";
import { linkTo, parseRoute, type Route } from "../src/state/route";

const there: [string, Route][] = [
  ["", { page: "greens" }],
  ["#/", { page: "greens" }],
  ["#/larkfield", { page: "greens", club: "larkfield" }],
  ["#/larkfield/greens", { page: "greens", club: "larkfield" }],
  ["#/larkfield/greens/7/2025", { page: "year", club: "larkfield", green: "7", year: 2025 }],
  ["#/larkfield/works", { page: "works", club: "larkfield" }],
  ["#/larkfield/works/2025%2F03%3Acoring", { page: "work", club: "larkfield", work: "2025/03:coring" }],
  ["#/larkfield/methods?kind=coring&by=tine_diameter&colour=red", { page: "methods", club: "larkfield", kind: "coring", by: "tine_diameter" }],
  ["#/larkfield/photos", { page: "photos", club: "larkfield" }],
  ["#/larkfield/observers", { page: "observers", club: "larkfield" }],
  ["#/larkfield/records?green=7&from=2025-03-01", { page: "records", club: "larkfield", green: "7", from: "2025-03-01" }],
  ["#/larkfield/records/v%20%231", { page: "visit", club: "larkfield", visit: "v #1" }],
];

describe("routes", () => {
  it.each(there)("reads %s", (hash, route) => expect(parseRoute(hash)).toEqual(route));

  it("reads back every address it makes, whatever the identifiers hold", () => {
    const odd = "a/b?c#d e%20é:&=";
    const routes: Route[] = [
      { page: "greens", club: odd },
      { page: "year", club: odd, green: odd, year: 2024 },
      { page: "works", club: odd },
      { page: "work", club: odd, work: odd },
      { page: "bring" },
      { page: "bring", club: odd },
      { page: "methods", club: odd, kind: odd, by: odd, definition: "lasting" },
      { page: "consistency", club: odd },
      { page: "photos", club: odd },
      { page: "observers", club: odd },
      { page: "records", club: odd, green: odd, from: "2024-01-01", to: "2024-12-31", offset: 50 },
      { page: "visit", club: odd, visit: odd },
      { page: "people", club: odd },
      { page: "people", club: "+join" },
      { page: "sessions" },
      { page: "sign-in" },
      { page: "sign-in", to: "field" },
      { page: "join", token: "aA0_-z" },
      { page: "link", token: odd },
    ];
    for (const route of routes) expect(parseRoute(linkTo(route))).toEqual(route);
  });

  it("leads after the sign-in to our own pages only", () => {
    for (const to of ["https://evil.example", "//evil.example", "/\\evil.example", "javascript:alert(1)", "field/../.."])
      expect(parseRoute(`#/+sign-in?to=${encodeURIComponent(to)}`)).toEqual({ page: "sign-in" });
    for (const lost of ["#/+", "#/+join", "#/+join/a/b", "#/+elsewhere"])
      expect(["lost", "bring"]).toContain(parseRoute(lost).page);
  });

  it("leaves out what is no day and no whole number", () => {
    expect(parseRoute("#/c/records?from=spring&to=2025-1-1&offset=-3")).toEqual({ page: "records", club: "c" });
  });

  it("knows when it is lost", () => {
    for (const hash of ["#/c/fields", "#/c/greens/7", "#/c/greens/7/25", "#/c/works/a/b", "#/c/greens/7/2025/more"])
      expect(parseRoute(hash).page).toBe("lost");
  });

  it("survives a broken escape", () => {
    expect(parseRoute("#/c/records/50%")).toEqual({ page: "visit", club: "c", visit: "50%" });
  });
});
