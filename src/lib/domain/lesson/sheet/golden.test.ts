/**
 * Sheets of three codes as they were once made: whoever holds one on paper gets its key. Where one of these must change, `generatorVersion` is raised with it.
 */
import { expect, test } from 'vitest';
import { makeSheet } from '../sheet';
import { generatorVersion } from '../random';
import { lessonIds } from '../types';
import { toFind, type Sheet, type SheetRequest } from './types';

const codes: readonly SheetRequest[] = [
	{ code: 'blue hour', variant: 'B', level: 'all', count: 11, units: 'metres', lessons: lessonIds },
	{ code: 'Straße 7b', variant: 'F', level: 'several', count: 12, units: 'feet', lessons: lessonIds },
	{ code: '👩‍🏫 elm', variant: 'A', level: 'one', count: 22, units: 'metres', lessons: lessonIds }
];
/** All that is printed, but for the pictures. */
const wordsOf = ({ mark, said, problems }: Sheet): string =>
	[
		mark,
		...said,
		...problems.flatMap(({ number, title, problem, lines, open }) => [
			'',
			`${number} ${title}`,
			problem.story,
			problem.ask,
			...(problem.answer.type === 'choice' ? problem.answer.choices.map((choice) => `[ ] ${choice}`) : []),
			...lines.map(({ label, symbol, line, text, unit }) =>
				`${label}: ${symbol} = ${line ?? toFind} = ${text ?? toFind} ${unit}`.trim()
			),
			...(open ? ['to find'] : []),
			...problem.steps.map(({ symbol, line, text, unit }) => `key: ${symbol} = ${line} = ${text} ${unit}`.trim()),
			problem.answer.type === 'choice'
				? `key: ${problem.answer.choices[problem.answer.right]}`
				: `key: ${problem.answer.text} ${problem.answer.unit}`.trim(),
			`key: ${problem.because}`
		]),
		''
	].join('\n');

test.each(codes)('the sheet of “$code” is what it was', async (request) => {
	const sheet = makeSheet(request);
	expect(sheet.version).toBe(generatorVersion);
	await expect(wordsOf(sheet)).toMatchFileSnapshot(`./golden/${codes.indexOf(request) + 1}.txt`);
});
