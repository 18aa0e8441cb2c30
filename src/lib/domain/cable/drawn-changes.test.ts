/** Drawing as answers: each change gives the whole new `power.circuit`, and the plan laid by it has what was asked. */
import { describe, expect, it } from 'vitest';
import type { Fixture } from '../placement';
import { circuitChoiceSchema, blankYard, type CircuitChoice, type RunLink, type Yard } from '../yard';
import { changedRun } from './changes';
import {
	bendLink,
	drawLink,
	eraseLink,
	lampsOfRun,
	linksOfRun,
	moveLamp,
	releaseRun,
	straighten
} from './drawn-changes';
import { layCable } from './lay';
import type { Layout } from './layout';
import { emptySite, fixtureOf, withHouse } from './random.testing';
import type { Cabling, Run } from './types';

const id = (k: number) => `row/p-${k}`;
const row: Fixture[] = [0, 1, 2, 3, 4, 5].map((k) => fixtureOf(id(k), `P${k + 1}`, { x: 3 * k - 2, y: 5 }));
const site = {
	...withHouse(emptySite(), 12, 8),
	receptacle: { at: { x: 2, y: 0 }, known: true, gfci: true, inUseCover: true }
};
/** A sheet of paper: the answers, and the plan that they give. */
class Sheet {
	constructor(readonly yard: Yard = blankYard()) {}
	get cabling(): Cabling {
		return layCable(site, row, this.yard);
	}
	get runs(): Run[] {
		return this.cabling.runs;
	}
	with(circuit: CircuitChoice | null): Sheet {
		const { circuit: _, ...power } = this.yard.power;
		if (circuit) expect(circuitChoiceSchema.parse(circuit)).toEqual(circuit);
		return new Sheet({ ...this.yard, power: circuit ? { ...power, circuit } : power });
	}
	draw(run: string, from: string, to: string): Sheet {
		return this.with(drawLink(this.yard, this.runs, run, { from, to }));
	}
	/** By light: where its cable comes from. */
	fed(): Record<string, string> {
		return Object.fromEntries(this.runs.flatMap(({ segments }) => segments.map(({ from, to }) => [to, from])));
	}
}
const twoRuns = new Sheet().with({
	transformerVoltAmps: 300,
	runs: [
		{ id: 'run-1', lamps: [id(0), id(1), id(2)], size: 12 },
		{ id: 'run-2', lamps: [id(3), id(4), id(5)], tap: 13 }
	]
});

describe('cable drawn', () => {
	it('feeds a light from another; the rest stays as it was laid', () => {
		const before = new Sheet();
		expect(before.runs).toHaveLength(1);
		const fed = before.fed();
		const after = before.draw('run-1', id(1), id(4));
		expect(after.fed()).toEqual({ ...fed, [id(4)]: id(1) });
		expect(after.yard.power.circuit!.runs).toHaveLength(1);
		expect(after.yard.power.circuit!.runs![0]!.lamps).toBeUndefined();
		expect(after.runs[0]!.byHand).toEqual(['route']);
	});
	it('makes a chain, link after link', () => {
		let sheet = new Sheet();
		const order = [3, 0, 5, 1, 4, 2].map(id);
		order.forEach((to, k) => (sheet = sheet.draw('run-1', order[k - 1] ?? 'supply', to)));
		expect(sheet.runs[0]!.segments.map(({ to }) => to)).toEqual(order);
	});
	it('to a light further up turns that part round: what is drawn holds, and no ring is made', () => {
		const chain = ['supply', id(0), id(1), id(2)];
		let sheet = new Sheet();
		for (let k = 1; k < chain.length; k++) sheet = sheet.draw('run-1', chain[k - 1]!, chain[k]!);
		sheet = sheet.draw('run-1', id(2), id(0));
		expect(sheet.fed()).toMatchObject({ [id(0)]: id(2), [id(1)]: id(0) });
		expect(sheet.cabling.findings.map(({ code }) => code)).not.toContain('cable.drawn-unused');
	});
	it('to a light of another run brings it over, and leaves size and tap alone', () => {
		const after = twoRuns.draw('run-1', id(2), id(4));
		expect(after.runs.map((run) => lampsOfRun(run).toSorted())).toEqual([[0, 1, 2, 4].map(id), [3, 5].map(id)]);
		expect(after.fed()[id(4)]).toBe(id(2));
		expect(after.yard.power.circuit).toMatchObject({
			transformerVoltAmps: 300,
			runs: [
				{ id: 'run-1', size: 12 },
				{ id: 'run-2', tap: 13 }
			]
		});
		expect(after.runs.map(({ cable, tapVolts }) => [cable.size, tapVolts])).toEqual([
			[12, expect.anything()],
			[expect.anything(), 13]
		]);
	});
	it('between lights of nowhere, or on a run of nowhere, changes nothing', () => {
		const { yard, runs } = twoRuns;
		expect(drawLink(yard, runs, 'run-9', { from: 'supply', to: id(0) })).toBe(yard.power.circuit);
		expect(drawLink(yard, runs, 'run-1', { from: 'supply', to: 'no/such' })).toBe(yard.power.circuit);
		expect(drawLink(yard, runs, 'run-1', { from: id(0), to: id(0) })).toBe(yard.power.circuit);
	});
	it('rubbed out is laid by the plan; with all of it gone the plan is as it was', () => {
		const { runs } = twoRuns;
		let sheet = twoRuns.draw('run-1', 'supply', id(2)).draw('run-1', id(2), id(0));
		expect(sheet.runs).not.toEqual(runs);
		for (const { from, to } of sheet.yard.power.circuit!.runs![0]!.links!) {
			const { yard, runs: now } = sheet;
			sheet = sheet.with(eraseLink(yard, now, 'run-1', { from, to }));
		}
		// What is not drawn any more was held as laid by the first change: rubbed out too, nothing is held but the lamps.
		for (const { from, to } of sheet.yard.power.circuit!.runs![0]!.links ?? [])
			sheet = sheet.with(eraseLink(sheet.yard, sheet.runs, 'run-1', { from, to }));
		const [first, second] = sheet.yard.power.circuit!.runs!;
		const bare = sheet.with({ ...sheet.yard.power.circuit, runs: [{ id: 'run-1', lamps: first!.lamps!, size: 12 }, second!] }); // prettier-ignore
		expect(bare.cabling).toEqual(twoRuns.cabling);
	});
});

describe('a bend', () => {
	const segment = twoRuns.runs[0]!.segments[1]!;
	const ends = { from: segment.from, to: segment.to };
	const via = [
		{ along: 1, out: 9 },
		{ along: 2, out: 9 }
	];
	const bent = twoRuns.with(bendLink(twoRuns.yard, twoRuns.runs, 'run-1', ends, via));
	it('leads one cable about and leaves the others of its run where they lay', () => {
		const { segments } = bent.runs[0]!;
		expect(segments[1]!.path.slice(1, -1)).toEqual(via.map(({ along, out }) => ({ x: along, y: out })));
		expect(segments.map(({ from, to }) => [from, to])).toEqual(
			twoRuns.runs[0]!.segments.map(({ from, to }) => [from, to])
		);
		const others = ({ runs }: Sheet) =>
			runs[0]!.segments.filter(({ to }) => to !== ends.to).map(({ length, path }) => ({ length, path }));
		expect(others(bent)).toEqual(others(twoRuns));
	});
	it('is taken out again: the way is the plan’s, the cable stays drawn', () => {
		const back = bent.with(straighten(bent.yard, bent.runs, 'run-1', ends));
		expect(back.runs[0]!.segments.map(({ path }) => path)).toEqual(twoRuns.runs[0]!.segments.map(({ path }) => path));
		expect(back.runs[0]!.byHand).toContain('route');
	});
	it('is none on a cable that is not there', () => {
		expect(bendLink(twoRuns.yard, twoRuns.runs, 'run-1', { from: id(0), to: id(5) }, via)).toBe(
			twoRuns.yard.power.circuit
		);
	});
	it('on a lead of a hub bends the cable from the light that the hub stands beside', () => {
		const hub = new Sheet().with({ runs: [{ id: 'run-1', feed: 'hub' }] });
		const [run] = hub.runs;
		expect(run!.feed).toBe('hub');
		const lead = run!.segments.find(({ from, length, path }) => from === 'run-1-hub' && length > 2 && path.length > 1)!;
		const after = hub.with(bendLink(hub.yard, hub.runs, 'run-1', lead, [{ along: 4, out: 9 }]));
		expect(after.runs[0]!.segments.find(({ to }) => to === lead.to)!.path).toContainEqual({ x: 4, y: 9 });
		expect(after.cabling.findings.map(({ code }) => code)).not.toContain('cable.hand-unmet');
	});
});

describe('a light moved', () => {
	it('changes both runs and nothing else; what hung on it hangs where it hung', () => {
		const chain = ['supply', id(0), id(1), id(2)];
		let sheet = twoRuns;
		for (let k = 1; k < chain.length; k++) sheet = sheet.draw('run-1', chain[k - 1]!, chain[k]!);
		const after = sheet.with(moveLamp(sheet.yard, sheet.runs, id(1), 'run-2'));
		expect(after.runs.map((run) => lampsOfRun(run).toSorted())).toEqual([[0, 2].map(id), [1, 3, 4, 5].map(id)]);
		expect(after.fed()).toMatchObject({ [id(0)]: 'supply', [id(2)]: id(0) });
		for (const k of [0, 1]) expect(after.runs[k]!.amps).not.toBe(sheet.runs[k]!.amps);
	});
	it('to a run of its own, from the only run that there is', () => {
		const before = new Sheet();
		const after = before.with(moveLamp(before.yard, before.runs, id(5), 'new'));
		expect(after.yard.power.circuit!.runs!.map((run) => run.id)).toEqual(['run-1', 'run-2']);
		expect(after.runs.map((run) => lampsOfRun(run).toSorted())).toEqual([[0, 1, 2, 3, 4].map(id), [id(5)]]);
	});
	it('takes a run with it that held nothing else', () => {
		const sheet = twoRuns.with(moveLamp(twoRuns.yard, twoRuns.runs, id(5), 'new'));
		expect(sheet.runs).toHaveLength(3);
		const back = sheet.with(moveLamp(sheet.yard, sheet.runs, id(5), 'run-2'));
		expect(back.yard.power.circuit).toEqual(twoRuns.yard.power.circuit);
	});
	it('that is nowhere, or to where it is already or to nowhere, changes nothing', () => {
		const { yard, runs } = twoRuns;
		for (const [lamp, to] of [
			['no/such', 'run-1'],
			[id(0), 'run-1'],
			[id(0), 'run-7']
		])
			// prettier-ignore
			expect(moveLamp(yard, runs, lamp!, to!)).toBe(yard.power.circuit);
	});
});

describe('a run given back', () => {
	it('is the plan’s again; others stay set', () => {
		expect(releaseRun(twoRuns.yard, 'run-1')).toEqual({
			transformerVoltAmps: 300,
			runs: [twoRuns.yard.power.circuit!.runs![1]]
		});
		const drawn = new Sheet().draw('run-1', 'supply', id(3));
		expect(releaseRun(drawn.yard, 'run-1')).toBeNull();
		expect(drawn.with(releaseRun(drawn.yard, 'run-1')).cabling).toEqual(new Sheet().cabling);
	});
});

describe('an advice that splits a drawn run', () => {
	it('keeps in each part the cable drawn within it', () => {
		const links: RunLink[] = [
			{ from: 'supply', to: id(0) },
			{ from: id(0), to: id(1) },
			{ from: id(1), to: id(2) }
		];
		const yard = new Sheet().with({ runs: [{ id: 'run-1', links }] }).yard;
		const shape = { id: 'run-1', nodes: 1, segments: [], loads: [] };
		const layout: Pick<Layout, 'runs'> = { runs: [{ nodes: [], segments: [], shape, byHand: [] }] };
		const change = changedRun(yard, layout, 'run-1', { groups: [[id(0), id(1)], [id(2)]] });
		expect(change).toEqual([
			{
				path: 'power.circuit',
				value: {
					runs: [
						{ id: 'run-1', lamps: [id(0), id(1)], links: links.slice(0, 2) },
						{ id: 'run-2', lamps: [id(2)] }
					]
				}
			}
		]);
	});
});

describe('links of a run as laid', () => {
	it('keep the bends told, whichever way round', () => {
		const via = [
			{ along: 1, out: 9 },
			{ along: 2, out: 8 }
		];
		const [run] = new Sheet().with({ runs: [{ id: 'run-1', links: [{ from: id(1), to: id(0), via }, { from: 'supply', to: id(0) }] }] }).runs; // prettier-ignore
		const links = linksOfRun(run!, [{ from: id(1), to: id(0), via }]);
		expect(links).toContainEqual({ from: id(0), to: id(1), via: via.toReversed() });
		expect(links).toHaveLength(6);
	});
});
