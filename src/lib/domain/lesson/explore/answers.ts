/** An answer of the yard by its path; items of lists go by their ids. */
import type { Yard } from '../../yard';

export type Path = readonly string[];
type Bag = Readonly<Record<string, unknown>>;

const isBag = (value: unknown): value is Bag => typeof value === 'object' && value !== null && !Array.isArray(value);
const bears = (id: string) => (item: unknown) => isBag(item) && item['id'] === id;

/** What is told at a path; undefined where nothing is. */
export function toldAt(from: unknown, path: Path): unknown {
	const [key, ...rest] = path;
	if (key === undefined) return from;
	if (Array.isArray(from)) return toldAt(from.find(bears(key)), rest);
	return isBag(from) ? toldAt(from[key], rest) : undefined;
}
function changed(from: unknown, path: Path, value: unknown): unknown {
	const [key, ...rest] = path;
	if (key === undefined) return value;
	if (Array.isArray(from)) return from.map((item: unknown) => (bears(key)(item) ? changed(item, rest, value) : item));
	if (!isBag(from)) return from;
	const next = changed(from[key], rest, value);
	if (next !== undefined) return { ...from, [key]: next };
	const { [key]: _, ...others } = from;
	return others;
}
/** The yard with that told at a path, whose last step alone may be new; undefined takes it back. All else stays the very same. */
export const withTold = (yard: Yard, path: Path, value: unknown): Yard => changed(yard, path, value) as Yard;
