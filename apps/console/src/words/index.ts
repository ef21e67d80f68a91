import { en } from './en.js';

/** All words on the screens. Another language is another file of the same shape, chosen here. */
export type Words = typeof en;
export const words: Words = en;
