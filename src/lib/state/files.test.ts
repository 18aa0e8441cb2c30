import { describe, expect, it } from 'vitest';
import { blankYard, writeYard, type Yard } from '../domain/yard';
import { fileName, openFile } from './files';

const named = (name: string): Yard => ({ ...blankYard(), name });

describe('the name of a file', () => {
	it.each([
		['Alder Bend', 'alder-bend.duskwright.json'],
		['  Fernhollow, front yard! ', 'fernhollow-front-yard.duskwright.json'],
		['Gärten & Höfe', 'gärten-höfe.duskwright.json'],
		['../../etc/passwd', 'etc-passwd.duskwright.json'],
		['???', 'yard.duskwright.json'],
		['', 'yard.duskwright.json'],
		[`${'a'.repeat(39)} b`, `${'a'.repeat(39)}.duskwright.json`]
	])('of %s is %s', (name, file) => expect(fileName(named(name))).toBe(file));
	it('of a yard without a name', () => expect(fileName(blankYard())).toBe('yard.duskwright.json'));
});

describe('opening a file', () => {
	const file = (text: string, name = 'a.json') => new File([text], name);
	it('gives back the yard that was written', async () => {
		expect(await openFile(file(writeYard(named('Alder Bend'))))).toEqual({ ok: true, yard: named('Alder Bend') });
	});
	it.each([
		'',
		'hello',
		'{',
		'[]',
		'{"format":"duskwright/plan","version":1}',
		'{"format":"duskwright/yard","version":99}'
	])('says what is wrong with %j', async (text) => {
		const opened = await openFile(file(text));
		expect(opened.ok).toBe(false);
		expect(opened.ok ? [] : opened.problems).not.toEqual([]);
	});
	it('does not read a file that is far too large', async () => {
		const huge = { name: 'holiday.mov', size: 4e9, text: () => Promise.reject(new Error('must not be read')) };
		expect(await openFile(huge)).toMatchObject({
			ok: false,
			problems: [expect.stringContaining('holiday.mov is too large')]
		});
	});
	it('says so when the device does not hand it over', async () => {
		const gone = { name: 'a.json', size: 10, text: () => Promise.reject(new DOMException('gone', 'NotReadableError')) };
		expect(await openFile(gone)).toMatchObject({ ok: false, problems: [expect.stringContaining('could not be read')] });
	});
});
