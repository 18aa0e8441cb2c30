/** What every input is made of. */
import { formatLength, type UnitSystem } from '../../shared/units';
import type { Yard } from '../../yard';
import { toldAt, withTold, type Path } from './answers';
import { rangeOf, type Range } from './schema-range';
import { lengthStops, numberStops, roundPlace, roundSize } from './stops';
import type { YardInput } from './types';

type Schema = Parameters<typeof rangeOf>[0];
/** Where an input is told, and of what. */
export interface Spot {
	yard: Yard;
	units: UnitSystem;
	/** `the corner linden` */
	of: string;
	about: string;
}
interface Parts extends Pick<YardInput, 'label' | 'kind' | 'unit' | 'times' | 'start' | 'stops' | 'text'>, Range {
	id: string;
	path: Path;
	/** What is told at the path for a value. */
	tell: (value: number, yard: Yard) => unknown;
}
/** An input from its parts. With its start the very answer comes back that the yard had. */
export function inputOf({ yard, of, about }: Spot, { path, tell, ...parts }: Parts): YardInput {
	const was = toldAt(yard, path);
	const { start, least, most } = parts;
	return {
		...parts,
		of,
		about,
		put(to, value) {
			// What the plan takes may lie beyond what can be told.
			if (value === start) return withTold(to, path, was);
			return withTold(to, path, tell(Math.min(most, Math.max(least, value)), to));
		}
	};
}
/** What is taken by the plan where the answer is no number. */
const startAt = ({ yard }: Spot, path: Path, taken: number): number => {
	const told = toldAt(yard, path);
	return typeof told === 'number' ? told : taken;
};

/** A length that is one answer. `taken`: what the plan goes by; null where it goes by none: then there is no input. */
export function lengthInput(
	spot: Spot,
	path: Path,
	label: string,
	schema: Schema,
	taken: number | null,
	way: 'size' | 'place' = 'size'
): YardInput[] {
	if (taken === null) return [];
	const range = rangeOf(schema);
	const start = startAt(spot, path, taken);
	const window = way === 'size' ? roundSize(start, range) : roundPlace(start, range);
	return [
		inputOf(spot, {
			id: path.join('.'),
			path,
			label,
			kind: 'length',
			unit: '',
			times: 1,
			start,
			...range,
			stops: lengthStops(start, window, spot.units),
			text: (value) => formatLength(value, spot.units),
			tell: (value) => value
		})
	];
}
/** Both coordinates of a point that is told. */
export const pointInputs = (spot: Spot, path: Path, schema: { along: Schema; out: Schema }): YardInput[] => {
	if (typeof toldAt(spot.yard, [...path, 'along']) !== 'number') return [];
	return [
		...lengthInput(spot, [...path, 'along'], 'Along the house, from its left corner', schema.along, 0, 'place'),
		...lengthInput(spot, [...path, 'out'], 'Out from the house, towards the street', schema.out, 0, 'place')
	];
};

const plain = (value: number): string => String(Number(value.toFixed(4))).replace('-', '−');
/** A number that is one answer, with its unit. */
export function numberInput(
	spot: Spot,
	path: Path,
	label: string,
	{
		range,
		unit,
		taken,
		window = range,
		whole = false
	}: { range: Range; unit: string; taken: number; window?: Range; whole?: boolean }
): YardInput {
	const start = startAt(spot, path, taken);
	const stops = numberStops(start, window);
	return inputOf(spot, {
		id: path.join('.'),
		path,
		label,
		kind: 'number',
		unit,
		times: 1,
		start,
		...range,
		stops: whole ? [...new Set([...stops.map(Math.round), start])].toSorted((a, b) => a - b) : stops,
		text: (value) => (unit === '°' ? `${plain(value)}°` : unit ? `${plain(value)} ${unit}` : plain(value)),
		tell: (value) => (whole ? Math.round(value) : value)
	});
}
/** One of a list: `values` are what the slider stands at, `text` what each is. */
export const listInput = (
	spot: Spot,
	path: Path,
	id: string,
	label: string,
	values: readonly number[],
	start: number,
	text: (value: number) => string,
	tell: (value: number, yard: Yard) => unknown
): YardInput[] => {
	const stops = [...new Set([...values, start])].toSorted((a, b) => a - b);
	const nearest = (value: number) =>
		stops.reduce((best, one) => (Math.abs(one - value) < Math.abs(best - value) ? one : best), start);
	if (stops.length < 2) return [];
	return [
		inputOf(spot, {
			id,
			path,
			label,
			kind: 'list',
			unit: '',
			times: 1,
			start,
			least: stops[0]!,
			most: stops.at(-1)!,
			stops,
			text,
			tell: (value, yard) => tell(nearest(value), yard)
		})
	];
};
