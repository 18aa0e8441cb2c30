import { expect, test } from 'vitest';
import { costWords } from './advice';

test.each([
	[31.2, 'USD', 'about $31 more'],
	[-11.6, 'GBP', 'about £12 less'],
	[0.49, 'USD', 'no change in cost'],
	[-0.49, 'USD', 'no change in cost'],
	[0.5, '€', 'about €1 more'],
	[1234, 'EUR', 'about €1,234 more'],
	[20, 'Fr', 'about Fr 20 more']
])('%f %s', (difference, currency, words) => expect(costWords(difference, currency)).toBe(words));
