import type { Run } from '../cable';
import { count } from './item';
import { material, type Basis } from './goods';
import type { ShoppingItem } from './types';

export interface Joints {
	/** Fixtures tapped onto a run. */
	taps: number;
	/** Branches led off at tees and hubs. */
	branches: number;
	/** Ends of cable beyond which nothing follows. */
	ends: number;
}
/** Joints of a run. At a node of n cables, two go straight through and n − 2 branch off; the supply has terminals. */
export function jointsOf(run: Run): Joints {
	const joints: Joints = { taps: 0, branches: 0, ends: 0 };
	const degree = new Map<string, number>();
	for (const { from, to } of run.segments) for (const id of [from, to]) degree.set(id, (degree.get(id) ?? 0) + 1);
	run.nodes.forEach((node, i) => {
		if (i === 0) return;
		const cables = degree.get(node.id) ?? 0;
		if (node.fixture !== null) joints.taps += 1;
		joints.branches += Math.max(0, cables - 2);
		if (cables === 1) joints.ends += 1;
	});
	return joints;
}
/** One connector to each conductor. */
const perJoint = 2;

/** Connectors and caps; `rollJoints`: joints where one roll ends and the next begins. */
export function connectionItems({ cabling, prices }: Basis, rollJoints: number): ShoppingItem[] {
	const all = cabling.runs.map(jointsOf);
	const sum = (pick: (joints: Joints) => number): number => all.reduce((total, joints) => total + pick(joints), 0);
	const [taps, branches, ends] = [sum((j) => j.taps), sum((j) => j.branches), sum((j) => j.ends)];
	const connectors = perJoint * (taps + branches + rollJoints);
	const parts = [
		taps > 0 ? count(taps, 'fixture') : '',
		branches > 0 ? count(branches, 'branch', 'branches') : '',
		rollJoints > 0 ? count(rollJoints, 'joint between rolls', 'joints between rolls') : ''
	].filter(Boolean);
	const spare = Math.ceil(connectors / 10 / perJoint) * perJoint;
	return [
		...material(
			'connector',
			'connections',
			connectors,
			`Two to a joint, one for each conductor: ${parts.join(', ')}.`,
			prices
		),
		...material('end-cap', 'connections', ends, `One for each end of cable: ${count(ends, 'end')}.`, prices),
		...material(
			'connector',
			'spares',
			spare,
			'One pair to every ten connectors: a joint that went wrong is cut out, not used again.',
			prices,
			{
				id: 'spare-connector',
				name: 'Spare cable connector rated for direct burial'
			}
		)
	];
}
