/** What is said of the lights in a bed: why they stand there, and what could not be lit. */
import type { FixtureModel } from '../shared/catalogue';
import { rules } from '../shared/rules';
import type { Area, ExistingLight } from '../site';
import { poolEdge, poolReach, spacingWorking, type Lit } from './bed-pools';
import type { Cause } from './conflicts';
import type { Drafting, Placed } from './drafting';
import { moved as movedReason, reason } from './reasons';
import type { Fixture, Reason } from './types';
import { called, capital, either } from './wording';

interface Stood {
	/** Metres to the nearest other low light, Infinity for none; to the nearest edge of the bed. */
	nearest: number;
	depth: number;
	front: boolean;
	/** What was in the way where it was wanted, and how far from there it stands. */
	first: Cause | null;
	aside: number;
}

export function bedReasons(
	d: Drafting,
	area: Area,
	level: Lit,
	model: FixtureModel,
	{ nearest, depth, front, first, aside }: Stood
): Reason[] {
	const the = called(area.name, 'bed');
	const apart = 2 * poolReach(model.lamp, model.lampHeight, poolEdge(level));
	const near = Number.isFinite(nearest) ? `${d.len(nearest)} from the nearest low light.` : 'It is the first there.';
	const { clear } = rules['bed.inset'].figures;
	return [
		reason(
			'bed.spacing',
			apart,
			'm',
			`Its pool falls to ${poolEdge(level)} lx ${d.len(apart / 2)} from it, so lights in ${the} stand up to ${d.len(apart)} apart. ${near}`,
			{ working: spacingWorking(model.lamp, model.lampHeight, level) }
		),
		reason(
			'bed.inset',
			depth,
			'm',
			`${d.len(depth)} inside the edge, ${front ? 'behind the low plants in front' : 'at the back, which lights in front do not reach'}; at least ${d.len(clear)} clear of edger and mower.`
		),
		reason('glare.shield', null, '', 'A shade turns its light down on leaves and ground: nobody sees the lamp.'),
		...(first ? [movedReason(d, first, aside, 'where an even row has it')] : [])
	];
}

export interface BedOutcome {
	placed: number;
	/** What else lights it. */
	counted: readonly (Placed | ExistingLight | null)[];
	/** No lamp fits between its edges. */
	narrow: boolean;
	/** Part of its front, or all of it, is reached by no pool. */
	dark: boolean;
	/** Much of it lies far behind its lights. */
	deep: boolean;
	inTheWay: readonly Cause[];
	/** Metres between two edges that a lamp needs. */
	least: number;
}

export function bedFindings(
	d: Drafting,
	area: Area,
	target: Fixture['target'],
	outcome: BedOutcome | { crosses: true }
): void {
	const the = capital(called(area.name, 'bed'));
	if ('crosses' in outcome) {
		const message = `${the} gets no light: its outline crosses itself. Give its corners in order, going round once.`;
		d.say('placement.bed-outline', 'look', target, 'bed.inset', message);
		return;
	}
	const { placed, counted, narrow, dark, deep, inTheWay, least } = outcome;
	sayCounted(d, the, target, counted, placed > 0);
	if (narrow && counted.length === 0) {
		const message = `${the} gets no light: it is too narrow. A lamp needs ${d.len(least)} from edge to edge, to stand clear of edger and mower.`;
		d.say('placement.no-room', 'look', target, 'bed.inset', message);
	} else if (dark && !narrow) {
		const why = inTheWay.length > 0 ? either(inTheWay.map(d.because)) : 'no lamp fits between its edges there';
		const what = placed + counted.length === 0 ? 'gets no light' : 'is dark in part';
		const message = `${the} ${what}: ${why}. Look whether a light beside it will do.`;
		d.say('placement.no-room', placed + counted.length === 0 ? 'look' : 'note', target, 'bed.inset', message);
	} else if (deep) {
		const message = `${the} is deep: its lights stand along its edges, and its middle stays dark. Add one there by hand if its plants are low.`;
		d.say('placement.bed-deep', 'note', target, 'bed.spacing', message);
	}
}

/** Lights that stand for something else and reach the bed are counted, not doubled. */
function sayCounted(
	d: Drafting,
	the: string,
	target: Fixture['target'],
	counted: BedOutcome['counted'],
	own: boolean
): void {
	const tail = own ? 'no light of its own there' : 'no light of its own';
	const there = counted.flatMap((by) => (by && !('fixture' in by) ? [called(by.name, 'existing light')] : []));
	const planned = counted.length - there.length;
	const part = own ? `Part of ${the.charAt(0).toLowerCase()}${the.slice(1)}` : the;
	if (planned > 0) {
		const which = planned === 1 ? 'a light that stands' : `${planned} lights that stand`;
		const message = `${part} is lit by ${which} there for a walk, a drive or a seat: ${tail}.`;
		d.say('placement.shared', 'note', target, 'bed.spacing', message);
	}
	if (there.length > 0) {
		const message = `${part} is lit by ${[...new Set(there)].join(' and ')} already: ${tail}. If it is off at night, say so and plan again.`;
		d.say('placement.existing', 'note', target, 'existing.light', message);
	}
}
