import type { Fixture } from './types';
import type { Placed } from './drafting';

const letters: Record<Fixture['target']['kind'], string> = {
	tree: 'T',
	wall: 'W',
	walk: 'P',
	drive: 'D',
	steps: 'S',
	bed: 'B',
	seating: 'C',
	number: 'N',
	added: 'L'
};

/**
 * Gives every fixture its letter and number and puts them in the order of walking: along the ways from the street, the
 * rest from the street to the house and from left to right.
 */
export function labelled(placed: readonly Placed[]): Fixture[] {
	const sorted = [...placed].sort((a, b) => {
		if (a.order && b.order)
			return a.order.strip - b.order.strip || a.order.at - b.order.at || a.fixture.at.x - b.fixture.at.x;
		if (a.order || b.order) return a.order ? -1 : 1;
		return b.fixture.at.y - a.fixture.at.y || a.fixture.at.x - b.fixture.at.x;
	});
	const counts = new Map<string, number>();
	return sorted.map(({ fixture }) => {
		const letter = letters[fixture.target.kind];
		const n = (counts.get(letter) ?? 0) + 1;
		counts.set(letter, n);
		return { ...fixture, label: `${letter}${n}` };
	});
}
