/** Plan -> drawing. Pure: the same plan and width give the same marks. */
import type { Box } from '../domain/shared/geometry';
import type { Plan } from '../domain/plan';
import { drawCables } from './cables';
import { drawEmphasis, type Highlight } from './dimensions';
import { drawDevices, drawFixtures, drawGlow } from './fixtures';
import { frameOf, sizesFor } from './frame';
import { drawHouse } from './house';
import type { Drawing, Mark, Sizes, TextMark } from './marks';
import { drawNames } from './names';
import { boxAround } from './path';
import { drawPaving } from './paving';
import { drawPlanting, rootZone } from './planting';
import { drawFurniture, drawGround, gridFor } from './sheet';
import { boxOfText, meets, textWidth } from './labels';

export interface DrawOptions {
	/** Width of the drawing as shown, px (1/96 in on paper). */
	widthPx: number;
	highlight?: Highlight | null;
	/** Root zones of all trees, not only of the one in hand. */
	roots?: boolean;
	/** Without it, only the yard: no glow round the fixtures (paper). */
	glow?: boolean;
	/** A thumbnail: no words and no furniture, which would crowd it. */
	bare?: boolean;
	sizes?: Sizes;
	/** The part of the yard shown, metres; the whole when absent. */
	box?: Box;
}

/** Room that a mark of the furniture or a dimension takes, so that no word is set over it. */
export function roomOf(mark: Mark, px: number, label: number): Box | null {
	if (mark.kind === 'north') {
		const r = mark.size * 1.4 * px;
		return { minX: mark.at.x - r, maxX: mark.at.x + r, minY: mark.at.y - r, maxY: mark.at.y + r };
	}
	if (mark.kind === 'scale-bar')
		return { minX: mark.at.x, maxX: mark.at.x + mark.length, minY: mark.at.y - 20 * px, maxY: mark.at.y + 8 * px };
	if (mark.kind === 'dimension') {
		const middle = { x: (mark.from.x + mark.to.x) / 2, y: (mark.from.y + mark.to.y) / 2 };
		const w = (textWidth(mark.text, label) / 2 + 4) * px;
		const h = (label / 2 + 3) * px;
		return { minX: middle.x - w, maxX: middle.x + w, minY: middle.y - h, maxY: middle.y + h };
	}
	return null;
}

function busyBoxes(plan: Plan): Box[] {
	const { site } = plan;
	return [
		...site.strips.map((strip) => boxAround(strip.polygon)),
		...site.areas.map((area) => boxAround(area.polygon)),
		boxAround(site.house),
		...site.trees.map(({ at, spread }) => ({
			minX: at.x - spread / 2,
			maxX: at.x + spread / 2,
			minY: at.y - spread / 2,
			maxY: at.y + spread / 2
		})),
		...plan.fixtures.map(({ at }) => ({ minX: at.x - 0.5, maxX: at.x + 0.5, minY: at.y - 0.5, maxY: at.y + 0.5 })),
		...site.existing.map(({ at }) => ({ minX: at.x - 0.5, maxX: at.x + 0.5, minY: at.y - 0.5, maxY: at.y + 0.5 }))
	].filter((box): box is Box => box !== null);
}

interface View {
	box: Box;
	px: number;
	sizes: Sizes;
}
/** Names as they stand with nothing in hand, for the last view of each plan: placing them is most of the work of a drawing. */
const standing = new WeakMap<Plan, { view: string; names: TextMark[] }>();
/**
 * Names clear of the furniture and of the dimensions of what is in hand. An obstacle more only makes places dearer that it covers: where it covers none
 * of the names as they stand, each would be placed where it stands.
 */
function namesFor(
	plan: Plan,
	{ box, px, sizes }: View,
	furniture: readonly Box[],
	emphasis: readonly Box[]
): TextMark[] {
	const view = JSON.stringify([box, px, sizes]);
	let kept = standing.get(plan);
	if (kept?.view !== view) {
		kept = { view, names: drawNames(plan, box, px, sizes, furniture) };
		standing.set(plan, kept);
	}
	const isCovered = kept.names.some((name) => emphasis.some((one) => meets(one, boxOfText(name, px))));
	return isCovered ? drawNames(plan, box, px, sizes, [...emphasis, ...furniture]) : kept.names;
}

/** The drawing of a plan. All geometry in metres; `widthPx` sets the size of symbols and words, never of the yard. */
export function drawPlan(plan: Plan, options: DrawOptions): Drawing {
	const { site } = plan;
	const box = options.box ?? frameOf(plan);
	const widthPx = Math.max(160, options.widthPx);
	const px = (box.maxX - box.minX) / widthPx;
	const sizes = options.sizes ?? sizesFor(widthPx);
	const emphasis = drawEmphasis(options.highlight ?? null, { plan, box, px, sizes });
	const furniture = drawFurniture(site, box, px, sizes, busyBoxes(plan));
	const roomsOf = (marks: readonly Mark[]) =>
		marks.map((mark) => roomOf(mark, px, sizes.label)).filter((b): b is Box => b !== null);
	return {
		box,
		px,
		sizes,
		grid: gridFor(site, px),
		layers: [
			{ id: 'ground', marks: drawGround(site, box) },
			{ id: 'paving', marks: drawPaving(site) },
			{ id: 'house', marks: drawHouse(site) },
			{ id: 'planting', marks: [...drawPlanting(site, px), ...(options.roots ? site.trees.map(rootZone) : [])] },
			{ id: 'light', marks: options.glow === false ? [] : drawGlow(plan.fixtures, px) },
			{ id: 'cable', marks: drawCables(plan.runs, px) },
			{ id: 'emphasis', marks: emphasis },
			{ id: 'devices', marks: [...drawDevices(plan, px, sizes), ...drawFixtures(plan.fixtures, site.faces, sizes)] },
			{
				id: 'names',
				marks: options.bare ? [] : namesFor(plan, { box, px, sizes }, roomsOf(furniture), roomsOf(emphasis))
			},
			{ id: 'sheet', marks: options.bare ? [] : furniture }
		]
	};
}

/** One sentence for those who hear the drawing rather than see it. */
export function describePlan(plan: Plan): string {
	const { site } = plan;
	const count = (n: number, one: string, many = `${one}s`) => (n === 0 ? [] : [`${n} ${n === 1 ? one : many}`]);
	const parts = [
		...(site.house.length > 0 ? ['the house at the top'] : []),
		...count(site.trees.length, 'tree'),
		...count(site.strips.filter((strip) => strip.kind === 'walk').length, 'walk'),
		...count(site.strips.filter((strip) => strip.kind === 'drive').length, 'drive'),
		...count(site.areas.length, 'other area'),
		...count(plan.fixtures.length, 'fixture'),
		...count(plan.runs.length, 'cable run'),
		...(plan.supply ? ['the transformer'] : [])
	];
	return parts.length === 0
		? 'An empty sheet, the street at the bottom. What you measure is drawn here.'
		: `Seen from above, the street at the bottom: ${parts.join(', ')}.`;
}
