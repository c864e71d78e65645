import type { Zone } from "./capture/bands";
import type { Prefs } from "./prefs";

export type Feeling = Zone | "release" | "key" | "no";

// Told apart by the hand: one thud; a rattle; two long slides; one long end.
const buzzes: Record<Feeling, number[]> = {
  bobble: [110],
  chatter: [28, 32, 28, 32, 28, 32, 28],
  snake: [60, 50, 170],
  stop: [380],
  release: [45],
  key: [12],
  no: [20, 90, 20],
};
/** Frequencies in Hz, each for its share of the time. */
const sounds: Partial<Record<Feeling, number[]>> = {
  bobble: [190], chatter: [880, 660, 880, 660, 880], snake: [420, 520, 420, 330], stop: [260, 130], release: [520], no: [110],
};

let audio: AudioContext | undefined;

function play(tones: number[]): void {
  audio ??= new AudioContext();
  void audio.resume();
  const volume = audio.createGain();
  const voice = audio.createOscillator();
  const start = audio.currentTime;
  const each = 0.07;
  tones.forEach((tone, at) => voice.frequency.setValueAtTime(tone, start + at * each));
  const end = start + Math.max(0.14, tones.length * each);
  volume.gain.setValueAtTime(0.4, start);
  volume.gain.exponentialRampToValueAtTime(0.001, end);
  voice.connect(volume).connect(audio.destination);
  voice.start(start);
  voice.stop(end);
}

/** Never needed to know what happened: the screen says the same. */
export function feel(what: Feeling, prefs: Prefs): void {
  try {
    if (prefs.buzz) navigator.vibrate?.(buzzes[what]);
    const tones = sounds[what];
    if (prefs.sound && tones) play(tones);
  } catch {
    // A phone without either.
  }
}
