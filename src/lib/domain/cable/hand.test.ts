import { describe, expect, it } from 'vitest';
import { placeFixtures, type Fixture } from '../placement';
import { makeSite } from '../site';
import { examples, type CircuitChoice, type RunChoice, type Yard } from '../yard';
import { randomYard } from '../yard/random.testing';
import { layCable } from '.';
import { inPlaces, sizesKnown } from './hand';
import { generator } from './random.testing';
import type { Cabling, Run } from './types';

const laid = (yard: Yard): { fixtures: Fixture[]; cabling: Cabling } => {
	const site = makeSite(yard);
	const { fixtures } = placeFixtures(site, yard);
	return { fixtures, cabling: layCable(site, fixtures, yard) };
};
const setBy = (yard: Yard, circuit: CircuitChoice): Yard => ({ ...yard, power: { ...yard.power, circuit } });
const lampsOf = (run: Run) => run.nodes.flatMap(({ fixture }) => fixture ?? []);
const suburban = examples.find(({ id }) => id === 'suburban')!.yard;

describe('a circuit set by hand', () => {
	const plain = laid(suburban);
	const ids = plain.fixtures.map(({ id }) => id);
	const [some, more] = [ids.slice(0, 5), ids.slice(3, 9)];

	it('keeps lamps, size, tap and feed, and says which of them were set', () => {
		const { cabling } = laid(setBy(suburban, { runs: [{ id: 'run-1', lamps: some, size: 10, tap: 13, feed: 'hub' }] }));
		const [first, ...others] = cabling.runs;
		expect(first).toMatchObject({
			id: 'run-1',
			name: 'run 1',
			tapVolts: 13,
			cable: { system: 'awg', size: 10 },
			feed: 'hub',
			byHand: ['lamps', 'cable', 'tap', 'feed']
		});
		expect(lampsOf(first!).toSorted()).toEqual(some.toSorted());
		expect(others.length).toBeGreaterThan(0);
		for (const run of others) expect(run.byHand).toEqual([]);
		expect(cabling.runs.flatMap(lampsOf).toSorted()).toEqual(ids.toSorted());
	});
	it('gives a lamp that two runs name to the first, and the rest to the run that names none', () => {
		const runs = [{ id: 'a', lamps: some }, { id: 'b', lamps: more }, { id: 'c' }];
		const [a, b, c] = laid(setBy(suburban, { runs })).cabling.runs;
		expect(lampsOf(a!).toSorted()).toEqual(some.toSorted());
		expect(lampsOf(b!).toSorted()).toEqual(more.filter((id) => !some.includes(id)).toSorted());
		expect(lampsOf(c!).toSorted()).toEqual(ids.filter((id) => ![...some, ...more].includes(id)).toSorted());
		expect([a!.id, b!.id, c!.id]).toEqual(['a', 'b', 'c']);
		expect(c!.byHand).toEqual([]);
	});
	it('takes the transformer asked for, before one that is owned, even where it is too small', () => {
		const small = setBy(suburban, { transformerVoltAmps: 60 });
		const { cabling } = laid({ ...small, power: { ...small.power, owned: { transformerVoltAmps: 900 } } });
		expect(cabling.supply!.ratedVoltAmps).toBe(60);
		expect(cabling.findings).toContainEqual(expect.objectContaining({ code: 'cable.transformer-load', rank: 'stop' }));
		const odd = laid(setBy(suburban, { transformerVoltAmps: 610 })).cabling;
		expect(odd.supply!.ratedVoltAmps).toBe(600);
		expect(odd.findings).toContainEqual(expect.objectContaining({ code: 'cable.hand-unmet' }));
	});
	it('allows LED and halogen lamps on one run, and says what comes of it', () => {
		const mixed = plain.fixtures.map((one, k) =>
			k % 2 ? one : { ...one, lamp: { ...one.lamp, minVolts: 10.8, maxVolts: 12 } }
		);
		const yard = setBy(suburban, { runs: [{ id: 'run-1', tap: 15, size: 8 }] });
		const cabling = layCable(makeSite(yard), mixed, yard);
		expect(cabling.runs).toHaveLength(1);
		expect(cabling.findings.map(({ code }) => code)).toContain('cable.lamp-high');
	});
	it('ignores lamps that are gone, keeps the choice and says so', () => {
		const runs = [
			{ id: 'run-1', lamps: ['gone/path-1', ...some] },
			{ id: 'run-2', lamps: ['gone/path-2'] }
		];
		const { cabling } = laid(setBy(suburban, { runs }));
		const said = cabling.assumptions.filter(({ path }) => path === 'power.circuit');
		expect(said.map(({ message }) => message)).toEqual([
			expect.stringContaining('Run 1 was set up with a light that is no longer there'),
			expect.stringContaining('run-2 has no light left')
		]);
		expect(cabling.runs.flatMap(lampsOf)).toHaveLength(ids.length);
	});
	it('says what cannot be had, and chooses it', () => {
		const runs: RunChoice[] = [{ id: 'run-1', lamps: some.slice(0, 2), size: 3.3, feed: 'middle' }];
		const { cabling } = laid(setBy(suburban, { runs }));
		const unmet = cabling.findings.filter(({ code }) => code === 'cable.hand-unmet');
		expect(unmet.map(({ message }) => message)).toEqual([
			expect.stringContaining('Run 1 cannot be of 3.3 AWG'),
			expect.stringContaining('Run 1 cannot be fed at its middle: it has too few lights')
		]);
		expect(cabling.runs[0]!.byHand).toEqual(['lamps']);
	});
	it('says that a transformer has no such tap, and works out what it would give', () => {
		const { cabling } = laid(setBy(suburban, { runs: [{ id: 'run-1', tap: 11 }] }));
		expect(cabling.runs[0]!.tapVolts).toBe(11);
		const finding = cabling.findings.find(({ code }) => code === 'cable.no-tap')!;
		expect(finding).toMatchObject({ rank: 'stop', about: { kind: 'run', id: 'run-1' } });
		expect(finding.message).toContain('12 V, 13 V, 14 V and 15 V');
	});
	it('keeps the place that a run has in its id', () => {
		const places = (ids: string[], own: number) =>
			inPlaces(
				ids.map((id) => ({ id })),
				own
			).map((run) => run?.id ?? null);
		expect(places(['run-2'], 2)).toEqual([null, 'run-2', null]);
		expect(places(['mine', 'other'], 1)).toEqual(['mine', 'other', null]);
		expect(places(['run-9', 'run-1'], 0)).toEqual(['run-1', 'run-9']);
		expect(places(['run-2', 'run-2'], 1)).toEqual(['run-2', 'run-2', null]);
	});
});

/** Runs over lamps that are there, each part set or not by chance. */
function circuitFor(yard: Yard, fixtures: readonly Fixture[], random: () => number): CircuitChoice {
	const system = yard.power.cable ?? (yard.place.units === 'metres' ? 'mm2' : 'awg');
	const sizes = sizesKnown(system).map(({ size }) => size);
	const of = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)]!;
	return {
		...(random() < 0.3 ? { transformerVoltAmps: of([150, 300, 600]) } : {}),
		runs: Array.from({ length: 1 + Math.floor(random() * 3) }, (_, k) => ({
			id: of([`run-${k + 1}`, `mine-${k + 1}`]),
			...(random() < 0.8 ? { lamps: fixtures.filter(() => random() < 0.4).map(({ id }) => id) } : {}),
			...(random() < 0.5 ? { size: of(sizes) } : {}),
			...(random() < 0.5 ? { tap: of([12, 13, 14, 15]) } : {}),
			...(random() < 0.5 ? { feed: of(['end', 'middle', 'hub'] as const) } : {})
		}))
	};
}

describe('on random yards', { timeout: 900_000 }, () => {
	const rounds = process.env.LONG ? 600 : 40;
	it(`every held value is kept or spoken of, and every lamp fed once, on ${rounds} of them`, () => {
		let seen = 0;
		for (let seed = 1; seed <= rounds; seed++) {
			const bare = randomYard(seed);
			const { fixtures } = laid(bare);
			if (fixtures.length === 0) continue;
			const yard = setBy(bare, circuitFor(bare, fixtures, generator(seed)));
			const { cabling } = laid(yard);
			if (!cabling.supply) continue;
			expect(JSON.stringify(cabling), `seed ${seed}`).not.toMatch(/NaN|undefined|Infinity/);
			expect(laid(yard).cabling).toEqual(cabling);

			const fed = cabling.runs.flatMap(lampsOf);
			expect(new Set(fed).size).toBe(fed.length);
			const unreached = cabling.findings
				.filter(({ code }) => code === 'cable.unreachable')
				.map(({ message }) => message);
			for (const { id, label } of fixtures)
				expect(fed.includes(id) || unreached.join().includes(label), `seed ${seed} ${id}`).toBe(true);
			expect(cabling.runs.map(({ name }) => name)).toEqual(cabling.runs.map((_, k) => `run ${k + 1}`));
			expect(new Set(cabling.runs.map(({ id }) => id)).size).toBe(cabling.runs.length);

			const named = new Set<string>();
			for (const choice of yard.power.circuit!.runs!) {
				const own = (choice.lamps ?? []).filter((id) => fed.includes(id) && !named.has(id));
				for (const id of own) named.add(id);
				const run = cabling.runs.find(({ id }) => id === choice.id);
				if (choice.lamps && own.length === 0) continue;
				if (!run || !choice.lamps) continue;
				seen++;
				expect(lampsOf(run).toSorted(), `seed ${seed}`).toEqual(own.toSorted());
			}
			for (const choice of yard.power.circuit!.runs!) {
				const run = cabling.runs.find(({ id }) => id === choice.id);
				if (!run) continue;
				if (choice.size !== undefined) expect(run.cable.size, `seed ${seed}`).toBe(choice.size);
				if (choice.tap !== undefined) expect(run.tapVolts, `seed ${seed}`).toBe(choice.tap);
				const isUnmet = cabling.findings.some(({ code, about }) => code === 'cable.hand-unmet' && about?.id === run.id);
				if (choice.feed !== undefined && !isUnmet) expect(run.feed, `seed ${seed}`).toBe(choice.feed);
				if (choice.feed === 'end') expect(isUnmet).toBe(false);
			}
		}
		expect(seen).toBeGreaterThan(rounds / 4);
	});
});
