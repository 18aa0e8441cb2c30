/** A layout as the engine reads it: lights set by hand in a yard that asks for none. What cannot be taken is said. */
import { distanceToPolygon, distance, nearestOnSegment } from '../../shared/geometry';
import { distanceToStrip, type Site } from '../../site';
import { limits, type AddedFixture, type Yard } from '../../yard';
import { techniqueOf } from './make';
import { mostLights, type Exercise, type Layout, type LayoutLight, type LayoutSupply, type LightKind } from './types';

export interface PlacedLayout {
	yard: Yard;
	/** Id in the plan of each light of the layout; null where it could not be taken. */
	ids: (string | null)[];
	problems: string[];
	/** The transformer was told, in a way that can be taken. */
	supplyTold: boolean;
}
/** Heights that the yard's answers take, metres. */
const highest = 4;
/** This near to a wall a transformer hangs on it, else on a post, metres. */
const onWall = 0.5;

const isPlace = ({ along, out }: { along: number; out: number }): boolean =>
	[along, out].every((metres) => Number.isFinite(metres) && Math.abs(metres) <= limits.reach);
/** To the micrometre: what is shown in a working is then what it is worked out from. */
const exact = (metres: number): number => Number(metres.toFixed(6));

/** What a light of that kind lights: the nearest of them; null when the yard has none. */
function targetOf(site: Site, kind: LightKind, light: LayoutLight): AddedFixture['target'] | null {
	const at = { x: light.along, y: light.out };
	const nearest = <T extends { id: string }>(list: readonly T[], away: (one: T) => number): string | null =>
		list.toSorted((a, b) => away(a) - away(b))[0]?.id ?? null;
	const strips = site.strips.filter((strip) => strip.kind === (kind === 'path' ? 'walk' : 'drive'));
	const found =
		kind === 'tree'
			? nearest(site.trees, (tree) => distance(tree.at, at))
			: kind === 'wall'
				? nearest(
						site.walls.filter(({ front, length }) => front && length > 0),
						(wall) => nearestOnSegment(at, wall.from, wall.to).distance
					)
				: nearest(strips, (strip) => distanceToStrip(at, strip));
	const targetKind = ({ path: 'walk', tree: 'tree', drive: 'drive', wall: 'wall' } as const)[kind];
	return found === null ? null : { kind: targetKind, id: found };
}
const kindNames: Readonly<Record<LightKind, string>> = { path: 'walk', tree: 'tree', drive: 'drive', wall: 'wall' };

function supplyOf({ along, out, height, voltAmps }: LayoutSupply, site: Site, problems: string[]) {
	if (!isPlace({ along, out })) {
		problems.push('The transformer’s place is no place in the yard. Write how far along and how far out it hangs.');
		return null;
	}
	const raw = height ?? undefined;
	const held = raw === undefined || Number.isFinite(raw) ? raw : undefined;
	if (held !== undefined && (held < 0 || held > highest))
		problems.push('The transformer’s height is out of all reach; it is marked at the nearest height that could be.');
	const size = voltAmps ?? undefined;
	const isSize = size === undefined || (size >= 20 && size <= 2000);
	if (!isSize) problems.push('Transformers come from 20 to 2000 VA; the size written was left out.');
	const at = { x: along, y: out };
	const near =
		Math.min(...site.walls.map((wall) => nearestOnSegment(at, wall.from, wall.to).distance)) <= onWall ||
		distanceToPolygon(at, site.house) < 0;
	return {
		transformer: {
			at: { along: exact(along), out: exact(out) },
			on: near ? ('wall' as const) : ('post' as const),
			...(held === undefined ? {} : { height: Math.min(highest, Math.max(0, held)) })
		},
		...(size !== undefined && isSize ? { circuit: { transformerVoltAmps: size } } : {})
	};
}

/** Pure and total: any numbers, any count. */
export function placeLayout({ bare, empty, own }: Exercise, { lights, supply }: Layout): PlacedLayout {
	const problems: string[] = [];
	const added: AddedFixture[] = [];
	const ids = lights.map((light, index): string | null => {
		const name = `Light ${index + 1}`;
		if (index >= mostLights) return null;
		if (!isPlace(light)) {
			problems.push(`${name} stands at no place in the yard. Write how far along and how far out it is.`);
			return null;
		}
		const target = targetOf(empty.site, light.kind, light);
		if (!target) {
			problems.push(`${name} is for a ${kindNames[light.kind]}, and this yard has none.`);
			return null;
		}
		const technique = techniqueOf[light.kind];
		const model = own.fixtures.find((one) => one.technique === technique)?.model;
		const id = `l${index + 1}`;
		added.push({
			id,
			target,
			technique,
			at: { along: exact(light.along), out: exact(light.out) },
			...(model === undefined ? {} : { model })
		});
		return `added/${id}`;
	});
	if (lights.length > mostLights)
		problems.push(
			`That is ${lights.length} lights. The first ${mostLights} are marked; a yard this small wants a dozen or so.`
		);
	const told = supply && supplyOf(supply, empty.site, problems);
	return {
		yard: { ...bare, power: { ...bare.power, ...told }, fixtures: { added } },
		ids,
		problems,
		supplyTold: Boolean(told)
	};
}
