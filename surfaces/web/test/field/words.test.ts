import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { readPrefs } from "../../src/field/prefs";
import { likelyLanguage, wordsOf } from "../../src/field/words";
import { en } from "../../src/field/words/en";

const table = (name: string) =>
  readFileSync(new URL(`../../../../data/${name}`, import.meta.url), "utf8")
    .split("\n").filter((line) => line && !line.startsWith("#")).slice(1).map((line) => line.split("\t"));

/** Every text of a language, functions called with something plain. */
function texts(words: object, path = ""): [string, string][] {
  return Object.entries(words).flatMap(([key, value]): [string, string][] => {
    if (key === "terms") return [];
    if (typeof value === "function") return [[`${path}${key}`, String((value as (...all: unknown[]) => unknown)(3, 5, "x"))]];
    return typeof value === "string" ? [[`${path}${key}`, value]] : texts(value as object, `${path}${key}.`);
  });
}

/** Loans that the trade uses in Spanish too. */
const loans = ["work.greens", "settings.club"];

describe("every language", () => {
  it.each(["es", "ja", "th"] as const)("%s says all that English says, and in its own words", async (language) => {
    const words = await wordsOf(language);
    const own = new Map(texts(words));
    const english = texts(en);
    expect([...own.keys()].sort()).toEqual(english.map(([key]) => key).sort());
    for (const [key, text] of own) expect(text, key).not.toMatch(/undefined|NaN|^$/);
    const alike = english.filter(([key, text]) => own.get(key) === text && /[a-z]{4}/i.test(text)).map(([key]) => key);
    expect(alike.filter((key) => !loans.includes(key))).toEqual([]);
  });
  it.each(["es", "ja", "th"] as const)("%s names every reading, work, parameter and word of the tables", async (language) => {
    const { terms } = await wordsOf(language);
    const kinds = table("measured_fields.tsv").filter((row) => row[0] === "reading_kind").map((row) => row[1] as string);
    const works = table("work_kinds.tsv");
    const said = works.flatMap((row) => (row[8] && row[8] !== "-" ? row[8].split("|") : []));
    const missing = [...kinds, ...works.map((row) => row[1] as string), ...said].filter((name) => !(name in terms));
    expect([...new Set(missing)]).toEqual([]);
  });
  it("words the conditions of the table", async () => {
    const wanted = table("measured_fields.tsv").filter((row) => row[0] === "visit" && row[3] === "word").flatMap((row) => (row[7] as string).split("|"));
    for (const language of ["en", "es", "ja", "th"] as const) {
      const { conditions } = await wordsOf(language);
      expect(wanted.filter((word) => !(word in conditions.words))).toEqual([]);
    }
  });
});

describe("what a person prefers", () => {
  it("starts from the phone's language and the desk's unit", () => {
    expect(likelyLanguage(["fr-FR", "th-TH", "en"])).toBe("th");
    const prefs = readPrefs(null, '{"unit":"cm"}', ["es-MX"]);
    expect([prefs.language, prefs.unit, prefs.decimal, prefs.theme, prefs.hand]).toEqual(["es", "cm", ",", "sun", "right"]);
  });
  it("survives anything that may stand in the storage", () => {
    for (const text of ["", "[]", "null", "{", '{"mode":"x","unit":7,"language":"xx","spots":null}']) {
      const prefs = readPrefs(text, text, []);
      expect([prefs.language, prefs.unit, prefs.mode, prefs.decimal]).toEqual(["en", "ft_in", "full", "."]);
    }
  });
});
