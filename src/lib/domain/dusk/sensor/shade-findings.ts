/** What is said of the shade a sensor hangs in: rule sensor.shade. */
import type { Finding } from '../../shared/findings';
import { rules } from '../../shared/rules';
import { formatLength } from '../../shared/units';
import type { Site } from '../../site';
import { areaWords } from '../../site';
import { calledThe } from '../../yard';
import { isSheltered, type Faults } from './faults';
import type { Weighed } from './view';
import { partWords, shiftWords, takenWords } from './words';

type Say = (code: string, rank: Finding['rank'], message: string) => Finding;
const say: Say = (code, rank, message) => ({
	code: `dusk.sensor-${code}`,
	rank,
	message,
	about: { kind: 'power', id: 'sensor' },
	rule: 'sensor.shade'
});
/** Whether it is early or late by more than the rule lets pass. */
export const isLet = ({ early, late }: Pick<Weighed, 'early' | 'late'>): boolean =>
	Math.max(early?.most ?? 0, late?.most ?? 0) <= rules['sensor.shade'].figures.early;

/** Where a spot cannot be. */
function impossible(faults: Faults): Finding[] {
	if (faults.insideHouse)
		return [
			say(
				'inside',
				'look',
				'The spot for the sensor lies inside the house. Move it to an outside wall or a post that sees the sky.'
			)
		];
	if (faults.offWall)
		return [
			say(
				'off-wall',
				'look',
				'The sensor is to hang on a wall, and no wall is near its spot. Move it to a wall or put it on a post.'
			)
		];
	return [];
}
/** ` They take 40 % of its sky and wake the lights 12 to 31 minutes early.` */
function costWords(weighed: Weighed, kind: string, id: string, many: boolean): string {
	const share = weighed.taken.find((one) => one.kind === kind && one.id === id)?.share ?? 0;
	const takes = many ? 'They take' : 'It takes';
	const shift = shiftWords(weighed);
	const passes = isLet(weighed) ? ', which is let pass' : '';
	return ` ${takes} ${partWords(share)} of its sky${shift ? `; it would ${shift}${passes}` : ''}.`;
}
/** The faults of a spot in words, but for the light on it; one finding each, a note where what it costs is let pass. */
export function shadeFindings(faults: Faults, weighed: Weighed, site: Site): Finding[] {
	const found = impossible(faults);
	if (faults.insideHouse) return found;
	const rank = isLet(weighed) ? 'note' : 'look';
	const length = (metres: number): string => formatLength(metres, site.units);
	if (faults.porch) {
		const the = calledThe(faults.porch.name, areaWords.porch);
		const costs = costWords(weighed, 'porch', faults.porch.id, false);
		found.push(
			say('porch', rank, `The sensor hangs under the roof of ${the}.${costs} Move it out from under the roof.`)
		);
	}
	for (const tree of faults.canopies) {
		const costs = costWords(weighed, 'tree', tree.id, false);
		const out = `Move it out past the drip line, ${length(tree.spread / 2)} from the trunk.`;
		found.push(
			say('canopy', rank, `The sensor hangs under the canopy of ${calledThe(tree.name, 'tree')}.${costs} ${out}`)
		);
	}
	if (faults.underEaves) {
		const lower = Math.max(0, faults.roofEdge! - rules['sensor.shade'].figures.fromEaves);
		const costs = costWords(weighed, 'eaves', 'eaves', true);
		found.push(
			say('eaves', rank, `The sensor hangs close under the eaves.${costs} Hang it no higher than ${length(lower)}.`)
		);
	}
	if (rank === 'look' && !isSheltered(faults)) found.push(inShade(weighed));
	return found;
}
/** In the shade of something that it does not hang under. */
function inShade(weighed: Weighed): Finding {
	const taken = takenWords(weighed.taken);
	const why = taken ? `: ${taken}` : '';
	const shift = shiftWords(weighed) ?? 'switch in the wrong light';
	return say(
		'shade',
		'look',
		`The sensor would ${shift}${why}. Hang it where it sees more of the sky, or turn its window.`
	);
}
