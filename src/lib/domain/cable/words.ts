import type { Finding } from '../shared/findings';
import type { CableSize, Choice, ChoiceProblem } from '../circuit';
import type { Fixture } from '../placement';

const volts = (value: number) => (Math.round(value * 10) / 10).toFixed(1);
/** Two figures that would read the same get a second decimal. */
const apart = (value: number, limit: number): [string, string] =>
	volts(value) === volts(limit) ? [value.toFixed(2), limit.toFixed(2)] : [volts(value), volts(limit)];
/** `a, b and c`. */
export const listed = (names: readonly string[]) =>
	names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
export const sizeName = ({ system, size }: CableSize) => (system === 'awg' ? `${size} AWG` : `${size} mm²`);

function cureWords(problem: ChoiceProblem): string {
	const words = problem.cures.map((cure) => {
		const gives = cure.volts === undefined ? '' : `, gives it ${volts(cure.volts)} V`;
		switch (cure.kind) {
			case 'thicker':
				return cure.size
					? `Thicker cable on this run, ${sizeName(cure.size)}${gives || ', cures it'}.`
					: `Thicker cable on this run cures it.`;
			case 'feed':
				return `The cable led to its middle first${gives || ' cures it'}.`;
			case 'tap':
				return `The ${cure.tapVolts ?? ''} V tap${gives || ' cures it'}.`;
			case 'split':
				return `Two runs in place of this one${gives || ' cure it'}.`;
			case 'led':
				return `LED lamps on this run${gives || ' cure it'}.`;
			case 'larger-transformer':
				return `A larger transformer${gives || ' cures it'}.`;
		}
	});
	return words.length > 0
		? words.slice(0, 2).join(' Or: ')
		: 'Fewer lamps, a shorter way or a transformer nearer to them would help.';
}

/** A problem of the circuit in plain words, with what would cure it. */
export function problemFinding(
	problem: ChoiceProblem,
	choice: Choice,
	fixtures: readonly Fixture[],
	runName: (id: string) => string
): Finding {
	const { code, value, limit, cornerOnly } = problem;
	const fixture = fixtures.find((one) => one.id === problem.load);
	const lamp = fixture?.label ?? 'a lamp';
	const run = problem.run === null ? null : choice.runs.find((one) => one.id === problem.run);
	const named = problem.run === null ? 'the plan' : runName(problem.run);
	const capital = named.charAt(0).toUpperCase() + named.slice(1);
	const cures = cureWords(problem);
	const worstCase = cornerOnly ? ' in the worst case (long by a tenth, mains and weather against you)' : '';
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
		message,
		about,
		rule
	});
	switch (code) {
		case 'no-solution':
			return say(
				'stop',
				'lamp.led',
				`${capital} asks for more power than its cable can carry: no volts can be worked out${worstCase}. ${cures}`
			);
		case 'lamp-low':
			return say(
				'stop',
				'cable.volts',
				`The far light ${lamp} on ${named} gets ${found} V${worstCase}. It wants ${wanted}. ${cures}`
			);
		case 'lamp-high':
			return say(
				'stop',
				'cable.volts',
				`The light ${lamp} on ${named} gets ${found} V${worstCase}. More than ${wanted} shortens its life. ${cures}`
			);
		case 'uneven':
			return say(
				'look',
				'cable.volts',
				`Lamps that are seen together differ by ${found} V; ${lamp} on ${named} gets least. Within ${wanted} V they look alike. ${cures}`
			);
		case 'cable-amps':
			return say(
				'stop',
				'cable.fuse',
				`${capital} carries ${found} A${worstCase}. Its cable${run ? `, ${sizeName(run.size)},` : ''} may carry ${wanted}. ${cures}`
			);
		case 'secondary-amps':
			return say(
				'stop',
				'supply.secondary',
				`${capital} loads its side of the transformer with ${found} A${worstCase}. The most is ${wanted}. ${cures}`
			);
		case 'transformer-load': {
			const load = `${Math.round(value ?? 0)} VA${worstCase}`;
			return say(
				'stop',
				'supply.load',
				`The lamps and cables take ${load}. The ${choice.transformer.voltAmps} VA transformer may carry ${Math.round(limit ?? 0)}. ${cures}`
			);
		}
		case 'bad-network':
			return say('stop', 'cable.volts', `The volts on ${named} could not be worked out. Check the lamps on it.`);
	}
}
