/** What the circuit comes to, in words. */
import type { Plan } from '$lib/domain/plan';
import type { Finding } from '$lib/domain/shared/findings';
import { lampsOf } from './runs';

/** What the plan has to say about cable, volts and supply. */
export const circuitFindings = ({ findings }: Plan): Finding[] =>
	findings.filter(
		({ code, about }) =>
			/^(cable|circuit|supply|run)/.test(code) || ['run', 'power', 'supply'].includes(about?.kind ?? '')
	);

const counted = (count: number, one: string, many: string) => (count === 1 ? one : `${count} ${many}`);

/** The page's heading: the gravest thing first, and what is sound said as plainly. */
export function circuitHeading(plan: Plan): string {
	if (!plan.supply || plan.runs.length === 0) return 'Nothing to feed yet';
	const lamps = plan.runs.flatMap((run) => lampsOf(run, plan.fixtures));
	if (lamps.some(({ volts }) => volts === null)) return 'This circuit has no solution yet';
	const out = lamps.filter(({ fault }) => fault?.nominal);
	if (out.length > 0)
		return counted(out.length, `${out[0]!.name} is outside its window`, 'lamps are outside their window');
	const stops = circuitFindings(plan).filter(({ rank }) => rank === 'stop').length;
	if (stops > 0)
		return `Every lamp has the volts it wants, but ${counted(stops, 'one thing', 'things')} must be put right`;
	const worst = lamps.filter(({ fault, low, high }) => fault || low === null || high === null);
	if (worst.length > 0)
		return `Every lamp has the volts it wants; in the worst case ${counted(worst.length, `${worst[0]!.name} does not`, 'do not')}`;
	return 'Every lamp is inside its window, worst case included';
}
