/** Reasons of a light set by hand: yours first, then those of the plan's that still hold for it. */
import type { RuleId } from '../../shared/rules';
import { reason } from '../reasons';
import type { HandMark, Reason } from '../types';

/** Rules that say why a light stands just there. */
const ofPlace: readonly RuleId[] = [
	'tree.offset',
	'tree.skirt',
	'tree.beam',
	'tree.aim',
	'path.first',
	'path.spacing',
	'path.setback',
	'path.level',
	'path.head',
	'path.meet',
	'drive.mouth',
	'drive.spacing',
	'drive.setback',
	'wall.setback',
	'wall.spacing',
	'wall.openings',
	'wall.gable',
	'wall.porch',
	'wall.level',
	'bed.spacing',
	'bed.inset',
	'seat.light',
	'number.light',
	'number.sign',
	'place.clear',
	'water.clear'
];
const ofAim: readonly RuleId[] = ['tree.aim', 'tree.beam', 'wall.gable'];
const ofLamp: readonly RuleId[] = [
	'tree.beam',
	'tree.well',
	'wall.level',
	'path.level',
	'path.head',
	'path.meet',
	'bed.spacing',
	'number.sign'
];

const words: Readonly<Record<HandMark, string>> = {
	moved: 'You moved it here.',
	pinned: 'You pinned it here: it stays when other answers change.',
	turned: 'You turned it.',
	lamp: 'You chose its lamp.',
	added: 'You added it.'
};
export const placedReason = (marks: readonly HandMark[]): Reason =>
	reason('hand.placed', null, '', marks.map((mark) => words[mark]).join(' '));

export function keptReasons(
	reasons: readonly Reason[],
	{ marks, moved }: { marks: readonly HandMark[]; moved: boolean }
): Reason[] {
	const gone: readonly string[] = [
		...(moved ? ofPlace : []),
		...(marks.includes('turned') ? ofAim : []),
		...(marks.includes('lamp') ? ofLamp : [])
	];
	return reasons.filter(({ rule }) => !gone.includes(rule));
}
