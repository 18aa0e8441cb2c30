import { expect, test } from 'vitest';
import { usual } from './settings';
import { printWords } from './words';

test('says what will be printed', () => {
	expect(printWords(usual)).toBe('Prints 2 sheets, variants A, B in turn, then 2 keys on pages of their own.');
	expect(printWords({ ...usual, sheets: 1 })).toBe('Prints one sheet, variant A, then one key on pages of its own.');
	expect(printWords({ ...usual, printed: 'sheets', sheets: 30 })).toBe('Prints 30 sheets, variants A, B in turn.');
	expect(printWords({ ...usual, printed: 'keys', sheets: 30 })).toBe('Prints 2 keys, variants A, B.');
});
