import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import Ajv from 'ajv';
import { describe, expect, test } from 'vitest';
import { makePlan } from '../src/lib/domain/plan';
import { blankYard, readYard, writeYard } from '../src/lib/domain/yard';
import { randomYard } from '../src/lib/domain/yard/random.testing';

const root = resolve(import.meta.dirname, '..');
const folderOf = (kind: 'examples' | 'faults') => join(root, 'src/lib/domain/yard', kind);
const schema = (name: string) =>
	new Ajv({ strict: false, allErrors: true }).compile(JSON.parse(readFileSync(join(root, 'static', name), 'utf8')));
const validPlan = schema('plan.schema.json');
const validYard = schema('yard.schema.json');
/** Demo yards ready to dig, and demo yards with a fault in their circuit. */
const demos = (['examples', 'faults'] as const).flatMap((kind) =>
	readdirSync(folderOf(kind))
		.filter((name) => name.endsWith('.json'))
		.map((name) => ({ name, file: join(folderOf(kind), name), isSound: kind === 'examples' }))
);
const opened = (text: string) => {
	const read = readYard(text);
	if (!read.ok) throw new Error(read.problems.join('; '));
	return read.yard;
};

/** Every number in a value, with its path: none may be NaN or infinite, which JSON would print as null. */
function* strangeNumbers(value: unknown, path = ''): Generator<string> {
	if (typeof value === 'number') {
		if (!Number.isFinite(value)) yield `${path}: ${value}`;
	} else if (Array.isArray(value))
		for (const [index, item] of value.entries()) yield* strangeNumbers(item, `${path}[${index}]`);
	else if (value && typeof value === 'object')
		for (const [key, item] of Object.entries(value)) yield* strangeNumbers(item, `${path}.${key}`);
}
const strangeWords = /\b(NaN|undefined|null|Infinity|\[object)\b/;

describe.each(demos)('demo yard $name', ({ file, isSound }) => {
	const text = readFileSync(file, 'utf8');
	const plan = makePlan(opened(text));

	test('is a valid yard by its published schema and comes back the same from a file', () => {
		expect(validYard(JSON.parse(text)), JSON.stringify(validYard.errors?.slice(0, 3))).toBe(true);
		expect(opened(writeYard(opened(text)))).toEqual(opened(text));
	});
	test('gives a plan that its published schema accepts, through the command', () => {
		const printed = execFileSync('npm', ['run', '--silent', 'plan', '--', file, '--json'], {
			cwd: root,
			encoding: 'utf8',
			maxBuffer: 2 ** 26
		});
		const read: unknown = JSON.parse(printed);
		expect(validPlan(read), JSON.stringify(validPlan.errors?.slice(0, 3))).toBe(true);
		expect(read).toEqual(JSON.parse(JSON.stringify(plan)));
	});
	test.runIf(isSound)('is ready to dig: nothing missing, no stop finding, every fixture fed', () => {
		expect(plan.missing).toEqual([]);
		expect(plan.findings.filter((finding) => finding.rank === 'stop')).toEqual([]);
		expect(plan.fixtures.length).toBeGreaterThan(3);
		const fed = plan.runs.flatMap((run) => run.nodes.flatMap((node) => node.fixture ?? []));
		expect([...fed].sort()).toEqual(plan.fixtures.map((fixture) => fixture.id).sort());
	});
	test.runIf(isSound)('keeps the limits of supply, secondary and window', () => {
		expect(plan.supply!.loadVoltAmps).toBeLessThanOrEqual(0.8 * plan.supply!.ratedVoltAmps);
		for (const run of plan.runs) {
			expect(run.amps!).toBeLessThanOrEqual(Math.min(25, run.ampsLimit));
			for (const node of run.nodes) {
				const lamp = plan.fixtures.find((fixture) => fixture.id === node.fixture)?.lamp;
				if (!lamp) continue;
				expect(node.volts!).toBeGreaterThanOrEqual(lamp.minVolts);
				expect(node.volts!).toBeLessThanOrEqual(lamp.maxVolts);
			}
		}
	});
	test('has no strange number or word in it', () => {
		expect([...strangeNumbers(plan)]).toEqual([]);
		const said = [...plan.findings, ...plan.assumptions, ...plan.missing].map((item) => item.message);
		expect(said.filter((sentence) => strangeWords.test(sentence))).toEqual([]);
	});
	test('is the same every time, and no hand has changed the yard', () => {
		const yard = opened(text);
		const frozen = JSON.stringify(yard);
		expect(JSON.stringify(makePlan(yard))).toBe(JSON.stringify(makePlan(yard)));
		expect(JSON.stringify(yard)).toBe(frozen);
	});
	test('metres and feet give the same plan', () => {
		const yard = opened(text);
		const other = makePlan({
			...yard,
			place: { ...yard.place, units: yard.place.units === 'feet' ? 'metres' : 'feet' }
		});
		expect(other.fixtures.map(({ id, at, lamp }) => ({ id, at, lamp }))).toEqual(
			plan.fixtures.map(({ id, at, lamp }) => ({ id, at, lamp }))
		);
		expect(other.runs.map((run) => run.nodes.map((node) => node.volts))).toEqual(
			plan.runs.map((run) => run.nodes.map((node) => node.volts))
		);
	});
	test('every answer taken away one at a time still gives a plan', () => {
		const yard: unknown = JSON.parse(text);
		const paths: string[][] = [];
		const collect = (value: unknown, path: string[]) => {
			if (!value || typeof value !== 'object') return;
			for (const [key, item] of Object.entries(value)) {
				paths.push([...path, key]);
				collect(item, [...path, key]);
			}
		};
		collect(yard, []);
		let planned = 0;
		for (const path of paths) {
			const copy = structuredClone(yard) as Record<string, never>;
			let parent: Record<string, never> = copy;
			for (const key of path.slice(0, -1)) parent = parent[key]!;
			if (Array.isArray(parent)) (parent as unknown[]).splice(Number(path.at(-1)), 1);
			else delete parent[path.at(-1)!];
			const read = readYard(JSON.stringify(copy));
			if (!read.ok) continue;
			planned += 1;
			const result = makePlan(read.yard);
			expect([...strangeNumbers(result)], path.join('.')).toEqual([]);
		}
		expect(planned).toBeGreaterThan(50);
	});
});

test('a blank yard gives a plan that says what is missing', () => {
	const plan = makePlan(blankYard());
	expect(plan.fixtures).toEqual([]);
	expect(plan.supply).toBe(null);
	expect(plan.missing.length).toBeGreaterThan(0);
	expect(validPlan(JSON.parse(JSON.stringify(plan))), JSON.stringify(validPlan.errors?.slice(0, 3))).toBe(true);
});

test('any yard gives a plan: random yards, awkward ones too', () => {
	const many = process.env.LONG ? 10_000 : 150;
	for (let seed = 1; seed <= many; seed += 1) {
		const plan = makePlan(randomYard(seed));
		expect([...strangeNumbers(plan)], `seed ${seed}`).toEqual([]);
		for (const finding of plan.findings) expect(finding.message, `seed ${seed}`).not.toMatch(strangeWords);
	}
}, 3_600_000);

describe('the command', () => {
	const plan = (...args: string[]) => {
		try {
			const out = execFileSync('npm', ['run', '--silent', 'plan', '--', ...args], {
				cwd: root,
				encoding: 'utf8',
				stdio: 'pipe'
			});
			return { code: 0, out, err: '' };
		} catch (error) {
			const failed = error as { status: number; stdout: string; stderr: string };
			return { code: failed.status, out: failed.stdout, err: failed.stderr };
		}
	};
	test('prints a readable report', () => {
		const { code, out } = plan(demos[0]!.file);
		expect(code).toBe(0);
		expect(out).toContain('Fixtures');
		expect(out).toContain('Shopping');
		expect(out).not.toMatch(/NaN|undefined/);
	});
	test('says what and where when a file is no yard, and prints nothing else', () => {
		const { code, out, err } = plan(join(root, 'package.json'));
		expect(code).toBe(1);
		expect(out).toBe('');
		expect(err).toContain('cannot be opened as a yard');
	});
	test('says so when there is no such file', () => {
		const { code, err } = plan('no-such-file.json');
		expect(code).toBe(1);
		expect(err).toContain('no-such-file.json');
	});
});
