import { against, handbookStages, thumbStages } from './causes';
import { handbookOhms, tidy } from './figures';
import { formulaWorking, handbookRows } from './handbook';
import { legsOf, metresOf, total, wayTo, type ByKind, type Leg } from './legs';
import { evenConstant, thumbConstant, thumbWorking } from './thumb';
import type { ByHand, HandOptions, HandRun } from './types';

/**
 * A run redone the two ways in which it is done by hand, and by how much each differs from the plan at the lowest lamp, cause by
 * cause; causes sum to the difference.
 *
 * Handbook: segment by segment from the label of the tap, 2 × R × L × I, each lamp at its marked volt-amperes ÷ 12 V. R for AWG is
 * NEC Chapter 9 Table 8, stranded, 75 °C; for mm² 0.0225 Ω·mm²/m ÷ S (IEC 60364-5-52:2009 Annex G). Rule of thumb: volt-amperes of the
 * run × length to the lamp ÷ a constant by size (`thumb.ts`).
 *
 * Null where there is nothing to add up by hand: no lamp, or no tree (a ring, a part cut off).
 */
export function byHand(run: HandRun, { units }: HandOptions): ByHand | null {
	const legs = legsOf(run);
	if (!legs) return null;
	const rows = handbookRows(run, legs, units);
	const farTo = (node: number) => metresOf(wayTo(node, legs));
	const lamps = rows.filter(({ isLamp }) => isLamp);
	const least = Math.min(...lamps.map(({ volts }) => volts));
	const lowest = lamps
		.filter(({ volts }) => volts === least)
		.toSorted((a, b) => farTo(b.to) - farTo(a.to))
		.at(0);
	if (!lowest) return null;
	const way = wayTo(lowest.to, legs);
	const metres = metresOf(way);
	const voltAmps = tidy(legs.filter(({ from }) => from === 0).reduce((sum, leg) => sum + total(leg.voltAmps), 0));
	const thumb = thumbConstant(run.size, units);
	const rule = thumbWorking(run.tapVolts, voltAmps, metres, thumb, units);
	const { planVolts } = lowest;
	const isSolved = planVolts !== null && run.nodes[0]!.volts !== null && legs.every((leg) => leg.planAmps !== null);
	const planned = (leg: Leg): ByKind => leg.planAmps!;
	const constant = { taken: thumb.value, even: evenConstant(run.size, units) };
	return {
		lowest: { node: lowest.to, metres },
		handbook: {
			basis: run.size.system === 'awg' ? 'table8' : 'annexG',
			ohms: handbookOhms(run.size, units),
			rows,
			volts: lowest.volts,
			byFormula: formulaWorking(run, way, units),
			against: isSolved ? against(planVolts, handbookStages(run, way, planned)) : null
		},
		thumb: {
			voltAmps,
			constant: thumb,
			volts: rule.value,
			working: rule,
			against: isSolved ? against(planVolts, thumbStages(run, way, { planned, voltAmps, rule, constant })) : null
		}
	};
}
