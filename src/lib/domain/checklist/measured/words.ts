/** What a fault means for someone who stands beside it with a meter. */
import { sizeName, type Fault, type Inspected, type Suspect } from '../../circuit';
import type { Run } from '../../cable';
import type { Fixture } from '../../placement';
import type { Suspicion } from './types';

export interface Named {
	run: Run;
	fixtures: readonly Fixture[];
	inspected: Inspected;
}
const ohmsWords = (ohms: number): string => `${ohms < 1 ? ohms.toFixed(2) : ohms.toFixed(1)} Ω`;
const times = (factor: number): string => (factor < 10 ? factor.toFixed(1) : factor.toFixed(0)).replace(/\.0$/, '');
/** A lamp that draws less than this part of its volt-amperes is dead or not on the cable. */
const asGoodAsNothing = 0.15;

/** A node of the run by the name on the sheet. */
function nodeName({ run, fixtures }: Named, node: number): string {
	if (node === 0) return 'the transformer';
	const id = run.nodes[node]?.fixture ?? null;
	return id === null ? 'the hub' : (fixtures.find((fixture) => fixture.id === id)?.label ?? id);
}
const segmentEnds = (named: Named, segment: number): [string, string] => {
	const { from, to } = named.inspected.network.segments[segment]!;
	return [nodeName(named, from), nodeName(named, to)];
};
const lampName = (named: Named, load: number): string => nodeName(named, named.inspected.network.loads[load]!.node);

const jointAt = (name: string): string =>
	name === 'the transformer' ? 'the screws at the transformer' : `the joint at ${name}`;

function loadWords(name: string, factor: number): Suspicion {
	if (factor < asGoodAsNothing)
		return {
			says: `${name} draws next to nothing: a dead lamp, or one that is not on the cable.`,
			look: `Try the lamp of ${name} elsewhere, then its joint.`
		};
	return factor > 1
		? {
				says: `${name} draws about ${times(factor)} times what is planned for it.`,
				look: `Read the watts on the lamp of ${name}: another may have gone in.`
			}
		: {
				says: `${name} draws about ${Math.round(factor * 100)} % of what is planned for it.`,
				look: `Read the watts on the lamp of ${name}: a smaller one may have gone in, or one of several is dark.`
			};
}

function words(fault: Fault, amount: number | null, named: Named): Suspicion {
	const { run } = named;
	switch (fault.kind) {
		case 'splice': {
			const [from, to] = segmentEnds(named, fault.segment);
			return {
				says: `A bad joint between ${from} and ${to}: about ${ohmsWords(amount!)} more than the cable has.`,
				look: `Make ${jointAt(to)} anew, then ${jointAt(from)}. If both are sound, look for a nick in the cable between them.`
			};
		}
		case 'lead': {
			const name = lampName(named, fault.load);
			return {
				says: `A bad joint between the cable and ${name}’s own lead: about ${ohmsWords(amount!)}.`,
				look: `Make the joint of ${name} anew; what lies beyond it is well.`
			};
		}
		case 'open': {
			const [from, to] = segmentEnds(named, fault.segment);
			return {
				says: `No current gets from ${from} to ${to}.`,
				look: `Look at ${jointAt(to)} and ${jointAt(from)} for a wire that has slipped out, then for a cut in the cable between them.`
			};
		}
		case 'load':
			return loadWords(lampName(named, fault.load), amount!);
		case 'tap':
			return {
				says: `The volts are those of the ${fault.tapVolts} V tap; ${run.name} is planned on ${run.tapVolts} V.`,
				look: `Read the mark at the terminal that ${run.name} is screwed to.`
			};
		case 'size':
			return {
				says: `The volts are those of ${sizeName(fault.size)} cable; ${run.name} is planned in ${sizeName(run.cable)}.`,
				look: 'Read the print on the cable’s jacket. If it is as planned, measure whether the run is longer than the route sheet says.'
			};
		case 'mains':
			return {
				says: `All volts are ${amount! < 1 ? 'low' : 'high'} from the terminals on, by about ${Math.abs(Math.round((amount! - 1) * 100))} %.`,
				look: `See what else hangs on the transformer, and try again at another hour: the mains wander. If they stay so far off, ask the power company or a licensed electrician.`
			};
		case 'dead':
			return {
				says: 'No volts at the terminals.',
				look: 'Cover the sensor or set the timer to on. Then the plug, the GFCI’s reset button and the transformer’s own breaker or fuse. A receptacle without power is for a licensed electrician.'
			};
	}
}
export const suspicionOf = ({ fault, amount }: Suspect, named: Named): Suspicion => words(fault, amount, named);
