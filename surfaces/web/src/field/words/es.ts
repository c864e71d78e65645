import { en, type Words } from "./en"; export const es: Words = en;
