/** What is said of the lights along a walk: why they stand there. */
import { distance, type Point } from '../shared/geometry';
import type { FixtureModel } from '../shared/catalogue';
import { rules } from '../shared/rules';
import type { Strip } from '../site';
import type { Cause } from './conflicts';
import { outerSide, type Course, type Side } from './course';
import type { Drafting } from './drafting';
import type { First, Stop } from './firsts';
import { input, moved as movedReason, reason } from './reasons';
import type { Fixture, Reason } from './types';
import { called, either } from './wording';

export const firstWords: Record<First, string> = {
	entry: 'the entry',
	bend: 'the bend',
	junction: 'where another way meets it',
	gate: 'the gate',
	leaving: 'where it leaves other paving',
	foot: 'the foot of the steps',
	head: 'the head of the steps'
};

export interface Standing {
	at: number;
	side: Side;
	p: Point;
}
export interface Spot extends Standing {
	clear: number;
	/** Where it would stand with nothing in the way, and what was. */
	wanted: Point;
	first: Cause | null;
}

/** What the light does there: a place that comes first, and which side of a bend, or a straight filled. */
function placeWords(d: Drafting, course: Course, stop: Stop, { at, side }: Spot): string {
	const the = called(course.strip.name, 'walk');
	const moved =
		Math.abs(at - stop.at) > 1e-9 ? `, moved ${d.len(Math.abs(at - stop.at))} along to a place that is free` : '';
	if (!stop.first) return `Fills the straight of ${the} evenly${moved}.`;
	const serves =
		stop.also.length > 0 ? `; it serves ${[...new Set(stop.also)].map((f) => firstWords[f]).join(' and ')} too` : '';
	const outer = stop.first === 'bend' ? outerSide(course, stop.at) : null;
	const edge = outer ? `, on the ${outer === side ? 'outside, where the edge is missed' : 'inside'}` : '';
	const gate = stop.first === 'gate' ? besideLeaf(d, course, stop) : { where: '', unknown: '' };
	return `Marks ${firstWords[stop.first]} of ${the}${edge}${gate.where}${serves}${moved}.${gate.unknown}`;
}
/** At a gate: why it stands off, and what is not known. */
function besideLeaf(d: Drafting, { strip }: Course, { at }: Stop): { where: string; unknown: string } {
	const away = ({ at: gate }: { at: number }): number => Math.abs(gate - at);
	const gate = strip.gates.toSorted((a, b) => away(a) - away(b))[0];
	return {
		where: `, just ${gate && at > gate.at ? 'beyond' : 'before'} the reach of its leaf, which may swing ${d.len(strip.width)} either way`,
		unknown: ' Which side the latch is on is not known: if it is the other, move the light across.'
	};
}

function spacingWords(d: Drafting, nearest: number): string {
	const { spacing } = d.figures['path.spacing'];
	const least = d.len(spacing);
	if (!Number.isFinite(nearest))
		return `Lights along one edge stand at least ${least} apart; it is the first on this edge.`;
	return nearest < spacing - 1e-6
		? `${d.len(nearest)} from the nearest on this edge, closer than ${least}: the places that come first lie that close.`
		: `${d.len(nearest)} from the nearest on this edge, not closer than ${least}.`;
}

/** Why a light stands where it does. `nearest`: metres to the nearest on its edge, Infinity for the first. */
export function walkReasons(
	d: Drafting,
	course: Course,
	model: FixtureModel,
	stop: Stop,
	spot: Spot,
	nearest: number
): Reason[] {
	const { clear, p, wanted, first } = spot;
	const { low, high } = d.figures['path.setback'];
	const where = stop.first ? `right at ${firstWords[stop.first]}` : 'where an even row has it';
	return [
		reason('path.first', null, '', placeWords(d, course, stop, spot)),
		reason('path.spacing', Number.isFinite(nearest) ? nearest : null, 'm', spacingWords(d, nearest)),
		reason(
			'path.setback',
			clear,
			'm',
			`The head stands ${d.len(clear)} clear of the edge, between ${d.len(low)} and ${d.len(high)}.`,
			{
				working: {
					label: 'Stake from the edge',
					value: clear + model.headDiameter / 2,
					unit: 'm',
					decimals: 2,
					rule: rules['path.setback'].says,
					expression: 'c + d ÷ 2',
					inputs: [
						input('c', 'clear of the edge', clear, 'm'),
						input('d', 'diameter of the head', model.headDiameter, 'm')
					],
					source: rules['path.setback'].source
				}
			}
		),
		reason('glare.shield', null, '', 'The shade hides the lamp from anyone walking.'),
		...(first ? [movedReason(d, first, distance(p, wanted), where)] : [])
	];
}

/** Places along a walk that got no light, and what was in the way. `served`: some other light stands along it. */
export function sayNoRoom(
	d: Drafting,
	strip: Strip,
	target: Fixture['target'],
	place: First | 'straight',
	causes: ReadonlySet<Cause>,
	served: boolean
): void {
	const where = place === 'straight' ? 'part of a straight' : firstWords[place];
	const why =
		causes.size > 0
			? either([...causes].map(d.because))
			: `it would be closer than ${d.len(d.figures['path.spacing'].spacing)} to another`;
	d.say(
		'placement.no-room',
		place === 'straight' ? 'note' : 'look',
		target,
		'path.first',
		`On ${called(strip.name, 'walk')} ${where} gets no light on the side asked for: ${why}.${served ? '' : ' No light stands along it at all.'} Look whether another side or an existing light will do.`
	);
}
