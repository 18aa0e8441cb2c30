/** An answer in a person's words, for the page of all answers. */
import { dayInWords, hoursInWords } from '../domain/shared/day-words';
import { formatLength } from '../domain/shared/units';
import type { Hours, Season, Units } from '../domain/yard';
import type { Field } from './types';

type Json = Record<string, unknown>;
const isObject = (value: unknown): value is Json =>
	typeof value === 'object' && value !== null && !Array.isArray(value);
const capital = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
const text = (value: unknown) => (typeof value === 'string' || typeof value === 'number' ? String(value) : '');

const winds = ['North', 'North-east', 'East', 'South-east', 'South', 'South-west', 'West', 'North-west'];
/** A bearing as one of eight directions with its degrees. */
export const describeBearing = (degrees: number): string => `${winds[Math.round(degrees / 45) % 8]} (${degrees}°)`;

function point(value: unknown, units: Units): string {
	if (!isObject(value) || typeof value.along !== 'number' || typeof value.out !== 'number') return '';
	const along = `${formatLength(value.along, units)} along`;
	if (value.out === 0) return `${along}, on the front line`;
	return `${along}, ${formatLength(Math.abs(value.out), units)} ${value.out > 0 ? 'out' : 'behind the front'}`;
}
function line(points: readonly unknown[], units: Units, closed: boolean): string {
	const placed = points.filter(isObject).map((p) => [Number(p.along), Number(p.out)] as const);
	const ring = closed && placed[0] ? [...placed, placed[0]] : placed;
	const length = ring
		.slice(1)
		.reduce((sum, [x, y], i) => sum + Math.hypot(x - (ring[i]?.[0] ?? x), y - (ring[i]?.[1] ?? y)), 0);
	return `${placed.length} points, ${formatLength(length, units)} ${closed ? 'round' : 'along them'}`;
}
/** The answer to one field in words; `units` are the person's. Undefined reads "Not answered yet". */
export function describeAnswer(field: Field, value: unknown, units: Units): string {
	if (value === undefined) {
		if (field.kind === 'season') return 'The same all year';
		return field.optional ? 'Left empty' : 'Not answered yet';
	}
	if (value === 'unsure') return 'Not sure';
	switch (field.kind) {
		case 'length':
			return typeof value === 'number' ? formatLength(value, units) : text(value);
		case 'number':
			return `${text(value)} ${field.unit}`;
		case 'count':
		case 'text':
			return text(value);
		case 'choice':
			return field.options.find((option) => option.value === value)?.label ?? String(value);
		case 'bearing':
			return typeof value === 'number' ? describeBearing(value) : text(value);
		case 'point':
			return value === 'none' ? (field.none ?? 'None') : point(value, units);
		case 'spot':
			if (!isObject(value)) return 'Suggest one for me';
			return `${point(value.at, units)}, on a ${text(value.on)}${typeof value.height === 'number' ? `, ${formatLength(value.height, units)} up` : ''}${typeof value.faces === 'number' ? `, looking ${describeBearing(value.faces).toLowerCase()}` : ''}`;
		case 'line':
			return Array.isArray(value) ? line(value, units, field.closed) : '';
		case 'items':
			return Array.isArray(value) && value.length > 0
				? value.map((item: Json) => text(item.name) || text(item.id)).join(', ')
				: field.none;
		case 'rows':
			if (!Array.isArray(value) || value.length === 0) return field.none || 'None';
			return value.map((row: Json) => describeRow(field.columns, row, units)).join('; ');
		case 'place':
			return isObject(value) ? text(value.name) || `${text(value.latitude)}°, ${text(value.longitude)}°` : '';
		case 'hours':
			return capital(hoursInWords(value as Hours));
		case 'season': {
			const { from, to, hours: then } = value as Season;
			return `From ${dayInWords(from)} to ${dayInWords(to)}: ${hoursInWords(then)}`;
		}
		case 'price':
			return isObject(value) ? `${text(value.perKwh)} ${text(value.currency)} for a kilowatt-hour` : '';
	}
}
/** A row reads from its names and kinds to its measures; a yes or no needs its question. */
const describeRow = (columns: readonly Field[], row: Json, units: Units): string =>
	columns
		.filter((column) => row[column.path] !== undefined)
		.map((column) => {
			const words = describeAnswer(column, row[column.path], units);
			const speaksAlone = column.kind === 'text' || (column.kind === 'choice' && typeof row[column.path] === 'string');
			return speaksAlone
				? words
				: `${column.label.toLowerCase()} ${words.replace(/^(Yes|No|Not sure)$/, (word) => word.toLowerCase())}`;
		})
		.join(', ');
