/** What is good to know of a circuit that is right: surge at switch-on, room for growth, lamps that burn alone. */
import type { Finding } from '../shared/findings';
import { rules } from '../shared/rules';
import type { Fixture } from '../placement';
import { runNameOf } from './words';
import type { Layout } from './layout';
import { called, listed, volts } from './wording';

const transformer = { kind: 'power', id: 'transformer' };

function inrushNote({ choice }: Layout, fixtures: readonly Fixture[]): Finding[] {
	const { times, share } = rules['supply.inrush'].figures;
	const halogen = fixtures.some(({ lamp }) => lamp.kind === 'halogen');
	const limit = rules['supply.load'].figures.fraction * choice.transformer.voltAmps;
	if (!halogen && choice.loadVoltAmps <= share * limit) return [];
	const what = halogen
		? `Cold halogen filaments take ${times} times their running current, or more, for a moment when they are switched on`
		: 'The transformer and the drivers of the lamps take a surge when they are switched on';
	const message = `${what} (from memory). If the breaker of the transformer trips then, switch one run on after the other, or take one with a soft start.`;
	return [{ code: 'supply.inrush', rank: 'note', message, about: transformer, rule: 'supply.inrush' }];
}

function roomNote({ choice }: Layout): Finding[] {
	const { fraction } = rules['supply.load'].figures;
	const { voltAmps } = choice.transformer;
	const room = Math.floor(fraction * voltAmps - choice.loadVoltAmps);
	if (room < 0) return [];
	const load = `The ${voltAmps} VA transformer carries ${Math.ceil(choice.loadVoltAmps)} VA of the ${Math.round(fraction * voltAmps)} it may`;
	const message = room < 1 ? `${load}: nothing can be added to it.` : `${load}: room for about ${room} VA more.`;
	return [{ code: 'supply.room', rank: 'note', message, about: transformer, rule: 'supply.load' }];
}

/** Lamps that keep their window while all burn, and would not if each were the only one. */
function unloadedNotes({ choice, runs }: Layout, fixtures: readonly Fixture[]): Finding[] {
	const { mains } = rules['cable.corners'].figures;
	const byId = new Map(fixtures.map((fixture) => [fixture.id, fixture]));
	return choice.runs.flatMap((run): Finding[] => {
		const most = run.tapVolts * (1 + mains);
		const at = run.lamps.flatMap(({ id, high }) => {
			const fixture = byId.get(id);
			return fixture && high !== null && high <= fixture.lamp.maxVolts && most > fixture.lamp.maxVolts + 1e-9
				? [fixture]
				: [];
		});
		if (at.length === 0) return [];
		const labels = at.length > 4 ? `${at.length} lights` : listed(at.map(({ label }) => label));
		const limit = Math.min(...at.map(({ lamp }) => lamp.maxVolts));
		const lower = choice.transformer.taps.filter((tap) => tap < run.tapVolts);
		const test =
			lower.length > 0
				? `Test on the ${Math.max(...lower)} V tap, and go up when all are lit.`
				: 'Switch it on when all are connected.';
		const message = `${called(runNameOf(runs, run.id))}: with the other lamps out or not yet connected, ${labels} could get up to ${volts(most)} V; more than ${volts(limit)} shortens a lamp's life. ${test}`;
		return [
			{ code: 'cable.unloaded-high', rank: 'note', message, about: { kind: 'run', id: run.id }, rule: 'cable.volts' }
		];
	});
}

export const circuitNotes = (layout: Layout, fixtures: readonly Fixture[]): Finding[] => [
	...unloadedNotes(layout, fixtures),
	...inrushNote(layout, fixtures),
	...roomNote(layout)
];
