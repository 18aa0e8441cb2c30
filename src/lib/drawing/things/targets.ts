/** What a light is for, by name. */
import type { Fixture } from '../../domain/placement';
import type { Site } from '../../domain/site';
import type { Yard } from '../../domain/yard';

type Target = Fixture['target'];
/** Name of what a light is for; empty for one that is for nothing in particular. */
export function targetName(yard: Yard, site: Site, { kind, id }: Target): string {
	switch (kind) {
		case 'tree':
			return nameIn(yard.trees, id, 'tree');
		case 'wall':
			return site.walls.find((wall) => wall.id === id)?.name.trim() || 'garden wall';
		case 'walk':
			return nameIn(yard.walks, id, 'walk');
		case 'drive':
			return nameIn(yard.drives, id, 'drive');
		case 'steps':
			return `steps on ${yard.walks?.find(({ steps }) => steps?.some((one) => one.id === id))?.name.trim() || 'the walk'}`;
		case 'bed':
			return nameIn(yard.spots.beds, id, 'bed');
		case 'seating':
			return nameIn(yard.spots.seating, id, 'seating place');
		case 'number':
			return nameIn(yard.spots.numbers, id, 'house number');
		case 'added':
			return '';
	}
}
const nameIn = (list: readonly { id: string; name?: string }[] | undefined, id: string, kind: string): string =>
	list?.find((one) => one.id === id)?.name?.trim() || kind;
