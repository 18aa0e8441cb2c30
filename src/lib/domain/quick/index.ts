/** The quick survey of the counter: what it offers, what it starts with, and the yard that is made of it. */
export type * from './types';
export { answersIn, picks, usualAnswers, type Offer, type Picks } from './picks';
export { quickYard } from './quick-yard';
