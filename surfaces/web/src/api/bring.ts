import { sendFiles, type ChosenFile } from "./files";
import type { Imported, ImportedWeather } from "./schemas";

const dryRun = (keep: boolean) => (keep ? undefined : "true");

/** Looks through the files, or keeps them: all of them or, with one problem, none. */
export const bringIn = (files: ChosenFile[], keep: boolean) =>
  sendFiles<Imported>("import", { dry_run: dryRun(keep) }, files);

/** One daily weather file, by the mapping's lines; without lines they are guessed. */
export const bringWeather = (club: string, file: ChosenFile, map: string, keep: boolean) =>
  sendFiles<ImportedWeather>(
    `clubs/${encodeURIComponent(club)}/weather`, { dry_run: dryRun(keep), map: map || undefined }, [file],
  );
