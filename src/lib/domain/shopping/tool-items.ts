import { crossingsOf } from './ground-items';
import { item } from './item';
import type { Basis } from './goods';
import type { ShoppingItem } from './types';

interface Tool {
	id: string;
	name: string;
	why: string;
	needed: boolean;
}
/** Tools for the work at hand, and none beside. Not priced: borrow or own. */
export function toolItems(basis: Basis): ShoppingItem[] {
	const { site, fixtures, cabling } = basis;
	const runs = cabling.runs.length > 0;
	const crossed = crossingsOf(basis).map(({ crossing }) => crossing.kind);
	const wallWork = cabling.supply?.on === 'wall' || fixtures.some((fixture) => fixture.mount === 'surface');
	const some = fixtures.length > 0;
	const nearTrees = site.trees.length > 0;
	const tools: Tool[] = [
		{
			id: 'tape',
			name: 'Long tape measure, 30 m (100 ft)',
			why: 'to set out along and out from the left front corner',
			needed: some || runs
		},
		{
			id: 'flags',
			name: 'Marking flags or pegs',
			why: 'one where each fixture goes and at each turn of the trench',
			needed: some || runs
		},
		{ id: 'spade', name: 'Trenching spade or narrow spade', why: 'to open the trench', needed: runs },
		{ id: 'hand-trowel', name: 'Hand trowel', why: 'to dig by hand near marks and roots', needed: runs && nearTrees },
		{
			id: 'bore',
			name: 'Water-jet or hammer bore for 20 mm (3/4 in) conduit',
			why: 'to take a sleeve under paving without cutting it',
			needed: crossed.includes('bore')
		},
		{
			id: 'joint-tool',
			name: 'Joint rake or strip puller',
			why: 'to lift the strip out of the expansion joint',
			needed: crossed.includes('joint')
		},
		{ id: 'cutter', name: 'Cable cutter and stripper', why: 'for clean, square ends', needed: runs },
		{ id: 'screwdrivers', name: 'Insulated screwdrivers', why: 'for connectors and terminals', needed: runs },
		{
			id: 'meter',
			name: 'Multimeter, true RMS',
			why: 'to measure volts at each lamp on the first night',
			needed: runs
		},
		{ id: 'level', name: 'Spirit level', why: 'to hang the transformer upright and set heads plumb', needed: some },
		{ id: 'drill', name: 'Drill with masonry bit and dust shroud', why: 'for anchors in the wall', needed: wallWork },
		{
			id: 'eyes',
			name: 'Eye protection and work gloves',
			why: 'for drilling, driving and digging',
			needed: some || runs
		},
		{ id: 'mask', name: 'Dust mask for fine dust', why: 'masonry dust is silica', needed: wallWork },
		{ id: 'torch', name: 'Head torch', why: 'to see your hands while you aim after dark', needed: some }
	];
	return tools
		.filter((tool) => tool.needed)
		.map(({ id, name, why }) =>
			item({
				id: `tool-${id}`,
				group: 'tools',
				name,
				quantity: 1,
				unit: 'each',
				price: 0,
				why: `Borrow or own: ${why}.`
			})
		);
}
