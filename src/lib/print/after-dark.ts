/** The sheet "After dark": its map's size on paper, and the few rows and remarks that are looked after on the first night. */
import { lightField, lightMap, type Glare, type LightMap, type Receiver } from '../domain/light';
import type { Plan } from '../domain/plan';
import { maintained } from '../domain/photometry';
import type { Box } from '../domain/shared/geometry';
import { calledThe } from '../domain/yard';
import { screenFrame } from '../drawing/frame';

/** Millimetres: what the map may take of the sheet, so that table and words go on the same page. */
const mapRoom = { wide: 106, high: 112 } as const;
/** Cells of the map, about: lines stay smooth on paper, and it is there at once. */
const cells = 16_000;
/** Rows that the page has room for, and lamps that dazzle. */
const [mostRows, mostGlare] = [9, 3];
/** Light of a new and clean lamp over that which the plan counts: rule light.maintained. */
export const whenNew = 1 / maintained();

export interface MapOnPaper {
	box: Box;
	/** Size on paper, millimetres. */
	width: number;
	height: number;
}
export function mapOnPaper(plan: Plan): MapOnPaper {
	const box = screenFrame(plan);
	const shape = (box.maxX - box.minX) / (box.maxY - box.minY);
	const width = Math.min(mapRoom.wide, mapRoom.high * shape);
	return { box, width, height: width / shape };
}
/** Light on the ground of the box, lux, and a cell more all round, so that its lines run to the edge. */
export function mapOf({ site, fixtures, runs }: Plan, box: Box): LightMap {
	const step = Math.max(0.1, Math.sqrt(((box.maxX - box.minX) * (box.maxY - box.minY)) / cells));
	const around = { minX: box.minX - step, minY: box.minY - step, maxX: box.maxX + step, maxY: box.maxY + step };
	return lightMap(lightField(site, fixtures, runs), around, step);
}

/** Judged by its brightest place. */
export const isSpill = ({ kind }: Pick<Receiver, 'kind'>): boolean =>
	kind === 'boundary' || kind === 'neighbour-window';
/** What lands where, in the plan's order: of the boundaries and of the windows next door the brightest one; what is not right comes first to be kept. */
export function litRows({ light }: Plan): { rows: Receiver[]; more: number } {
	const brightest = (kind: Receiver['kind']): Receiver | null =>
		light.receivers
			.filter((one) => one.kind === kind)
			.reduce<Receiver | null>((best, one) => (best && best.most >= one.most ? best : one), null);
	const [boundary, neighbour] = [brightest('boundary'), brightest('neighbour-window')];
	const all = light.receivers.filter(
		(one) => one === boundary || one === neighbour || (!isSpill(one) && one.kind !== 'crown' && one.kind !== 'sensor')
	);
	const urgent = ({ verdict }: Receiver): number => (verdict === 'right' ? 1 : verdict === 'no-aim' ? 2 : 0);
	const kept = new Set(all.toSorted((a, b) => urgent(a) - urgent(b)).slice(0, mostRows));
	return { rows: all.filter((one) => kept.has(one)), more: all.length - kept.size };
}
export const verdictWords: Record<Receiver['verdict'], string> = {
	right: 'right',
	short: 'too little',
	patchy: 'uneven',
	'too-bright': 'too bright',
	spills: 'too much gets there',
	'no-aim': '—'
};
/** `5 to 20`, `5 or more`, `at most 2`; lux. */
export function aimText({ aim }: Receiver): string {
	if (!aim) return '—';
	const { low, high } = aim;
	if (low !== null && high !== null) return `${low} to ${high}`;
	return low !== null ? `${low} or more` : high !== null ? `at most ${high}` : '—';
}

/** Bare lamps that dazzle somebody, the worst first, each once. */
export function dazzling({ light }: Plan): { list: Glare[]; more: number } {
	const strong = light.glare
		.filter(({ bare, remedy }) => bare && remedy !== null)
		.toSorted((a, b) => b.candela - a.candela);
	const once = strong.filter((one, i) => strong.findIndex(({ fixture }) => fixture === one.fixture) === i);
	return { list: once.slice(0, mostGlare), more: Math.max(0, once.length - mostGlare) };
}
/** Where the eye is, for `seen …`. */
export function eyeText({ site }: Plan, { kind, id }: Glare['eye']): string {
	const strip = site.strips.find((one) => one.id === id);
	const area = site.areas.find((one) => one.id === id);
	if (kind === 'walk') return `on ${calledThe(strip?.name ?? '', 'walk')}`;
	if (kind === 'drive') return `at the wheel on ${calledThe(strip?.name ?? '', 'drive')}`;
	return kind === 'seat' ? `seated at ${calledThe(area?.name ?? '', 'seating place')}` : 'from a window of the house';
}
