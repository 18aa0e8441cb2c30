import { clean, quoted, Refusal } from './reading';

export interface Head {
	/** 1986, 1991, 1995, 2002 or 2019. */
	edition: string;
	name: string;
	/** Text of a keyword, `[MORE]` lines joined; empty where there is none. */
	keyword: (name: string) => string;
	/** Index of the line after TILT. */
	next: number;
	notes: string[];
}

const versions: [RegExp, string][] = [
	[/^IESNA:?(?:LM-63-)?(?:19)?86$/i, '1986'],
	[/^IESNA:?(?:LM-63-)?(?:19)?91$/i, '1991'],
	[/^IESNA:?(?:LM-63-)?(?:19)?95$/i, '1995'],
	[/^(?:IES|IESNA):?LM-63-(?:20)?02$/i, '2002'],
	[/^(?:IES|IESNA):?LM-63-(?:20)?19$/i, '2019']
];

/** Version line, labels and keywords, and the TILT line, which has to be TILT=NONE. */
export function headOf(lines: readonly string[]): Head {
	const notes: string[] = [];
	const first = lines.findIndex((line) => line.trim() !== '');
	const edition = editionOf(lines[first]!, notes);
	const tilt = lines.findIndex((line) => /^\s*TILT\s*=/i.test(line));
	if (tilt < 0)
		throw new Refusal(lines.length, 'TILT', 'there is no line that begins with TILT=, so this is no LM-63 file.');
	const value = lines[tilt]!.slice(lines[tilt]!.indexOf('=') + 1).trim();
	if (value.toUpperCase() !== 'NONE')
		throw new Refusal(
			tilt + 1,
			'TILT',
			`${quoted(value)} makes the light depend on how the lamp is tilted; only TILT=NONE can be read. Ask the maker for such a file.`
		);
	const { keywords, labels } = wordsOf(lines.slice(edition === '' ? first : first + 1, tilt));
	const keyword = (name: string): string => clean(keywords.get(name) ?? '');
	const name = keyword('LUMINAIRE') || keyword('LUMCAT') || clean(labels[0] ?? '') || keyword('TEST');
	return { edition: edition || '1986', name, keyword, next: tilt + 1, notes };
}

/** Of the version line; empty where the first line is none, as in 1986. */
function editionOf(first: string, notes: string[]): string {
	const line = first.trim().replace(/\s+/g, '');
	const known = versions.find(([form]) => form.test(line));
	if (known) return known[1];
	if (!/^IES(?:NA)?[:\d]/i.test(line)) return '';
	notes.push(`Its version ${quoted(first)} is not known; it is read as the edition of 2019.`);
	return '2019';
}

function wordsOf(lines: readonly string[]): { keywords: Map<string, string>; labels: string[] } {
	const keywords = new Map<string, string>();
	const labels: string[] = [];
	let last = '';
	for (const line of lines) {
		const found = /^\s*\[([^\]]{1,40})\](.*)$/.exec(line);
		if (!found) {
			if (line.trim() !== '') labels.push(line);
			continue;
		}
		const key = found[1]!.trim().toUpperCase();
		const text = found[2]!.trim();
		if (key !== 'MORE') last = key;
		const before = keywords.get(last);
		// Of a keyword given twice the first stands; MORE goes on with the last one.
		// Names are cut anyway; a file may have a hundred thousand such lines.
		if (key === 'MORE' && before !== undefined) {
			if (before.length < 500) keywords.set(last, `${before} ${text}`.trim());
		} else if (before === undefined) keywords.set(last, text);
	}
	return { keywords, labels };
}
