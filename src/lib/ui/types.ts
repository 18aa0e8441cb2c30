/** What a typed field shows. The caller reads the text; the field knows nothing of what it means. */
export interface Typed {
	text: string;
	/** What was understood, shown beside the field. */
	readback: string | null;
	/** What is wrong and what would be accepted; shown under the field. */
	error: string | null;
	suggestions: Suggestion[];
}
export interface Suggestion {
	label: string;
	text: string;
}
export interface ChoiceOption {
	value: string;
	label: string;
	help?: string;
}
export interface Word {
	/** As it is written in the text. */
	word: string;
	/** One sentence. */
	meaning: string;
}
