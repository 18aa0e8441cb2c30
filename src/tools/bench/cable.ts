import { layCable } from '../../lib/domain/cable';
import { optimum, smallCase } from '../../lib/domain/cable/optimum.testing';
import { randomGround } from '../../lib/domain/cable/random.testing';
import { improveTree, searchTree } from '../../lib/domain/cable/tree';
import { blankYard } from '../../lib/domain/yard';
import { medianMs, type Row } from './measure';

const yard = blankYard();

/** Routes, runs and supply on seeded ground: house, bent walk, drive, trees, water; 30 and 200 fixtures. */
const whole = (): Row[] =>
	[30, 200].map((count) => {
		const { site, fixtures } = randomGround(11, count);
		// A site of its own each time: what is kept with one would not be there for a yard just changed.
		const lay = () => layCable({ ...site }, fixtures, yard);
		return { name: `cable.${count}`, value: medianMs(lay, count > 100 ? 15 : 60), unit: 'ms' };
	});

/** One of 30 fixtures moved by a step at a time, round and round, everything laid anew at each. */
function drag(): Row {
	const { site, fixtures } = randomGround(11, 30);
	const { at } = fixtures[7]!;
	let step = 0;
	const move = () => {
		const angle = (step++ * Math.PI) / 20;
		const moved = { ...fixtures[7]!, at: { x: at.x + Math.cos(angle), y: at.y + Math.sin(angle) } };
		return layCable(
			{ ...site },
			fixtures.map((fixture, k) => (k === 7 ? moved : fixture)),
			yard
		);
	};
	return { name: 'cable.drag', value: medianMs(move, 80), unit: 'ms' };
}

/** How far what is shared out costs above the proven optimum, percent, on seeded yards of 6 to 12 fixtures. */
function gaps(): Row[] {
	const found: number[] = [];
	for (let seed = 1; found.length < 60; seed++) {
		const one = smallCase(seed);
		if (!one) continue;
		const { input, tree, rest } = one;
		const { cost } = searchTree(input, improveTree(input, tree));
		found.push(100 * (cost / optimum({ ...input, nodes: rest, runs: 1 }, 'runs') - 1));
	}
	return [
		{ name: 'cable.gap.mean', value: found.reduce((sum, gap) => sum + gap, 0) / found.length, unit: '%' },
		{ name: 'cable.gap.worst', value: Math.max(...found), unit: '%' }
	];
}

export const rows = (): Row[] => [...whole(), drag(), ...gaps()];
