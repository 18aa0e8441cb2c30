/** What is to be said of cables that a person drew: those that cannot lie so, that lie close to something, that are not used. */
import type { Assumption, Finding } from '../shared/findings';
import type { Point } from '../shared/geometry';
import { formatLength } from '../shared/units';
import type { Fixture } from '../placement';
import type { RunLink, Units } from '../yard';
import type { Said } from './drawn';
import type { Unused, WhyUnused } from './drawn-links';
import type { Blocked, Close } from './drawn-way';
import type { HandRun } from './hand';
import { called, listed, the } from './wording';

/** How lights and places are called. */
export interface Calling {
	fixtures: readonly Fixture[];
	units: Units;
	runName: (id: string) => string;
}
/** Of more than this, only so many are named. */
const mostNamed = 4;

const some = (names: readonly string[]): string =>
	names.length > mostNamed
		? `${names.slice(0, mostNamed).join(', ')} and ${names.length - mostNamed} more`
		: listed(names);

/** A light that is gone goes by its id. */
const lightName = (id: string, { fixtures }: Calling): string =>
	id === 'supply' ? 'the transformer' : (fixtures.find((one) => one.id === id)?.label ?? id);
const linkName = ({ from, to }: RunLink, calling: Calling): string =>
	`from ${lightName(from, calling)} to ${lightName(to, calling)}`;
const placeName = ({ x, y }: Point, { units }: Calling): string =>
	`${formatLength(x, units)} along and ${formatLength(y, units)} out`;

function blockedWords({ why, name, at }: Blocked, calling: Calling): string {
	const place = placeName(at, calling);
	switch (why) {
		case 'through':
			return `runs into ${the(name)}, ${place}. The plan lays its own way there. Lead your bends round it.`;
		case 'steps':
			return `passes under the steps of ${the(name)}, ${place}: they stand on a footing. The plan lays its own way there. Cross above or below the steps.`;
		case 'lot':
			return `goes beyond ${name}, ${place}. The plan lays its own way there. Keep your bends on your own ground.`;
		case 'bend':
			return `bends under ${the(name)}, ${place}: what is bored runs straight. The plan lays its own way there. Put the bend beside the paving.`;
	}
}
const closeWords = ({ name, distance, keeps, at }: Close, calling: Calling): string =>
	`passes ${formatLength(distance, calling.units)} from ${the(name)}, ${placeName(at, calling)}; the plan keeps ${formatLength(keeps, calling.units)}. Mind it when you dig, or move the bend.`;

function saidFindings({ link, blocked, close, under }: Said, run: HandRun, calling: Calling): Finding[] {
	const about = { kind: 'run', id: run.id };
	const cable = `The cable you drew ${linkName(link, calling)} on ${calling.runName(run.id)}`;
	const say = (code: string, rank: Finding['rank'], words: string, rule: string | null): Finding => ({
		code,
		rank,
		message: `${cable} ${words}`,
		about,
		rule
	});
	return [
		...(blocked ? [say('cable.drawn-blocked', 'stop', blockedWords(blocked, calling), null)] : []),
		...close.map((one) => say('cable.drawn-close', 'look', closeWords(one, calling), null)),
		...under.map(({ name, at }) =>
			say(
				'cable.under-wall',
				'look',
				`passes under ${the(name)}, ${placeName(at, calling)}. Look for a gap or a drain hole, or tunnel under its footing by hand.`,
				null
			)
		)
	];
}

const unusedWords: Record<Exclude<WhyUnused, 'gone'>, (many: boolean) => string> = {
	elsewhere: (many) =>
		many
			? 'they lead to lights of other runs. Move those lights to this run, or take the cables away.'
			: 'it leads to a light of another run. Move that light to this run, or take the cable away.',
	unreached: (many) =>
		many
			? 'no cable gets to lights that they lead to. Move those lights.'
			: 'no cable gets to a light that it leads to. Move that light.',
	ring: (many) =>
		many
			? 'what they lead to is joined already. Each light is fed by one cable.'
			: 'what it leads to is joined already. Each light is fed by one cable.'
};
const linksBy = (unused: readonly Unused[], why: WhyUnused): RunLink[] =>
	unused.flatMap((one) => (one.why === why ? [one.link] : []));
const cablesWords = (links: readonly RunLink[], calling: Calling): string =>
	`the ${links.length === 1 ? 'cable' : 'cables'} you drew ${some(links.map((link) => linkName(link, calling)))}`;

function unusedFindings({ id, unused }: HandRun, calling: Calling): Finding[] {
	return (['elsewhere', 'unreached', 'ring'] as const).flatMap((why): Finding[] => {
		const links = linksBy(unused, why);
		if (links.length === 0) return [];
		const many = links.length > 1;
		const message = `${called(calling.runName(id))}: ${cablesWords(links, calling)} ${many ? 'are' : 'is'} not laid, because ${unusedWords[why](many)}`;
		return [{ code: 'cable.drawn-unused', rank: 'look', message, about: { kind: 'run', id }, rule: null }];
	});
}

/** Cables drawn that cannot be laid as they are, or that want care. */
export const drawnFindings = (runs: readonly HandRun[], calling: Calling): Finding[] =>
	runs.flatMap((run) => [
		...run.said.flatMap((said) => saidFindings(said, run, calling)),
		...unusedFindings(run, calling)
	]);

/** Cables drawn to lights that are gone: kept, in case the lights come back. */
export const drawnAssumptions = (runs: readonly HandRun[], calling: Calling): Assumption[] =>
	runs.flatMap(({ id, unused }): Assumption[] => {
		const links = linksBy(unused, 'gone');
		if (links.length === 0) return [];
		const many = links.length > 1;
		const message = `${called(calling.runName(id))}: ${cablesWords(links, calling)} ${many ? 'lead' : 'leads'} to ${many ? 'lights' : 'a light'} no longer there, and ${many ? 'are' : 'is'} not laid. The drawing is kept.`;
		return [{ path: 'power.circuit', message, about: { kind: 'run', id } }];
	});
