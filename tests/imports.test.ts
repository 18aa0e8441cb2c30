import { readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { expect, test } from 'vitest';

// Who may import whom: left may import right, nothing else of ours. DEVELOPERS.md says why.
const stages = [
	'yard',
	'site',
	'photometry',
	'circuit',
	'placement',
	'cable',
	'light',
	'dusk',
	'shopping',
	'checklist'
];
/** Beside the pipeline: made from whole plans, so `plan.ts` itself may not import it. */
const beside = ['compare', 'kits', 'lesson', 'quick'];
const before = (stage: string) => stages.slice(0, stages.indexOf(stage)).map((name) => `domain/${name}`);
const allStages = [...stages.map((stage) => `domain/${stage}`), 'domain/shared'];
const allDomain = ['domain', ...allStages, ...beside.map((room) => `domain/${room}`)];
const may: Record<string, string[]> = {
	'domain/shared': [],
	'domain/yard': ['domain/shared'],
	'domain/site': ['domain/yard', 'domain/shared'],
	'domain/photometry': ['domain/shared'],
	'domain/circuit': ['domain/shared'],
	'domain/placement': ['domain/site', 'domain/photometry', 'domain/yard', 'domain/shared'],
	'domain/light': ['domain/cable', 'domain/placement', 'domain/photometry', 'domain/site', 'domain/shared'],
	'domain/cable': ['domain/placement', 'domain/site', 'domain/circuit', 'domain/yard', 'domain/shared'],
	'domain/dusk': [
		'domain/placement',
		'domain/light',
		'domain/photometry',
		'domain/site',
		'domain/yard',
		'domain/shared'
	],
	'domain/shopping': [...before('shopping'), 'domain/shared'],
	'domain/checklist': [...before('checklist'), 'domain/shared'],
	'domain/compare': ['domain', ...allStages],
	'domain/kits': ['domain', ...allStages],
	'domain/lesson': ['domain', ...allStages],
	'domain/quick': ['domain/yard', 'domain/shared'],
	domain: ['domain', ...allStages],
	flow: ['domain/yard', 'domain/shared'],
	drawing: [...allDomain, 'ui'],
	night: [...allDomain],
	working: [...allDomain, 'ui'],
	print: [...allDomain, 'ui', 'drawing', 'working'],
	ui: [],
	shelf: ['domain/kits', 'domain/yard', 'domain/shared', 'domain/circuit'],
	state: [...allDomain, 'flow', 'shelf']
};
/** Packages that one room alone may use. */
const onlyIn: Record<string, string> = { suncalc: 'domain/dusk', 'pure-rand': 'domain/lesson' };
/** What the pure rooms may not touch. */
const pure = ['domain', 'flow', 'night'];
const impure =
	/\b(Math\.random|Date\.now|new Date\(\)|document\.\w|window\.\w|localStorage|sessionStorage|indexedDB|fetch\()/;

const lib = resolve(import.meta.dirname, '../src/lib');
const filesUnder = (folder: string): string[] =>
	readdirSync(folder).flatMap((name) => {
		const path = join(folder, name);
		return statSync(path).isDirectory() ? filesUnder(path) : /\.(ts|svelte)$/.test(name) ? [path] : [];
	});
const roomOf = (path: string): string => {
	const parts = relative(lib, path).split(/[\\/]/);
	if (parts[0] !== 'domain') return parts[0] ?? '';
	// A file directly in domain/, such as plan.ts, belongs to no stage.
	const [, stage = ''] = parts;
	return stage === 'shared' || [...stages, ...beside].includes(stage) ? `domain/${stage}` : 'domain';
};
const isTest = (path: string) => /\.(test|testing)\.ts$/.test(path);
const importsOf = (path: string): string[] =>
	[...readFileSync(path, 'utf8').matchAll(/(?:\bfrom|\bimport)\s*\(?\s*['"]([^'"]+)['"]/g)].map(
		(match) => match[1] ?? ''
	);

const files = filesUnder(lib);

test('every folder imports only what the table allows', () => {
	const broken: string[] = [];
	for (const path of files) {
		const room = roomOf(path);
		const allowed = may[room];
		if (!allowed) {
			broken.push(`${relative(lib, path)}: the folder ${room} is not in the table`);
			continue;
		}
		for (const target of importsOf(path)) {
			const home = onlyIn[target] ?? onlyIn[target.split('/')[0]!];
			if (home && room !== home && !isTest(path))
				broken.push(`${relative(lib, path)} imports ${target}, which is ${home}'s`);
			const path2 = target.startsWith('.')
				? resolve(dirname(path), target)
				: target.startsWith('$lib/')
					? join(lib, target.slice(5))
					: null;
			if (!path2 || !path2.startsWith(lib)) continue;
			const other = roomOf(path2);
			// Tests may build their inputs with the stages before them.
			if (other !== room && !allowed.includes(other) && !isTest(path))
				broken.push(`${relative(lib, path)} imports ${other}`);
		}
	}
	expect(broken).toEqual([]);
	expect(files.length).toBeGreaterThan(50);
});

test('between stages only the public face is imported', () => {
	const broken: string[] = [];
	for (const path of files.filter((file) => !isTest(file)))
		for (const target of importsOf(path)) {
			const inner =
				/(?:\.\.\/|\$lib\/domain\/|domain\/)(yard|site|photometry|circuit|placement|light|cable|dusk|shopping|checklist|lesson|compare)\/(\w[\w./-]*)$/.exec(
					target
				);
			if (!inner || roomOf(path) === `domain/${inner[1]}`) continue;
			// The schema's types, the slow examples and single types files are public by intent.
			if (/^(index|types|schema|examples|outlines)/.test(inner[2] ?? '')) continue;
			broken.push(`${relative(lib, path)} reaches into ${inner[1]}/${inner[2]}`);
		}
	expect(broken).toEqual([]);
});

test('the pure rooms have no clock, no chance, no page and no storage', () => {
	const broken = files
		.filter((path) => pure.includes(roomOf(path).split('/')[0] ?? '') && !isTest(path))
		.filter((path) => impure.test(readFileSync(path, 'utf8')))
		.map((path) => relative(lib, path));
	expect(broken).toEqual([]);
});
