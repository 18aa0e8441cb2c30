/** What the light has to say: few things, one for each surface at most, and one for each place where eyes are. */
import type { Finding, Rank } from '../shared/findings';
import { rules } from '../shared/rules';
import type { Fixture } from '../placement';
import type { Site } from '../site';
import type { Glare, Receiver } from './types';
import { capital, listed, luxWords, named } from './words';

const ratio = (evenness: number): string => `${evenness.toFixed(evenness < 9.95 ? 1 : 0)} to 1`;
/** A tread with less than this part of what is wanted is more than a shade too dim: our assumption. */
const halfDark = 0.5;
/**
 * A lit wall is spoken of below this part of its level: lamps are chosen for the middle of the lit height, and a whole face is
 * dimmer than its middle. Our assumption.
 */
const wallSlack = 0.5;

export function lightFindings(
	site: Site,
	fixtures: readonly Fixture[],
	receivers: readonly Receiver[],
	glare: readonly Glare[]
): Finding[] {
	const dark = new Set(
		site.strips
			.filter(({ lights }) => lights === 'none')
			.flatMap(({ id, steps }) => [id, ...steps.map((one) => one.id)])
	);
	const spilling = new Set(
		receivers
			.filter(({ kind, verdict }) => kind === 'neighbour-window' && verdict === 'spills')
			.map(({ id }) => id.replace('window/', 'boundary/'))
	);
	const withLamp = new Set(fixtures.map(({ target }) => target.id));
	const isQuiet = (one: Receiver): boolean =>
		dark.has(one.id) ||
		spilling.has(one.id) ||
		// What falls on the sensor is judged where its night is gone through, in the dusk stage.
		one.kind === 'sensor' ||
		(one.kind === 'wall' && !withLamp.has(one.id));
	return [
		...spillFinding(receivers),
		...receivers.flatMap((one) => (isQuiet(one) ? [] : (findingFor(one, withLamp.has(one.id)) ?? []))),
		...glareFindings(site, fixtures, glare)
	];
}

/** `hasLamp`: the plan has a light for it; where it has none, placement has said why. */
function findingFor(receiver: Receiver, hasLamp: boolean): Finding | null {
	const say = (code: string, rank: Rank, message: string): Finding => ({
		code: `light.${code}`,
		rank,
		message,
		about: aboutOf(receiver),
		rule: receiver.aim?.rule ?? null
	});
	switch (receiver.verdict) {
		case 'short':
			return receiver.kind === 'wall' && receiver.average > wallSlack * receiver.aim!.low!
				? null
				: say('short', hasLamp && isRisky(receiver) ? 'look' : 'note', shortWords(receiver));
		case 'patchy':
			return say('patchy', 'note', patchyWords(receiver));
		case 'too-bright':
			return say('too-bright', 'note', brightWords(receiver));
		case 'spills':
			// Windows next door are spoken of together.
			return receiver.kind === 'neighbour-window' ? null : say('spills', 'note', edgeWords(receiver));
		default:
			return null;
	}
}
const aboutOf = ({ kind, id }: Receiver): Finding['about'] => {
	if (kind === 'boundary' || kind === 'neighbour-window') return { kind: 'lot', id: 'lot' };
	return { kind, id };
};
const isRisky = ({ kind, least, aim }: Receiver): boolean => kind === 'steps' && least < (aim?.low ?? 0) * halfDark;

function shortWords({ kind, name, average, least, aim }: Receiver): string {
	const low = aim?.low ?? 0;
	const The = capital(name);
	if (kind === 'steps')
		return `${The} get ${luxWords(average)} a tread on average, ${luxWords(least)} on the darkest, counted after some years of dirt and age; ${luxWords(low)} on each tread is what building codes ask. Another light beside the flight, or lights in the risers, makes up for it.`;
	if (kind === 'wall')
		return `${The} gets ${luxWords(average)} over its whole face, less than the ${luxWords(low)} from which a wall reads as lit. A brighter lamp, or one more where no lamp stands, lifts it.`;
	return `${The} gets ${luxWords(average)} on average. The published ${luxWords(low)} is for public walkways; at a home less is common, and it is your choice. Brighter path lights, or lights along both edges, add light.`;
}
function patchyWords({ name, average, least, evenness, aim }: Receiver): string {
	const most = aim?.evenness ?? 0;
	const found = evenness === null ? 'parts of it get none' : `the darkest place ${luxWords(least)}: ${ratio(evenness)}`;
	return `${capital(name)} gets ${luxWords(average)} on average, ${found}. Public walkways keep to ${most} to 1; pools with dark between them are common at a home. One more light in the widest gap, or lights on alternating sides, evens it out.`;
}
function brightWords({ name, average, aim }: Receiver): string {
	return `${capital(name)} gets ${luxWords(average)} over its whole face, more than the ${luxWords(aim?.high ?? 0)} that suits its surroundings. A weaker lamp saves power and leaves the night darker.`;
}
const limitWords = ({ aim }: Receiver): string => `${luxWords(aim?.high ?? 0)} is the most for late at night`;
const edgeWords = (receiver: Receiver): string =>
	`At ${receiver.name} your lamps throw up to ${luxWords(receiver.fromPlan.most)} outwards, at the height of eyes; on a window ${limitWords(receiver)}. Turn the nearest lamps inwards, or take weaker ones, if a window stands there.`;

/** One for all windows next door that get too much. */
function spillFinding(receivers: readonly Receiver[]): Finding[] {
	const windows = receivers.filter(({ kind, verdict }) => kind === 'neighbour-window' && verdict === 'spills');
	const first = windows[0];
	if (!first) return [];
	const each = listed(windows.map(({ name, fromPlan }) => `${luxWords(fromPlan.most)} on ${name}`));
	const them = windows.length === 1 ? 'Where such a window is' : 'Where such windows are';
	return [
		{
			code: 'light.spills',
			rank: 'look',
			message: `Your lamps throw up to ${each}, and ${limitWords(first)}. ${them} is supposed here, nobody asked. Turn the lamps that face there, lower them, or have them off late.`,
			about: aboutOf(first),
			rule: first.aim?.rule ?? null
		}
	];
}

/** One for each walk, drive, seat and window from which a bare lamp dazzles. */
function glareFindings(site: Site, fixtures: readonly Fixture[], glare: readonly Glare[]): Finding[] {
	const labels = new Map(fixtures.map(({ id, label }) => [id, label]));
	const groups = new Map<string, Glare[]>();
	for (const one of glare) {
		if (one.remedy === null) continue;
		const key = `${one.eye.kind} ${one.eye.id}`;
		groups.set(key, [...(groups.get(key) ?? []), one]);
	}
	return [...groups.values()].map((group): Finding => {
		const { eye } = group[0]!;
		const worst = group.reduce((a, b) => (b.candela > a.candela ? b : a));
		const names = listed(group.map(({ fixture }) => labels.get(fixture) || fixture));
		const lamps = group.length === 1 ? 'the bare lamp' : 'the bare lamps';
		return {
			code: 'light.glare',
			rank: eye.kind === 'drive' ? 'look' : 'note',
			message: `${capital(placeOf(site, eye))} you look into ${lamps} of ${names}: ${worst.candela.toFixed(0)} cd at the worst, and from ${rules['glare.level'].figures.candela} cd on a lamp dazzles. ${worst.remedy!}`,
			about: { kind: { walk: 'walk', drive: 'drive', seat: 'seating', window: 'opening' }[eye.kind], id: eye.id },
			rule: 'glare.level'
		};
	});
}
function placeOf(site: Site, { kind, id }: Glare['eye']): string {
	if (kind === 'walk' || kind === 'drive')
		return `from ${named(site.strips.find((strip) => strip.id === id)?.name ?? '', kind)}`;
	if (kind === 'seat') return `from ${named(site.areas.find((area) => area.id === id)?.name ?? '', 'seating place')}`;
	const wall = site.walls.find(({ openings }) => openings.some((opening) => opening.id === id));
	return `from a window in ${named(wall?.name ?? '', 'house')}`;
}
