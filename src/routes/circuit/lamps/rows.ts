/** The two plans side by side, as rows of three tables. */
import type { Comparison, Side } from '$lib/domain/compare';
import type { Working } from '$lib/domain/shared/working';
import { metresPerFoot, type UnitSystem } from '$lib/domain/shared/units';
import { sizeName } from '$lib/domain/circuit';
import { currencyWords } from '../../parts/words';
import { about, rangeWords, tied, valuesOf } from './words';

export interface Row {
	name: string;
	/** What the name does not say, small. */
	note?: string;
	/** Lines of a cell part at \n. */
	led: string;
	halogen: string;
	/** The row that the others lead to. */
	sum?: boolean;
	workings: { led: Working[]; halogen: Working[] };
}
export interface Table {
	id: string;
	title: string;
	rows: Row[];
}
type Figure = (side: Side) => string;
const none = 'not known';
/** Whole feet or metres: enough to compare by. */
const roughLength = (metres: number, units: UnitSystem): string =>
	units === 'feet' ? `${Math.round(metres / metresPerFoot)} ft` : `${Math.round(metres)} m`;
const ofSides =
	(comparison: Comparison) =>
	(
		name: string,
		figure: Figure,
		workings: (side: Side) => (Working | null | undefined)[] = () => [],
		more: { note?: string; sum?: boolean } = {}
	): Row => {
		const opened = (side: Side) => workings(side).filter((working) => working !== null && working !== undefined);
		const { led, halogen } = comparison;
		return {
			name,
			led: tied(figure(led)),
			halogen: tied(figure(halogen)),
			workings: { led: opened(led), halogen: opened(halogen) },
			...more
		};
	};
/** Both ends of a range, or the one where they say the same. */
const ends = ({ low, high }: { low: Working; high: Working }) => (low.value === high.value ? [low] : [low, high]);

function lightTable(comparison: Comparison): Table {
	const row = ofSides(comparison);
	const lamp = (one: Side['light']['lowest']) => (one ? `${one.percent.value} % (${one.label})` : none);
	const known = ({ unknown }: Side['light'], text: string) =>
		unknown.length > 0 && text !== none ? `${text}, without ${unknown.length}` : text;
	return {
		id: 'light',
		title: 'Lamps and light',
		rows: [
			row('Lamps', ({ plan }) => String(plan.fixtures.length)),
			row(
				'Watts as marked',
				({ watts }) => `${watts.value} W`,
				({ watts }) => [watts]
			),
			row(
				'Light at rated volts',
				({ light }) => `${light.rated.value} lm`,
				({ light }) => [light.rated],
				{ note: 'lumens, all lamps' }
			),
			row(
				'Light at the volts they get',
				({ light }) => known(light, light.real ? `${light.real.value} lm` : none),
				({ light }) => [light.real],
				{ sum: true }
			),
			row(
				'Dimmest lamp',
				({ light }) => lamp(light.lowest),
				({ light }) => [light.lowest?.percent],
				{ note: 'of its marked light' }
			),
			row(
				'Brightest lamp',
				({ light }) => lamp(light.highest),
				({ light }) => [light.highest?.percent]
			)
		]
	};
}
function circuitTable(comparison: Comparison, units: UnitSystem): Table {
	const row = ofSides(comparison);
	const volts = (value: number) => value.toFixed(2);
	return {
		id: 'circuit',
		title: 'Load, transformer and cable',
		rows: [
			row(
				'Load on the transformer',
				({ plan }) =>
					plan.supply ? `${plan.supply.loadVoltAmps.toFixed(0)} VA, ${plan.supply.loadWatts.toFixed(0)} W` : none,
				({ plan }) => [plan.supply?.working],
				{ note: 'cable losses included' }
			),
			row('Transformer needed', ({ plan }) => (plan.supply ? `${plan.supply.ratedVoltAmps} VA` : none)),
			row(
				'Cable laid',
				({ cable }) =>
					cable.sizes.map(({ size, metres }) => `${sizeName(size)}, ${roughLength(metres.value, units)}`).join('\n') ||
					'none',
				({ cable }) => cable.sizes.map(({ metres, size }) => ({ ...metres, label: `${sizeName(size)} laid` })),
				{ note: 'slack included' }
			),
			row(
				'Volts at the lamps',
				(side) => (side.volts ? `${rangeWords(side.volts.nominal, volts)} V` : none),
				({ volts: found }) => {
					const both = found ? [found.lowest, found.highest] : [];
					const named = both.map(({ label, working }) => working && { ...working, label: `Volts at ${label}` });
					return found?.lowest.label === found?.highest.label ? named.slice(0, 1) : named;
				}
			),
			row(
				'In the worst case',
				(side) => (side.volts?.worst ? `${rangeWords(side.volts.worst, volts)} V` : none),
				undefined,
				{
					note: 'lengths 10 % and mains 5 % out, copper hot or cold'
				}
			)
		]
	};
}
function costTable(comparison: Comparison): Table {
	const row = ofSides(comparison);
	const { currency } = comparison.led.plan.shopping;
	const money = (value: number) => currencyWords(value, currency);
	const rough = (value: number) => about(value, currency);
	const part = (name: string, of: (side: Side) => Working, more?: { note?: string; sum?: boolean }) =>
		row(
			name,
			(side) => money(of(side).value),
			(side) => [of(side)],
			more
		);
	const { years, led } = comparison;
	return {
		id: 'cost',
		title: 'What it costs',
		rows: [
			part('Fixtures with their lamps', ({ purchase }) => purchase.fixtures),
			part('Transformer', ({ purchase }) => purchase.transformer),
			part('Cable', ({ cable }) => cable.price),
			part('Spares', ({ purchase }) => purchase.spares),
			part('The rest', ({ purchase }) => purchase.rest, { note: 'connections, control, crossings' }),
			part('To buy', ({ purchase }) => purchase.total, { sum: true }),
			row(
				'Hours of light a year',
				({ plan }) => plan.dusk.hoursPerYear.toFixed(0),
				({ plan }) => [plan.dusk.working.hours]
			),
			row(
				'Energy a year',
				({ plan }) => `${plan.dusk.energy.toFixed(1)} kWh`,
				({ plan }) => [plan.dusk.working.energy]
			),
			row(
				'Power a year',
				({ plan }) => currencyWords(plan.dusk.cost, plan.dusk.currency),
				({ plan }) => [plan.dusk.working.cost],
				{ note: `at ${currencyWords(led.plan.dusk.perKwh, led.plan.dusk.currency)} a kWh` }
			),
			row(
				`Replaced in ${years} years`,
				({ replaced, plan, kind }) => {
					if (plan.fixtures.length > 0 && replaced.unknown.length === plan.fixtures.length) return none;
					const count = rangeWords(valuesOf(replaced.count), String);
					return `${count} ${kind === 'halogen' ? (count === '1' ? 'lamp' : 'lamps') : count === '1' ? 'fixture' : 'fixtures'}`;
				},
				({ replaced }) => ends(replaced.count),
				{ note: 'lives from memory, check' }
			),
			row(
				'Bought for that',
				({ replaced }) => rangeWords(valuesOf(replaced.cost), rough),
				({ replaced }) => ends(replaced.cost),
				{ note: 'once the spares are used' }
			),
			row(
				`Over ${years} years`,
				({ total, replaced }) =>
					`${replaced.unknown.length > 0 ? 'at least ' : ''}${rangeWords(valuesOf(total), rough)}`,
				({ total }) => ends(total),
				{ sum: true, note: 'present prices, no interest' }
			)
		]
	};
}

export const tablesOf = (comparison: Comparison, units: UnitSystem): Table[] => [
	costTable(comparison),
	lightTable(comparison),
	circuitTable(comparison, units)
];
