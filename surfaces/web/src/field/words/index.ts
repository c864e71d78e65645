import { en, type Words } from "./en";

export type Language = "en" | "es" | "ja" | "th";
export const languages: Record<Language, string> = { en: "English", es: "Español", ja: "日本語", th: "ไทย" };
export type { Words };

const others: Record<Exclude<Language, "en">, () => Promise<Words>> = {
  es: async () => (await import("./es")).es,
  ja: async () => (await import("./ja")).ja,
  th: async () => (await import("./th")).th,
};

/** English where the language's file cannot be had. */
export const wordsOf = (language: Language): Promise<Words> =>
  language === "en" ? Promise.resolve(en) : others[language]().catch(() => en);

export function likelyLanguage(wanted: readonly string[]): Language {
  for (const tag of wanted) {
    const short = tag.slice(0, 2).toLowerCase();
    if (short in languages) return short as Language;
  }
  return "en";
}
/** The decimal mark that people who write the language mostly use. */
export const usualDecimal = (language: Language): "." | "," => (language === "es" ? "," : ".");
