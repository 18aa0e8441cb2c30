/** The rules by what they are about, in the order of the work. */
import { rules, type Rule } from '$lib/domain/shared/rules';

const parts: readonly [title: string, prefixes: readonly string[]][] = [
	['Trees', ['tree']],
	['Walls', ['wall']],
	['Walks', ['path']],
	['Drives', ['drive']],
	['Beds, seats, numbers and signs', ['bed', 'seat', 'number']],
	['Where a lamp may stand', ['place', 'water', 'existing', 'hand']],
	['The light itself', ['light', 'spill', 'glare', 'warm', 'lamp']],
	['A limit to keep to', ['budget']],
	['Transformer', ['supply']],
	['Cable', ['cable', 'ground']],
	['Sensor and hours', ['sensor', 'hours']],
	['Digging', ['dig']],
	['At the counter', ['shop']]
];
export interface Group {
	id: string;
	title: string;
	list: Rule[];
}
const prefixOf = ({ id }: Rule): string => id.split('.')[0] ?? '';
const known = new Set(parts.flatMap(([, prefixes]) => prefixes));

/** A prefix that no group knows makes a group of its own name, so that no rule is left out. */
export function groupsOf(all: readonly Rule[]): Group[] {
	const strange = [...new Set(all.map(prefixOf).filter((prefix) => !known.has(prefix)))];
	return [...parts, ...strange.map((prefix) => [prefix, [prefix]] as const)]
		.map(([title, prefixes]) => ({
			id: `part-${title.toLowerCase().replaceAll(' ', '-')}`,
			title,
			list: all.filter((rule) => prefixes.includes(prefixOf(rule)))
		}))
		.filter(({ list }) => list.length > 0);
}
export const groups: readonly Group[] = groupsOf(Object.values<Rule>(rules));
