import type { Line } from '../shared/geometry';
import { turns } from '../shared/geometry';
import { rules } from '../shared/rules';

export interface Bend {
	/** Metres along the centre line. */
	at: number;
	/** Degrees, positive to the right. */
	turn: number;
}
const least = rules['path.first'].figures.bend;
/** On a curve, the metres within which a turn adds up to one bend. */
const reach = 2;

/** Bends of more than 30° (rule path.first). `curved`: the line is a flattened curve, its turn is spread over many points. */
export function bendsOf(line: Line, curved: boolean): Bend[] {
	const all = turns(line);
	// A polygon of 10 mm chords lands on the threshold by rounding: 30° exactly is not over 30°.
	const over = (turn: number): boolean => Math.abs(turn) > least + 1e-6;
	return curved ? sweeps(all).filter((bend) => over(bend.turn)) : all.filter((bend) => over(bend.turn));
}
/** Stretches in which any window of `reach` metres turns, one way, by more than the threshold; each is one bend. */
function sweeps(all: readonly Bend[]): Bend[] {
	const tight = all.map(() => false);
	for (let i = 0; i < all.length; i++) {
		let sum = 0;
		for (let j = i; j < all.length && all[j]!.at - all[i]!.at <= reach; j++) {
			if (Math.sign(all[j]!.turn) !== Math.sign(all[i]!.turn)) break;
			sum += all[j]!.turn;
			if (Math.abs(sum) > least) for (let k = i; k <= j; k++) tight[k] = true;
		}
	}
	const found: Bend[] = [];
	let moment = 0;
	all.forEach((bend, i) => {
		if (!tight[i]) return;
		const open = found.at(-1);
		if (i > 0 && tight[i - 1] && open && Math.sign(open.turn) === Math.sign(bend.turn)) {
			open.turn += bend.turn;
			moment += bend.turn * bend.at;
		} else {
			found.push({ ...bend });
			moment = bend.turn * bend.at;
		}
		// Where the turning is centred, not where it begins.
		const current = found.at(-1)!;
		current.at = moment / current.turn;
	});
	return found;
}
