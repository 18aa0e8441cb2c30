import { rules } from '../../shared/rules';
import { formatLength } from '../../shared/units';
import type { Site } from '../../site';
import type { RouteLine } from './types';

/** What to watch for on the whole card, the gravest first. */
export function cautionsOf(lines: readonly RouteLine[], site: Site): string[] {
	const length = (metres: number) => formatLength(metres, site.units);
	const legs = lines.flatMap((line) => line.legs);
	const { tolerance } = rules['dig.notice'].figures;
	const trees = [...new Set(legs.flatMap((leg) => leg.roots))];
	const roots = `${trees.slice(0, -1).join(', ')}${trees.length > 1 ? ' and ' : ''}${trees.at(-1) ?? ''}`;
	const bored = legs.some((leg) => leg.crossing?.kind === 'bore' && !leg.crossing.shared);
	return [
		`Call the dig-notice service (811 in the US) two full working days before you dig. Within ${length(tolerance)} of a mark use hand tools only. Private lines are not marked: find those yourself.`,
		...(trees.length > 0
			? [
					`Among the roots of ${roots} dig by hand, and go round roots over ${length(rules['tree.roots'].figures.keepRoot)}.`
				]
			: []),
		...(bored ? ['Bore only where the marks show nothing, from a pit on each side.'] : [])
	];
}
