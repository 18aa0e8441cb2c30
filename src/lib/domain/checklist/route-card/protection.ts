import { nearestOnLine, type Line } from '../../shared/geometry';
import { rules } from '../../shared/rules';
import { formatLength } from '../../shared/units';
import type { SegmentCrossing } from '../../cable';
import type { Site } from '../../site';
import { calledThe } from '../../yard';
import type { LegCrossing } from './types';

const depth = rules['cable.depth'].figures;

interface Protected {
	cover: number | null;
	protection: string;
	crossing: LegCrossing | null;
	findings: string[];
}
/** Rule cable.depth and cable.crossing for a stretch under paving. `shared`: a cable before it took this way. */
export function underPaving(told: SegmentCrossing, shared: boolean, site: Site): Protected {
	const strip = site.strips.find(({ id }) => id === told.strip);
	const isDrive = strip?.kind === 'drive';
	const least = isDrive ? depth.drive : depth.lawn;
	const by = formatLength(least, site.units);
	const crossing: LegCrossing = {
		strip: told.strip,
		under: calledThe(strip?.name ?? '', strip?.kind ?? 'paving'),
		kind: told.kind,
		declared: told.crossing !== null,
		shared
	};
	const drive = isDrive ? ['cable.drive-depth'] : [];
	if (told.kind === 'joint') {
		const protection = `On the bottom of the joint, the strip flush over it, sand in the gaps. Shallower than the ${by} of the table: ask the authority.`;
		return { cover: null, protection, crossing, findings: ['cable.joint-shallow'] };
	}
	if (told.kind === 'sleeve') {
		const check = isDrive ? `: check that it lies ${by} down` : '';
		return { cover: null, protection: `In the sleeve that is there${check}.`, crossing, findings: drive };
	}
	const bore = crossing.declared ? [] : ['cable.bore-needed'];
	const protection = `In a conduit bored under it, at least ${by} down.`;
	return { cover: least, protection, crossing, findings: [...bore, ...drive] };
}
/** Rule cable.depth in lawn and beds. */
export function inOpenGround(site: Site): Protected {
	const protection = `${formatLength(depth.lawn, site.units)} of cover.`;
	return { cover: depth.lawn, protection, crossing: null, findings: [] };
}
/** Trees within whose root zone a stretch runs. */
export const rootsOn = (path: Line, site: Site): string[] =>
	site.trees
		.filter((tree) => (nearestOnLine(tree.at, path)?.distance ?? Infinity) < tree.rootRadius)
		.map((tree) => calledThe(tree.name, 'tree'));
