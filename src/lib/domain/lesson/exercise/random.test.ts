/** Layouts by lot: never a throw, every word a figure, and the marks agree with the plan's own findings. */
import { describe, expect, test } from 'vitest';
import { showWorking } from '../../shared/show-working';
import { sources } from '../../shared/sources';
import { line, randomLayout, some, trade } from './exercise.testing';
import { markLayout } from './index';
import type { Exercise, Layout } from './types';

const long = Boolean(process.env['LONG']);
const known = new Set<string>(Object.values(sources).map(({ text }) => text));
/** Rules whose row says just what the plan's findings on lights set by hand say. */
const both = ['path.setback', 'path.spacing', 'drive.setback', 'wall.setback', 'water.clear'];
const runs = long ? 20_000 : 2_000;
const each = 100;
describe('random layouts', () => {
	test.each(Array.from({ length: runs / each }, (_, i) => i))('of %i hundred on', (hundred) => {
		for (let i = 0; i < each; i += 1) {
			const n = hundred * each + i;
			const exercise = some[n % some.length]!;
			const layout = Object.freeze(randomLayout(exercise, `layout ${n}`));
			const { plan, rows, labels, held, applies } = markLayout(exercise, layout);
			expect(labels).toHaveLength(layout.lights.length);
			expect(new Set(rows.map(({ rule }) => rule)).size).toBe(rows.length);
			expect(held).toBeLessThanOrEqual(applies);
			for (const row of rows) {
				const where = `${n} ${row.rule}`;
				expect(known.has(row.source), where).toBe(true);
				expect(JSON.stringify(row), where).not.toMatch(/NaN|undefined|Infinity|unknown/);
				if (row.working) expect(showWorking(row.working).holds, where).toBe(true);
				expect(row.hint !== '', where).toBe(row.state === 'not' || row.state === 'nearly');
			}
			// Where the plan has a finding of its own, the mark is that finding: both ways, but within a pencil's line.
			for (const rule of both) {
				const found = plan.findings.some(
					(one) => one.rule === rule && (one.code.startsWith('placement.hand-') || one.code === 'supply.water')
				);
				const row = rows.find((one) => one.rule === rule)!;
				const broken = row.state === 'not' || row.state === 'nearly';
				if (found !== broken && !(found && isWithinLine(exercise, layout, rule, row.working?.value)))
					expect.fail(`${n} ${rule}: ${row.facts.join(' ')} The plan: ${JSON.stringify(plan.findings)}`);
			}
			const volts = plan.findings.some(({ code }) => /^cable\.(lamp-(low|high)|uneven|no-solution)$/.test(code));
			const row = rows.find(({ rule }) => rule === 'cable.volts')!;
			expect(row.state === 'not' || row.state === 'nearly', `${n} volts`).toBe(volts);
		}
	});
	test('are marked the same again', () => {
		for (let n = 0; n < 12; n += 1) {
			const exercise = some[n % some.length]!;
			const layout = randomLayout(exercise, `again ${n}`);
			expect(markLayout(exercise, layout).rows).toEqual(markLayout(exercise, layout).rows);
		}
	});
});
/** The held measure closest to its limit lies so near beyond it that the plan calls it broken. */
function isWithinLine(exercise: Exercise, { lights }: Layout, rule: string, value: number | undefined): boolean {
	if (value === undefined) return false;
	const fronts = exercise.empty.site.walls.filter(({ front }) => front);
	const { height } = fronts[0]!;
	// A front runs along: of each part the nearest point lies straight in or is its corner.
	const offFront = (along: number, out: number): number[] =>
		fronts.map(({ from, to }) => {
			const past = Math.max(0, Math.min(from.x, to.x) - along, along - Math.max(from.x, to.x));
			return Math.hypot(past, out - from.y);
		});
	const limits: Record<string, number[]> = {
		'path.setback': [0.05, trade.path.low, trade.path.high],
		'path.spacing': [trade.path.apart],
		'drive.setback': [trade.drive.clear],
		'water.clear': [trade.water],
		'wall.setback': [height / 4, height / 3]
	};
	const values = rule === 'wall.setback' ? lights.flatMap(({ along, out }) => offFront(along, out)) : [value];
	return (limits[rule] ?? []).some((limit) => values.some((one) => Math.abs(one - limit) <= line + 1e-6));
}
