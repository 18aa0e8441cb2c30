import { rules } from '../shared/rules';
import type { Finding } from '../shared/findings';
import { sizeName, type Choice, type ChoiceProblem } from '../circuit';
import type { Fixture } from '../placement';
import { runName } from './assemble';
import type { LaidRun, Layout } from './layout';
import { apart, apartWhole, called, listed } from './wording';

/** By node: metres of cable from the supply. */
export function reachOf({ nodes, segments }: Pick<LaidRun, 'nodes' | 'segments'>): Float64Array {
	const reach = new Float64Array(nodes.length);
	for (const { from, to, length } of segments) reach[to] = reach[from]! + length;
	return reach;
}

/** `far` or `near` where the lamp is the farthest or the nearest of its run, by cable, and there is more than one. */
function whichLight(run: LaidRun | undefined, load: string | null, wanted: 'far' | 'near'): string {
	const loads = run?.shape.loads ?? [];
	const own = loads.find(({ id }) => id === load);
	if (!run || !own || loads.length < 2) return 'light';
	const reach = reachOf(run);
	const all = loads.map(({ node }) => reach[node]!);
	const isIt =
		wanted === 'far' ? reach[own.node]! >= Math.max(...all) - 1e-9 : reach[own.node]! <= Math.min(...all) + 1e-9;
	return isIt ? `${wanted} light` : 'light';
}

const percent = (fraction: number) => `${Math.round(fraction * 100)} %`;
/** The corner that a limit is broken in (rule cable.corners). */
function worstCase(code: ChoiceProblem['code']): string {
	const { length, mains } = rules['cable.corners'].figures;
	if (code === 'lamp-high')
		return ` in the worst case (cable ${percent(length)} shorter, mains ${percent(mains)} high, a cold night)`;
	if (code === 'lamp-low' || code === 'no-solution')
		return ` in the worst case (cable ${percent(length)} longer, mains ${percent(mains)} low, a hot night)`;
	return ' in the worst case (lengths, mains and weather against you)';
}

/** What is left to the person where no change that was tried helps. */
const leftToDo: Record<ChoiceProblem['code'], string> = {
	'no-solution': 'Fewer lamps, a shorter way or a transformer nearer to them would help.',
	'lamp-low': 'Fewer lamps, a shorter way or a transformer nearer to them would help.',
	'lamp-high': 'A transformer with a lower tap, or lamps made for more volts, would help.',
	uneven: 'Fewer lamps, a shorter way or a transformer nearer to them would help.',
	'cable-amps': 'Fewer lamps on it would help.',
	'secondary-amps': 'Fewer lamps on it would help.',
	'transformer-load': 'Fewer lamps would help.',
	'no-tap': '',
	'bad-network': ''
};

/** A problem of the circuit in plain words: what, where, how far out. `isHelpless`: no change that was tried cures it. */
export function problemFinding(
	problem: ChoiceProblem,
	{ choice, runs }: Pick<Layout, 'choice' | 'runs'>,
	fixtures: readonly Fixture[],
	isHelpless: boolean
): Finding {
	const { code, value, limit, cornerOnly } = problem;
	const fixture = fixtures.find((one) => one.id === problem.load);
	const lamp = fixture?.label ?? 'a lamp';
	const chosen = problem.run === null ? null : choice.runs.find((one) => one.id === problem.run);
	const named = problem.run === null ? 'the plan' : runNameOf(runs, problem.run);
	const run = runs.find(({ shape }) => shape.id === problem.run);
	const worst = cornerOnly ? worstCase(code) : '';
	const [found, wanted] = apart(value ?? 0, limit ?? 0);
	const about = fixture
		? { kind: 'fixture', id: fixture.id }
		: problem.run
			? { kind: 'run', id: problem.run }
			: { kind: 'power', id: 'transformer' };
	const say = (rank: Finding['rank'], rule: string, message: string): Finding => ({
		code: `cable.${code}`,
		// What holds in the nominal case and fails only in a corner is for the person to weigh.
		rank: cornerOnly ? 'look' : rank,
		message: isHelpless && leftToDo[code] ? `${message} ${leftToDo[code]}` : message,
		about,
		rule
	});
	switch (code) {
		case 'no-solution':
			return say(
				'stop',
				'lamp.led',
				`${called(named)} asks for more power than its cable can carry: no volts can be worked out${worst}.`
			);
		case 'lamp-low': {
			const then =
				fixture?.lamp.kind === 'led'
					? ': below that it may dim, flicker or stay dark'
					: ': below that it is dim and orange';
			return say(
				'stop',
				'cable.volts',
				`The ${whichLight(run, problem.load, 'far')} ${lamp} on ${named} gets ${found} V${worst}. It wants ${wanted}${then}.`
			);
		}
		case 'lamp-high':
			return say(
				'stop',
				'cable.volts',
				`The ${whichLight(run, problem.load, 'near')} ${lamp} on ${named} gets ${found} V${worst}. More than ${wanted} shortens its life.`
			);
		case 'uneven':
			return say(
				'look',
				'cable.volts',
				`Lamps that are seen together differ by ${found} V; ${lamp} on ${named} gets least. Within ${wanted} V they look alike.`
			);
		case 'cable-amps':
			return say(
				'stop',
				'cable.fuse',
				`${called(named)} carries ${found} A${worst}. Its cable${chosen ? `, ${sizeName(chosen.size)},` : ''} may carry ${wanted}.`
			);
		case 'secondary-amps':
			return say(
				'stop',
				'supply.secondary',
				`${called(named)} loads its side of the transformer with ${found} A${worst}. The most is ${wanted}.`
			);
		case 'transformer-load':
			return say(
				'stop',
				'supply.load',
				`The lamps and cables take ${Math.round(value ?? 0)} VA${worst}. The ${choice.transformer.voltAmps} VA transformer may carry ${Math.round(limit ?? 0)}.`
			);
		case 'no-tap': {
			const taps = listed(choice.transformer.taps.map((tap) => `${tap} V`));
			return say('stop', 'cable.volts', `${called(named)} is set on ${value ?? 0} V, and the transformer has ${taps}.`);
		}
		case 'bad-network':
			return say('stop', 'cable.volts', `The volts on ${named} could not be worked out. Check the lamps on it.`);
	}
}

export const runNameOf = (runs: readonly Pick<LaidRun, 'shape'>[], id: string): string => {
	const place = runs.findIndex(({ shape }) => shape.id === id);
	return place < 0 ? id : runName(place);
};

/** What a problem would mean for its lamp or run, as the second half of a sentence: `W7 would get 8.7 V; it wants 9.0`. */
export function problemWords(
	problem: Omit<ChoiceProblem, 'cures'>,
	{ transformer }: Pick<Choice, 'transformer'>,
	fixtures: readonly Pick<Fixture, 'id' | 'label'>[],
	named: string
): string {
	const { code, value, limit, cornerOnly } = problem;
	const lamp = fixtures.find((one) => one.id === problem.load)?.label ?? 'a lamp';
	const [found, wanted] = apart(value ?? 0, limit ?? 0);
	const worst = cornerOnly ? ' at the worst' : '';
	switch (code) {
		case 'no-solution':
			return `${named} would ask for more power than its cable can carry${worst}`;
		case 'lamp-low':
			return `${lamp} would get ${found} V${worst}; it wants ${wanted}`;
		case 'lamp-high':
			return `${lamp} would get ${found} V${worst}; more than ${wanted} shortens its life`;
		case 'uneven':
			return `lamps seen together would differ by ${found} V; within ${wanted} they look alike`;
		case 'cable-amps':
			return `${named} would carry ${found} A${worst}; its cable may carry ${wanted}`;
		case 'secondary-amps':
			return `one side of the transformer would carry ${found} A${worst}; the most is ${wanted}`;
		case 'transformer-load': {
			const [load, most] = apartWhole(value ?? 0, limit ?? 0);
			return `the ${transformer.voltAmps} VA transformer would carry ${load} VA${worst}; it may carry ${most}`;
		}
		case 'no-tap':
			return `the transformer has no ${value ?? 0} V tap`;
		case 'bad-network':
			return `the volts on ${named} could not be worked out`;
	}
}
