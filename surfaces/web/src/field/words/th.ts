import { en, type Words } from "./en"; export const th: Words = en;
