/** What is in a line, in a few words: `6 path lights, 120 VA transformer, 100 ft of 16 AWG`. */
import { sizeName } from '$lib/domain/circuit';
import type {
	Contents,
	FixtureKind,
	LineKind,
	ShelfCable,
	ShelfFixture,
	ShelfTransformer
} from '$lib/domain/kits/types';
import { formatLength } from '$lib/domain/shared/units';

const kinds: Record<FixtureKind, [one: string, many: string]> = {
	spot: ['spot', 'spots'],
	well: ['well light', 'well lights'],
	wash: ['wall wash', 'wall washes'],
	path: ['path light', 'path lights'],
	marker: ['drive marker', 'drive markers'],
	step: ['step light', 'step lights']
};
/** `path light`. */
export const fixtureName = (kind: FixtureKind): string => kinds[kind][0];
export const fixtureKinds = Object.keys(kinds) as FixtureKind[];

/** Kinds of line in the order of the page. */
export const lineKinds: readonly LineKind[] = ['kit', 'fixture', 'transformer', 'cable', 'connectors'];
export const lineKindWords: Record<LineKind, { one: string; many: string }> = {
	kit: { one: 'Kit', many: 'Kits' },
	fixture: { one: 'Fixture', many: 'Fixtures' },
	transformer: { one: 'Transformer', many: 'Transformers' },
	cable: { one: 'Cable', many: 'Cable' },
	connectors: { one: 'Connectors', many: 'Connectors' }
};

const counted = (count: number, [one, many]: readonly [string, string]) => `${count} ${count === 1 ? one : many}`;
/** Gauges are sold by the foot, cross-sections by the metre. */
const cableLength = ({ size, metres }: ShelfCable) =>
	formatLength(metres, size.system === 'awg' ? 'feet' : 'metres').replace(/\.?0+ m$/, ' m');
const lampWords = ({ lamp }: ShelfFixture): string =>
	[
		`${lamp.source === 'led' ? 'LED' : 'halogen'} ${lamp.watts} W`,
		`${lamp.lumens} lm`,
		lamp.beam === null ? '' : `${lamp.beam}°`,
		`${lamp.minVolts} to ${lamp.maxVolts} V`
	]
		.filter(Boolean)
		.join(', ');
const tapWords = (taps: readonly number[]) =>
	taps.length > 1 ? `taps ${taps[0]} to ${taps.at(-1)} V` : `one tap, ${taps[0]} V`;
const supplyWords = ({ voltAmps, taps }: ShelfTransformer) => `${voltAmps} VA, ${tapWords(taps)}`;

/** Of a loose line: its own figures; of a kit: what comes in it, with how many. */
export function contentsWords(kind: LineKind, { fixtures, transformer, cable, connectors }: Contents): string {
	const loose = kind !== 'kit';
	const parts = [
		...fixtures.map(({ fixture, count }) =>
			loose && count === 1
				? `${fixtureName(fixture.kind)}, ${lampWords(fixture)}`
				: `${counted(count, kinds[fixture.kind])}${loose ? `, ${lampWords(fixture)}` : ''}`
		),
		transformer ? `${loose ? '' : 'transformer '}${supplyWords(transformer)}` : '',
		...cable.map((one) => `${one.count === 1 ? '' : `${one.count} × `}${cableLength(one)} of ${sizeName(one.size)}`),
		connectors > 0 ? counted(connectors, ['connector', 'connectors']) : ''
	].filter(Boolean);
	return parts.join(loose ? ', ' : '; ') || 'nothing in it';
}
