/** The plan's lists as tables for other programs: figures as plain SI numbers, and beside them the words a person reads. */
import { crossingText, aimOf, modelName, nodeNames, targetName } from '../words';
import { stakesOf } from '../stakes';
import { sizeName } from '../../domain/circuit';
import type { Plan } from '../../domain/plan';
import { formatLength } from '../../domain/shared/units';

export type Cell = string | number | null;
/** Rows all have the same keys, which are the head row; a key with a unit at its end holds numbers in that unit. */
export type Table = Record<string, Cell>[];
export type TableId = 'fixtures' | 'cable' | 'shopping' | 'stakes';

/** Decimals that can be measured: millimetres, hundredths of a volt, tenths of a degree. */
const to =
	(decimals: number) =>
	(value: number | null | undefined): number | null =>
		value === null || value === undefined ? null : Math.round(value * 10 ** decimals) / 10 ** decimals || 0;
const [mm, hundredth, tenth] = [to(3), to(2), to(1)];

function fixtures(plan: Plan): Table {
	const { units, faces } = plan.site;
	const fed = new Map(
		plan.runs.flatMap((run) =>
			run.nodes.flatMap((node) => (node.fixture ? [[node.fixture, { run: run.name, volts: node.volts }] as const] : []))
		)
	);
	return plan.fixtures.map((fixture) => {
		const { lamp, at, aim } = fixture;
		return {
			label: fixture.label,
			lights: targetName(plan, fixture),
			technique: fixture.technique,
			model: modelName(fixture.model, lamp),
			lamp: lamp.kind,
			power_W: lamp.watts,
			load_VA: lamp.voltAmps,
			flux_lm: lamp.lumens,
			beam_deg: lamp.beamAngle,
			colour_K: lamp.colourTemperature,
			along_m: mm(at.x),
			out_m: mm(at.y),
			along: formatLength(at.x, units),
			out: formatLength(at.y, units),
			bearing_deg: tenth(aim?.bearing),
			tilt_deg: tenth(aim?.tilt),
			aim: aimOf(fixture, faces),
			run: fed.get(fixture.id)?.run ?? null,
			expected_V: hundredth(fed.get(fixture.id)?.volts)
		};
	});
}
function cable(plan: Plan): Table {
	return plan.runs.flatMap((run) => {
		const names = nodeNames(run, plan.fixtures);
		const nodes = new Map(run.nodes.map((node) => [node.id, node]));
		return run.segments.map((segment) => {
			const node = nodes.get(segment.to);
			return {
				run: run.name,
				from: names.get(segment.from) ?? segment.from,
				to: names.get(segment.to) ?? segment.to,
				cable: sizeName(run.cable),
				tap_V: run.tapVolts,
				length_m: mm(segment.length),
				length: formatLength(segment.length, plan.site.units),
				crosses: crossingText(segment, plan),
				expected_V: hundredth(node?.volts),
				lowest_V: hundredth(node?.band?.low),
				highest_V: hundredth(node?.band?.high)
			};
		});
	});
}
const shopping = ({ shopping: { items, currency } }: Plan): Table =>
	items.map((item) => ({
		group: item.group,
		name: item.name,
		quantity: item.quantity,
		unit: item.unit,
		unit_price: hundredth(item.unitPrice),
		cost: hundredth(item.cost),
		currency,
		what_for: item.why
	}));
function stakes(plan: Plan): Table {
	const length = (metres: number | null) => (metres === null ? '' : formatLength(metres, plan.site.units));
	return stakesOf(plan).map(({ label, what, at, left, right, check }, index) => ({
		order: index + 1,
		stake: label,
		lights: what,
		along_m: mm(at.x),
		out_m: mm(at.y),
		from_left_corner_m: mm(left),
		from_right_corner_m: mm(right),
		along: length(at.x),
		out: length(at.y),
		from_left_corner: length(left),
		from_right_corner: length(right),
		check_first: check ? 'yes' : ''
	}));
}
const makers: Record<TableId, (plan: Plan) => Table> = { fixtures, cable, shopping, stakes };
export const tableOf = (plan: Plan, id: TableId): Table => makers[id](plan);
