/** Figures of a spot for the sensor in words. */
import type { Fixture } from '../../placement';
import type { Site } from '../../site';
import type { SensorView } from '../types';
import type { LampShare } from './lamplight';
import type { Weighed } from './view';

export const listed = (names: readonly string[]): string =>
	names.length > 1 ? `${names.slice(0, -1).join(', ')} and ${names.at(-1)!}` : (names[0] ?? '');
/** Lux as said: one decimal below ten, none above. */
export const luxWords = (lux: number): string => `${lux.toFixed(lux < 9.95 ? 1 : 0)} lx`;
/** A part of the sky as said. */
export const partWords = (share: number): string =>
	share < 0.01 ? 'less than 1 %' : `${Math.min(100, Math.round(share * 100))} %`;

/** Of all that is taken or thrown, what something is named from; and how many at the most. */
const named = 0.1;
const mostNamed = 3;

/** What takes the most of a window's sky: `the eaves take 40 % of its sky and the oak 12 %`. Empty where next to nothing does. */
export function takenWords(taken: SensorView['taken']): string {
	const most = taken.filter(({ share }, i) => i === 0 || share >= named).slice(0, mostNamed - 1);
	return most
		.map(({ kind, name, share }, i) =>
			i === 0
				? `${name} ${kind === 'eaves' ? 'take' : 'takes'} ${partWords(share)} of its sky`
				: `${name} ${partWords(share)}`
		)
		.join(' and ');
}
/** Minutes from the least to the most through the year: `12 to 31 minutes`. */
export function minutesWords({ least, most }: { least: number; most: number }): string {
	const [low, high] = [Math.max(0, Math.round(least)), Math.max(0, Math.round(most))];
	return `${low === high ? '' : `${low} to `}${high} ${high === 1 ? 'minute' : 'minutes'}`;
}
export const isOnTime = ({ most }: { most: number }): boolean => Math.round(most) < 1;
/** From so many minutes on it burns by day, and nobody counts minutes. */
const byDay = 120;
/** `wake the lights 12 to 31 minutes early`, and what it adds in the morning where that is more; null where no dusk or dawn happens. */
export function shiftWords({ early, late }: Pick<Weighed, 'early' | 'late'>): string | null {
	if (Math.max(early?.most ?? 0, late?.most ?? 0) >= byDay) return 'keep the lights on by day';
	const morning = late ? `keep them on ${minutesWords(late)} too long in the morning` : null;
	if (!early) return morning;
	const evening = `wake the lights ${minutesWords(early)} early`;
	return morning && late!.most >= early.most + 1 ? `${evening} and ${morning}` : evening;
}
/** Whose light it is, the brightest first, by label or name. */
export function whose(shares: readonly LampShare[], site: Site, fixtures: readonly Fixture[]): string {
	const all = shares.reduce((sum, { lux }) => sum + lux, 0);
	const names = shares
		.filter(({ lux }) => lux >= named * all)
		.slice(0, mostNamed)
		.map(({ id, existing }) =>
			existing
				? site.existing.find((light) => light.id === id)?.name.trim() || 'a light that is there'
				: fixtures.find((fixture) => fixture.id === id)?.label || id
		);
	return listed(names) || 'many lamps';
}
const winds = ['north', 'north-east', 'east', 'south-east', 'south', 'south-west', 'west', 'north-west'] as const;
/** A bearing as one of eight winds. */
export const windOf = (bearing: number): string => winds[Math.round((((bearing % 360) + 360) % 360) / 45) % 8]!;
