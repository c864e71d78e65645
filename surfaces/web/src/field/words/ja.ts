import { en, type Words } from "./en"; export const ja: Words = en;
