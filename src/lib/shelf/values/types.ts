/** What a cell was read as. `note`: how it was taken, where that is not plain; `about` names the kind of note. */
export type ReadValue<T> = { ok: true; value: T; note: Note | null } | { ok: false; why: string };
export interface Note {
	about: 'unit' | 'decimals' | 'rounded' | 'negative' | 'more' | 'meaning' | 'none-told';
	words: string;
}
export const taken = <T>(value: T, note: Note | null = null): ReadValue<T> => ({ ok: true, value, note });
export const refused = (why: string): { ok: false; why: string } => ({ ok: false, why });
/** A text as it is quoted in a message: short. */
export const quoted = (text: string): string => `“${text.length > 40 ? `${text.slice(0, 39)}…` : text}”`;
