/** Words and readings that the walk and the sheet share. */
import type { MeasuredRow } from '$lib/domain/checklist';
import { readNumber } from '$lib/domain/shared/read-number';

export const readVolts = (text: string) => readNumber(text, { min: 0, max: 60 }, 'V');
export const volts = (value: number | null): string => (value === null ? '–' : value.toFixed(1));
/** Every run has terminals: theirs are told apart by its name. */
export const placeOf = ({ key, label }: MeasuredRow, run: string): string =>
	key.startsWith('terminals/') ? `the terminals of ${run}` : label;
export const offWords = { low: 'too low', high: 'too high', right: 'in its band' } as const;
