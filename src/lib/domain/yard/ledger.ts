import type { About, Assumption, Missing } from '../shared/findings';

/** What was taken for granted and what is still needed, gathered while a yard is resolved. */
export interface Ledger {
	assumptions: Assumption[];
	missing: Missing[];
}
export const emptyLedger = (): Ledger => ({ assumptions: [], missing: [] });

export interface Fallback<T> {
	/** Path of the answer: `trees.oak.spread`. */
	path: string;
	about: About | null;
	value: T;
	/** Whole sentence: what is taken. Null: taken without a word, because nothing hangs on it. */
	says: string | null;
	/** What is needed, when the plan cannot be dug from without it; null otherwise. */
	needed: string | null;
}
type Answered<G> = Exclude<G, 'unsure' | undefined>;
const isAnswer = <G>(given: G): given is Answered<G> => given !== undefined && given !== 'unsure';

/**
 * The answer itself, or the fallback. "Not sure" is an answer: it is listed as assumed, never as missing. An answer not
 * given yet is listed as both where it is needed.
 */
export function take<G>(ledger: Ledger, given: G, fallback: Fallback<NoInfer<Answered<G>>>): Answered<G> {
	if (isAnswer(given)) return given;
	const { path, about, says, needed, value } = fallback;
	if (says !== null) ledger.assumptions.push({ path, message: says, about });
	if (given === undefined && needed !== null) ledger.missing.push({ path, message: needed });
	return value;
}
