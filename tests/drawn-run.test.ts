/** Whole plans of yards whose runs were drawn by hand: by sense, and by chance that makes none. */
import { describe, expect, test } from 'vitest';
import { placeFixtures } from '../src/lib/domain/placement';
import { makePlan } from '../src/lib/domain/plan';
import { makeSite } from '../src/lib/domain/site';
import { readYard, writeYard, type RunChoice, type RunLink, type Yard } from '../src/lib/domain/yard';
import { randomYard } from '../src/lib/domain/yard/random.testing';

/** Park & Miller's minimal standard generator: 0 ≤ next < 1. */
function generator(seed: number): () => number {
	let state = (seed % 2147483646) + 1;
	return () => ((state = (state * 48271) % 2147483647) - 1) / 2147483646;
}

/** Cables between lights that are there, that are gone, the transformer and themselves, with bends anywhere a number may be. */
function anyRuns(ids: readonly string[], random: () => number): RunChoice[] {
	const of = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)]!;
	const light = () => (ids.length === 0 || random() < 0.1 ? `gone/path-${Math.floor(random() * 3)}` : of(ids));
	const far = () => of([0, 0.001, 3, 12, 500]) * (random() < 0.5 ? -1 : 1) * (random() < 0.5 ? random() : 1);
	const bend = () =>
		random() < 0.7 ? { along: 30 * random() - 8, out: 25 * random() - 5 } : { along: far(), out: far() };
	const link = (): RunLink => {
		const via = random() < 0.6 ? Array.from({ length: 1 + Math.floor(random() * random() * 20) }, bend) : null;
		if (via && random() < 0.2) via.push(via[0]!);
		return { from: random() < 0.2 ? 'supply' : light(), to: light(), ...(via && { via }) };
	};
	return Array.from({ length: 1 + Math.floor(random() * 4) }, (_, k): RunChoice => {
		const links = Array.from({ length: Math.floor(random() * (random() < 0.1 ? 80 : 12)) }, link);
		return {
			id: random() < 0.8 ? `run-${k + 1}` : 'run-1',
			...(random() < 0.6 ? { lamps: ids.filter(() => random() < 0.5) } : {}),
			...(random() < 0.3 ? { feed: of(['end', 'middle', 'hub'] as const) } : {}),
			...(random() < 0.3 ? { size: of([8, 12, 14, 2.5]), tap: of([12, 13, 15]) } : {}),
			...(links.length > 0 || random() < 0.5 ? { links } : {})
		};
	});
}
const withRuns = (yard: Yard, runs: RunChoice[]): Yard => ({ ...yard, power: { ...yard.power, circuit: { runs } } });

describe('runs drawn by chance', { timeout: 900_000 }, () => {
	const seeds = process.env.LONG ? 1000 : 100;
	test(`give a plan that feeds each light once or says why not, on ${seeds} yards`, () => {
		let drawn = 0;
		for (let seed = 1; seed <= seeds; seed++) {
			const random = generator(seed);
			const bare = randomYard(seed);
			const ids = placeFixtures(makeSite(bare), bare).fixtures.map(({ id }) => id);
			const yard = withRuns(bare, anyRuns(ids, random));
			const read = readYard(writeYard(yard));
			expect(read.ok, `seed ${seed}`).toBe(true);
			const plan = makePlan(yard);
			expect(JSON.stringify(plan.runs), `seed ${seed}`).not.toMatch(/NaN|undefined|Infinity/);
			for (const { message } of [...plan.findings, ...plan.assumptions])
				expect(message, `seed ${seed}`).not.toMatch(/\b(NaN|undefined|null|Infinity|\[object)\b/);
			const fed = plan.runs.flatMap(({ nodes }) => nodes.flatMap(({ fixture }) => fixture ?? []));
			expect(new Set(fed).size, `seed ${seed}`).toBe(fed.length);
			const unreached = plan.findings.flatMap(({ code, message }) => (code === 'cable.unreachable' ? [message] : []));
			if (plan.supply)
				for (const { id, label } of plan.fixtures)
					expect(fed.includes(id) || unreached.join().includes(label), `seed ${seed} ${id}`).toBe(true);
			for (const { segments, nodes } of plan.runs) {
				expect(segments.length, `seed ${seed}`).toBe(nodes.length - 1);
				drawn += segments.filter(({ byHand }) => byHand).length;
			}
			if (plan.supply?.route) expect(plan.supply.route.gap, `seed ${seed}`).toBeGreaterThanOrEqual(0);
		}
		expect(drawn).toBeGreaterThan(seeds);
	});
});
