/** What is kept of a customer in this browser until the next one comes, as text; and reading it back, whatever it has become. */
import type { KeepClear, QuickAnswers, Shape } from '$lib/domain/quick';

export interface Kept {
	answers: QuickAnswers;
	/** Which way to meet the needs was taken, by `nameOfBuys`; null: the cheapest. */
	taken: string | null;
}
const shapes: readonly Shape[] = ['straight', 'bent', 'corner', 'deep'];
const clears: readonly KeepClear[] = ['pool', 'neighbour', 'street-lamp', 'drive-crossing'];
/** No pick comes near: what is longer was not written by this page. Metres, lamps, watts, volt-amperes. */
const longest = 500;
const most = 2000;

const isRecord = (value: unknown): value is Record<string, unknown> =>
	typeof value === 'object' && value !== null && !Array.isArray(value);
const isLength = (value: unknown): value is number => typeof value === 'number' && value >= 0 && value <= longest;
const isAmount = (value: unknown): value is number => typeof value === 'number' && value > 0 && value <= most;
const isCount = (value: unknown): value is number => Number.isInteger(value) && isLength(value);
const isOneOf = <T extends string>(all: readonly T[], value: unknown): value is T => all.some((one) => one === value);

const isTrees = (value: unknown): value is QuickAnswers['trees'] =>
	isRecord(value) && [value['small'], value['medium'], value['large']].every(isCount);
const isHalogens = (value: unknown): value is QuickAnswers['halogens'] =>
	value === null || (isRecord(value) && isCount(value['count']) && value['count'] > 0 && isAmount(value['watts']));
const isCable = (value: unknown): value is QuickAnswers['cable'] =>
	value === null || (isRecord(value) && isAmount(value['size']) && isLength(value['metres']));

function answersOf(value: Record<string, unknown>): QuickAnswers | null {
	const { units, walk, drive, trees, wall, receptacle, shape, clear, halogens, transformer, cable, lamp } = value;
	if (!isOneOf(['feet', 'metres'], units) || !isOneOf(shapes, shape) || !isOneOf(['led', 'halogen'], lamp)) return null;
	if (!isLength(walk) || !isLength(drive) || !isLength(wall) || !isLength(receptacle)) return null;
	if (!Array.isArray(clear) || !clear.every((one) => isOneOf(clears, one))) return null;
	if (!isTrees(trees) || !isHalogens(halogens) || !isCable(cable)) return null;
	if (transformer !== null && !isAmount(transformer)) return null;
	return {
		units,
		walk,
		drive,
		trees,
		wall,
		receptacle,
		shape,
		clear: [...new Set(clear)],
		halogens,
		transformer,
		cable,
		lamp
	};
}
/** Null: not what `written` wrote (an older page, another hand), so the survey starts anew. */
export function readKept(text: string | null): Kept | null {
	if (text === null) return null;
	try {
		const value: unknown = JSON.parse(text);
		if (!isRecord(value) || !isRecord(value['answers'])) return null;
		const answers = answersOf(value['answers']);
		const taken = value['taken'];
		return answers && { answers, taken: typeof taken === 'string' ? taken : null };
	} catch {
		// No JSON: the same as nothing kept.
		return null;
	}
}
export const written = (kept: Kept): string => JSON.stringify(kept);
