import type { Plan } from '../lib/domain/plan';
import { sizeName } from '../lib/domain/circuit';
import type { Finding } from '../lib/domain/shared/findings';
import { formatLength } from '../lib/domain/shared/units';

const table = (head: string[], rows: string[][]): string[] => {
	const widths = head.map((cell, column) => Math.max(cell.length, ...rows.map((row) => (row[column] ?? '').length)));
	const line = (cells: string[]) =>
		cells
			.map((cell, column) => cell.padEnd(widths[column] ?? 0))
			.join('  ')
			.trimEnd();
	return [line(head), line(widths.map((width) => '-'.repeat(width))), ...rows.map(line)];
};
const volts = (value: number | null) => (value === null ? 'none' : value.toFixed(2));

const fedAt = { end: 'its end', middle: 'a tee in its middle', hub: 'a hub' } as const;
const change = (cost: number, currency: string) =>
	Math.abs(cost) < 0.5 ? 'no change in cost' : `${currency} ${Math.abs(cost).toFixed(0)} ${cost < 0 ? 'less' : 'more'}`;
/** A finding, and under it what would put it right. */
const findingLines = ({ rank, message, advice = [] }: Finding, currency: string): string[] => [
	`${rank.toUpperCase().padEnd(4)} ${message}`,
	...advice.map(({ label, gives, cost }) => `       cure: ${label} (${change(cost, currency)}). ${gives}`)
];

/** The plan as text for a terminal: findings first, then fixtures, runs, hours, shopping. Lengths in the yard's units. */
export function report(plan: Plan, title: string): string {
	const length = (metres: number) => formatLength(metres, plan.site.units);
	const labels = new Map(plan.fixtures.map((fixture) => [fixture.id, fixture.label]));
	const { currency } = plan.shopping;
	const lines: string[] = [title, '='.repeat(title.length), ''];
	const section = (name: string, body: string[]) => {
		if (body.length > 0) lines.push(name, ...body.map((line) => `  ${line}`), '');
	};
	section(
		'Missing',
		plan.missing.map((item) => item.message)
	);
	section(
		'Findings',
		plan.findings.flatMap((finding) => findingLines(finding, currency))
	);
	section(
		'Fixtures',
		table(
			['label', 'what', 'along', 'out', 'why'],
			plan.fixtures.map((fixture) => [
				fixture.label,
				`${fixture.technique}, ${fixture.lamp.watts} W ${fixture.lamp.kind} ${fixture.lamp.beamAngle}°`,
				length(fixture.at.x),
				length(fixture.at.y),
				fixture.reasons.map((reason) => reason.rule).join(', ')
			])
		)
	);
	if (plan.supply)
		section('Supply', [
			`${plan.supply.ratedVoltAmps} VA, load ${plan.supply.loadVoltAmps.toFixed(1)} VA, along ${length(plan.supply.at.x)}, out ${length(plan.supply.at.y)}, bottom ${length(plan.supply.mountHeight)} above the ground`
		]);
	for (const run of plan.runs)
		section(
			`${run.name}: ${sizeName(run.cable)} on the ${run.tapVolts} V tap, fed at ${fedAt[run.feed]}, ${length(run.segments.reduce((sum, segment) => sum + segment.length, 0))} of cable`,
			table(
				['lamp', 'volts', 'lowest', 'highest'],
				run.nodes
					.filter((node) => node.fixture !== null)
					.map((node) => [
						labels.get(node.fixture!) ?? node.fixture!,
						volts(node.volts),
						volts(node.band?.low ?? null),
						volts(node.band?.high ?? null)
					])
			)
		);
	section(
		'Weighed and not taken',
		(plan.supply?.runnersUp ?? []).map(
			({ label, costDifference, why }) => `${label} (${change(costDifference, currency)}): ${why}`
		)
	);
	section('Hours', [
		`${plan.dusk.hoursPerYear.toFixed(0)} hours a year, ${plan.dusk.energy.toFixed(1)} kWh, ${plan.dusk.currency} ${plan.dusk.cost.toFixed(2)}`
	]);
	section(
		`Shopping, ${plan.shopping.currency} ${plan.shopping.total.toFixed(2)}`,
		table(
			['how many', 'what', 'cost'],
			plan.shopping.items.map((item) => [`${item.quantity} ${item.unit}`, item.name, item.cost.toFixed(2)])
		)
	);
	section(
		'Assumed',
		plan.assumptions.map((assumption) => assumption.message)
	);
	return lines.join('\n');
}
