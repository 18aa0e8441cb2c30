/** What the light comes to, in words. */
import type { PlanLight, Receiver, ReceiverKind } from '$lib/domain/light';
import type { Plan } from '$lib/domain/plan';
import { luxWords } from '$lib/drawing/light-map/bands';

export const verdictWords: Record<Receiver['verdict'], string> = {
	right: 'right',
	short: 'less than it should be',
	patchy: 'bright and dark by turns',
	'too-bright': 'brighter than it should be',
	spills: 'more than should get there',
	'no-aim': 'no figure to keep'
};
/** Groups of the table, in the order in which they matter to who walks there. */
export const groups: readonly { title: string; kinds: readonly ReceiverKind[] }[] = [
	{ title: 'Under foot', kinds: ['walk', 'steps', 'drive', 'seating'] },
	{ title: 'Walls', kinds: ['wall'] },
	{ title: 'At the boundary and next door', kinds: ['boundary', 'neighbour-window'] },
	{ title: 'Dusk sensor', kinds: ['sensor'] }
];
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** `5 lx or more on average, 5 to 1`. */
export function aimWords({ kind, aim }: Receiver): string | null {
	if (!aim) return null;
	const { low, high, evenness } = aim;
	// Spill and the sensor are judged by their brightest place.
	const peak = kind === 'boundary' || kind === 'neighbour-window' || kind === 'sensor';
	const each = kind === 'steps' ? ' on each tread' : peak ? ' anywhere' : ' on average';
	const level =
		low !== null && high !== null
			? `${low} to ${high} lx${each}`
			: low !== null
				? `${low} lx or more${each}`
				: high !== null
					? `at most ${high} lx${each}`
					: '';
	return [level, evenness === null ? '' : `evenness ${evenness} to 1 or better`].filter(Boolean).join(', ');
}
/** Surfaces on which dark patches matter. */
const evenly: readonly ReceiverKind[] = ['walk', 'steps', 'drive', 'seating', 'wall'];
/** Average ÷ least: `3.4 to 1`; a dash where parts get none, nothing where it says nothing. */
export function evennessWords({ kind, evenness }: Receiver): string {
	if (!evenly.includes(kind)) return '';
	return evenness === null ? '–' : `${evenness.toFixed(evenness < 9.95 ? 1 : 0)} to 1`;
}

const judged = ({ receivers }: PlanLight) => receivers.filter(({ verdict }) => verdict !== 'no-aim');
/** The page's heading. */
export function lightHeading({ light, fixtures }: Plan): string {
	if (fixtures.length === 0) return 'Nothing is lit yet';
	const all = judged(light);
	const off = all.filter(({ verdict }) => verdict !== 'right');
	if (all.length === 0) return 'The yard after dark';
	if (off.length === 0) return 'Light lands where it should, as much as it should';
	if (off.length === 1) return `${capital(off[0]!.name)}: ${verdictWords[off[0]!.verdict]}`;
	return `Light is right in ${all.length - off.length} of ${all.length} places`;
}

const listed = (parts: readonly string[]): string =>
	parts.length < 2 ? (parts[0] ?? '') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;
/** The most that a sentence names before it counts. */
const named = 4;

/**
 * Everything lit, by name, the brightest first; what gets next to nothing is told apart. Lux are averages. `from`: where one stands
 * who looks at the house.
 */
export function pictureWords({ light, site, fixtures }: Plan, view: 'street' | 'above', from = 'the street'): string {
	const seen = view === 'street' ? `The house from ${from}, after dark.` : 'The yard from above, after dark.';
	if (fixtures.length === 0) return `${seen} Nothing is lit.`;
	const of = (kinds: readonly ReceiverKind[]) =>
		light.receivers.filter(({ kind }) => kinds.includes(kind)).toSorted((a, b) => b.average - a.average);
	// `the steps on the walk, flight 2 from the street`: one flight speaks for all.
	const short = ({ name }: Receiver) => name.split(', flight')[0]!;
	const told = (one: Receiver) => `${short(one)} (${luxWords(one.average)})`;
	const surfaces = of(['wall', 'walk', 'steps', 'drive', 'seating']).filter(
		(one, index, all) => all.findIndex((other) => short(other) === short(one)) === index
	);
	const lit = surfaces.filter(({ average }) => average >= 0.2);
	const dark = surfaces.filter(({ average }) => average < 0.2);
	const trees = new Set(fixtures.flatMap(({ target }) => (target.kind === 'tree' ? [target.id] : [])));
	const names = site.trees.filter(({ id }) => trees.has(id)).map(({ name }) => name || 'a tree');
	const first = lit.slice(0, named).map(told);
	const more = lit.length > named ? [`${lit.length - named} more places`] : [];
	return [
		seen,
		first.length > 0 ? `Lit: ${listed([...first, ...more])}.` : '',
		names.length > 0
			? `From below: ${listed(names.length > named ? [...names.slice(0, named - 1), `${names.length - named + 1} more trees`] : names)}.`
			: '',
		dark.length > 0 ? `All but dark: ${listed(dark.map(short))}.` : ''
	]
		.filter(Boolean)
		.join(' ');
}

/** Hour of the slider: 0 full day, 100 night. */
export function hourWords(value: number): string {
	if (value <= 5) return 'full day';
	if (value < 35) return 'late in the day';
	if (value < 65) return 'dusk';
	return value < 95 ? 'last light' : 'night';
}
