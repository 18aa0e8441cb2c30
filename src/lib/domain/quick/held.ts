/** Answers brought within what a home can have, so that any answers whatever give a valid yard. */
import type { QuickAnswers } from './types';

/** Metres and counts; a yard's own limits (`yard/schema.ts`) are wider. */
const most = { walk: 120, drive: 120, wall: 60, trees: 8, receptacle: 50, cable: 1000 } as const;
/** Below this a walk, an edge or a wall is a slip of the finger: taken as none, metres. */
const least = 1;
const kept = <T>(value: T, options: readonly T[]): T => (options.includes(value) ? value : options[0]!);

const length = (value: number, highest: number): number =>
	Number.isFinite(value) && value >= least ? Math.min(value, highest) : 0;
const count = (value: number): number =>
	Number.isFinite(value) ? Math.min(most.trees, Math.max(0, Math.round(value))) : 0;

/** Answers with every length and count within limits, each keep-clear once, in an order of ours. Metres. */
export function held(answers: QuickAnswers): QuickAnswers {
	const { trees, receptacle, transformer, cable, clear } = answers;
	return {
		...answers,
		units: kept(answers.units, ['feet', 'metres']),
		walk: length(answers.walk, most.walk),
		drive: length(answers.drive, most.drive),
		wall: length(answers.wall, most.wall),
		trees: { small: count(trees.small), medium: count(trees.medium), large: count(trees.large) },
		receptacle: Number.isFinite(receptacle) ? Math.min(most.receptacle, Math.max(0.5, receptacle)) : 3,
		shape: kept(answers.shape, ['straight', 'bent', 'corner', 'deep']),
		clear: (['pool', 'neighbour', 'street-lamp', 'drive-crossing'] as const).filter((one) => clear.includes(one)),
		transformer: transformer !== null && transformer >= 20 && transformer <= 2000 ? transformer : null,
		cable:
			cable !== null && Number.isFinite(cable.size) && cable.metres > 0
				? { size: cable.size, metres: Math.min(most.cable, cable.metres) }
				: null,
		lamp: kept(answers.lamp, ['led', 'halogen'])
	};
}
