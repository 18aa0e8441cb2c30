import { formatLength } from '../shared/units';
import { placedCrossings, type SegmentCrossing } from '../cable';
import { count } from './item';
import { material, type Basis } from './goods';
import type { ShoppingItem } from './types';

/** Length in which conduit is sold, and how far a sleeve stands out past each edge of the paving, metres. */
const sleeve = { length: 3, beyond: 0.15 } as const;
/** A joint 13 mm wide filled 75 mm deep, sand 1600 kg/m³: from memory. */
const sandPerMetre = 0.013 * 0.075 * 1600;
const bag = 20;
/** A hole 250 mm across with 150 mm of gravel under the fixture, 1500 kg/m³; a post's footing takes one bag. From memory. */
const gravelPerWell = Math.PI * 0.125 ** 2 * 0.15 * 1500;
const tapeRoll = 30;
const pinEvery = 1.5;

export interface Crossed {
	crossing: SegmentCrossing;
	runs: string[];
}
/** Crossings to make or fill, each once, however many cables go through it. */
export function crossingsOf({ cabling }: Pick<Basis, 'cabling'>): Crossed[] {
	const found = new Map<string, Crossed>();
	for (const run of cabling.runs)
		for (const { path, crossings } of run.segments)
			for (const { crossing, place } of placedCrossings(path, crossings)) {
				const known = found.get(place);
				if (!known) found.set(place, { crossing, runs: [run.name] });
				else if (!known.runs.includes(run.name)) known.runs.push(run.name);
			}
	return [...found.values()];
}

/** What goes into the ground beside cable. */
export function groundItems(basis: Basis): ShoppingItem[] {
	const { site, fixtures, cabling, prices } = basis;
	const length = (metres: number): string => formatLength(metres, site.units);
	const nameOf = (id: string): string => site.strips.find((strip) => strip.id === id)?.name ?? id;
	const crossed = crossingsOf(basis);
	const bores = crossed.filter(({ crossing }) => crossing.kind === 'bore');
	const joints = crossed.filter(({ crossing }) => crossing.kind === 'joint');
	const said = (list: readonly Crossed[]): string =>
		list.map(({ crossing }) => `${nameOf(crossing.strip)} ${length(crossing.length)}`).join(', ');
	const sleeves = bores.reduce(
		(sum, { crossing }) => sum + Math.ceil((crossing.length + 2 * sleeve.beyond) / sleeve.length - 1e-9),
		0
	);
	const jointMetres = joints.reduce((sum, { crossing }) => sum + crossing.length, 0);
	const trench = cabling.supply?.route?.trench ?? 0;
	const wells = fixtures.filter((fixture) => fixture.mount === 'flush').length;
	const posts = cabling.supply?.on === 'post' ? 1 : 0;
	const gravel = Math.ceil((wells * gravelPerWell) / bag - 1e-9) + posts;
	const gravelFor = [
		wells > 0 ? `a bed under ${count(wells, 'flush fixture')}, about ${gravelPerWell.toFixed(0)} kg each` : '',
		posts > 0 ? 'a bag for the foot of the post' : ''
	]
		.filter(Boolean)
		.join(', and ');
	return [
		...material(
			'sleeve',
			'crossing',
			sleeves,
			`For cable under paving: ${said(bores)}, each ${length(sleeve.beyond)} longer at both ends. Leave it in for the next cable.`,
			prices
		),
		...material(
			'joint-sand',
			'crossing',
			Math.ceil((jointMetres * sandPerMetre) / bag - 1e-9),
			`To fill the joint over the cable: ${said(joints)}, about ${sandPerMetre.toFixed(1)} kg to a metre.`,
			prices
		),
		...material(
			'marker-tape',
			'crossing',
			Math.ceil(trench / tapeRoll - 1e-9),
			`Half-way down over the cable: ${length(trench)} of trench. Cables that share a trench share the tape.`,
			prices
		),
		...material(
			'cable-pin',
			'crossing',
			Math.ceil(trench / pinEvery - 1e-9),
			`One to every ${length(pinEvery)} of trench, to hold the cable down while you fill.`,
			prices
		),
		...material('gravel', 'fixtures', gravel, `Drainage: ${gravelFor}.`, prices)
	];
}
