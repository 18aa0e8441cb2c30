/** What is bought, as the counter reads it out. Volts, lumens, volt-amperes; money in hundredths of the shelf's currency. */
import type { Bought, Judged, Match, Needs, Shelf, ShelfLine, Solution } from '$lib/domain/kits/types';
import { money } from '$lib/domain/kits';
import { metresPerFoot } from '$lib/domain/shared/units';
import type { Plan } from '$lib/domain/plan';

/** One name for one basket: the same counts of the same codes. */
export const nameOfBuys = (buys: readonly Bought[]): string =>
	buys.map(({ code, count }) => `${count} × ${JSON.stringify(code)}`).join(' + ');

export interface Line {
	line: ShelfLine;
	count: number;
	cents: number;
}
/** The lines of the shelf that are bought, in its order. */
export const linesOf = (buys: readonly Bought[], shelf: Shelf): Line[] =>
	shelf.lines.flatMap((line) => {
		const count = buys.find(({ code }) => code === line.code)?.count ?? 0;
		return count > 0 ? [{ line, count, cents: count * line.cents }] : [];
	});
/** Light of all lights together, with the lamps that are bought: lumens. */
export function lumensOf({ setup }: Solution, { fixtures }: Needs, shelf: Shelf): number {
	const all = shelf.lines.flatMap(({ contents }) => contents.fixtures);
	return fixtures.reduce((sum, need, n) => {
		const lamp = all.find(({ product }) => product === setup.products[n])?.fixture.lamp;
		return sum + need.fixtures.length * (lamp?.lumens ?? 0);
	}, 0);
}
/** The lamp that stands nearest to an end of its window in the worst cases; null where nothing was solved. */
export function tightest({ lamps }: Judged): { label: string; volts: number; spare: number } | null {
	const found = lamps.flatMap(({ label, volts, low, high, least, most }) =>
		volts === null || low === null || high === null ? [] : [{ label, volts, spare: Math.min(low - least, most - high) }]
	);
	return found.reduce<(typeof found)[number] | null>((a, b) => (a === null || b.spare < a.spare ? b : a), null);
}
export const volts = (value: number): string => `${value < 0 ? '−' : ''}${Math.abs(value).toFixed(1)} V`;

/** Why this and nothing else, in one sentence. */
export function whyThis(chosen: Solution, { best, kits, isProven }: Match, shelf: Shelf): string {
	if (best && nameOfBuys(chosen.buys) !== nameOfBuys(best.buys)) {
		const more = money(chosen.cents - best.cents, shelf.currency);
		return `It passes too, and costs ${more} more than the cheapest${isProven ? '' : ' found'}.`;
	}
	const isBought = (code: string) => chosen.buys.some((one) => one.code === code);
	const why = kits.find(({ code, isIn }) => isIn && isBought(code))?.why;
	if (why) return why;
	if (!isProven) return 'It is the cheapest found with which every lamp gets its volts.';
	return kits.length === 0
		? 'It is the cheapest of the shelf with which every lamp gets its volts.'
		: 'Loose items come cheaper here than any kit with which every lamp gets its volts.';
}
const timesName = ({ line, count }: Line): string => (count === 1 ? line.name : `${count} × ${line.name}`);
/** A basket in a few words: `2 × Path kit of six, Spot kit, and 5 loose pieces`. */
export function basketWords(buys: readonly Bought[], shelf: Shelf): string {
	const all = linesOf(buys, shelf);
	const lines = all.filter(({ line }) => !line.isOwned);
	const own = all.flatMap(({ line }) => (line.isOwned ? [line.name.replace(/^T/, 't')] : []));
	return [goodsWords(lines), ...own].filter(Boolean).join(', with ');
}
function goodsWords(lines: readonly Line[]): string {
	const kits = lines.filter(({ line }) => line.kind === 'kit').map(timesName);
	const loose = lines.reduce((sum, { line, count }) => (line.kind === 'kit' ? sum : sum + count), 0);
	if (loose === 0) return kits.join(', ');
	const pieces = `${loose} loose ${loose === 1 ? 'piece' : 'pieces'}`;
	return kits.length > 0 ? `${kits.join(', ')}, and ${pieces}` : pieces;
}

/** Metres of trench that one person opens, lays and closes in an hour with a spade in lawn, 15 cm deep. Common practice, no source. */
const metresAnHour = 10;
/** Hours of digging and laying, to the half hour; null: nothing is laid. The shelf's cable lies in the same trench whichever is bought. */
export function hoursOf({ hours }: Needs, { supply }: Plan): number | null {
	const trench = supply?.route?.trench ?? null;
	if (hours === null && trench === null) return null;
	return Math.max(0.5, Math.round((hours ?? (trench ?? 0) / metresAnHour) * 2) / 2);
}
/** `About 2½ hours`. */
export function hoursWords(hours: number): string {
	const whole = Math.floor(hours);
	const half = hours - whole >= 0.5 ? '½' : '';
	return `about ${whole > 0 || !half ? whole : ''}${half} ${hours > 1 ? 'hours' : 'hour'}`;
}
/** A trench in round feet or metres: nobody digs to the inch. */
export const trenchWords = (metres: number, units: Needs['units']): string =>
	units === 'feet' ? `${Math.round(metres / metresPerFoot)} ft` : `${Math.round(metres)} m`;
