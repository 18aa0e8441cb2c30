import type { PathMark } from './marks';

/** A thin line in the ink of the house, unless `of` has it otherwise. */
export const pathMark = (key: string, d: string, of: Partial<PathMark>): PathMark => ({
	kind: 'path',
	key,
	d,
	ink: 'house',
	weight: 1,
	fill: 'none',
	...of
});
