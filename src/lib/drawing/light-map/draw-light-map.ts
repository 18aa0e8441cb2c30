/** The plan after dark, seen from above: horizontal lux on the ground in false colour under the yard in quiet ink. */
import type { LightMap } from '../../domain/light';
import type { Plan } from '../../domain/plan';
import type { Box, Point } from '../../domain/shared/geometry';
import { drawFixtures } from '../fixtures';
import { sizesFor } from '../frame';
import { drawHouse } from '../house';
import { textWidth, type LabelWish } from '../labels';
import type { Drawing, Mark } from '../marks';
import { closedPath } from '../path';
import { drawPaving } from '../paving';
import { drawPlanting } from '../planting';
import { drawFurniture, drawGround, gridFor } from '../sheet';
import { drawIsolux, labelIsolux, quiet } from './isolux';

const round = (at: Point, r: number): Box => ({ minX: at.x - r, maxX: at.x + r, minY: at.y - r, maxY: at.y + r });

/** The house lies over the light: none of it is on the ground there. */
function houseMarks({ site }: Plan): Mark[] {
	if (site.house.length < 3) return quiet(drawHouse(site));
	const cover: Mark = {
		kind: 'path',
		key: 'house-cover',
		d: closedPath(site.house),
		ink: 'house',
		weight: 0,
		fill: 'sheet'
	};
	const [open, rest] = [drawHouse(site), [] as Mark[]];
	for (const mark of open) rest.push(...(mark.key.startsWith('porch-') ? quiet([mark]) : [mark]));
	return [cover, ...rest];
}

/** `box`: the part of the yard shown, metres; the map should cover it. `widthPx` sets the size of symbols and words. */
export function drawLightMap(plan: Plan, map: LightMap, box: Box, widthPx: number): Drawing {
	const { site, fixtures } = plan;
	const wide = Math.max(160, widthPx);
	const px = (box.maxX - box.minX) / wide;
	const sizes = { ...sizesFor(wide), symbol: sizesFor(wide).symbol * 0.8 };
	const isolux = drawIsolux({ ...map, values: map.lux }, 'ground');
	const furniture = drawFurniture(site, box, px, sizes, []);
	const first: LabelWish[] = fixtures.map((fixture) => ({
		key: `label-${fixture.id}`,
		text: fixture.label,
		anchors: [fixture.at],
		clear: sizes.symbol * px,
		size: sizes.label * 0.92,
		ink: 'house',
		bold: true,
		optional: false
	}));
	const symbols = fixtures.map(({ at }) => round(at, (sizes.symbol + 1.5) * px));
	const bars = furniture.flatMap((mark): Box[] => {
		if (mark.kind === 'north') return [round(mark.at, mark.size * 1.4 * px)];
		if (mark.kind === 'scale-bar')
			return [{ minX: mark.at.x, maxX: mark.at.x + mark.length, minY: mark.at.y - 20 * px, maxY: mark.at.y + 8 * px }];
		const half = mark.kind === 'text' ? textWidth(mark.text, mark.size) * 0.75 * px : 0;
		return mark.kind === 'text' ? [round(mark.at, half)] : [];
	});
	const names = labelIsolux(isolux.lines, first, {
		boxes: [...symbols, ...bars],
		px,
		within: box,
		size: sizes.name
	});
	const ground = drawGround(site, box).filter(({ key }) => key !== 'grid' && key !== 'street');
	return {
		box,
		px,
		sizes,
		grid: gridFor(site, px),
		layers: [
			{ id: 'light', marks: isolux.fills },
			{ id: 'ground', marks: ground },
			{ id: 'paving', marks: quiet(drawPaving(site)) },
			{ id: 'planting', marks: quiet(drawPlanting(site, px)) },
			{ id: 'emphasis', marks: isolux.strokes },
			{ id: 'house', marks: houseMarks(plan) },
			{ id: 'devices', marks: drawFixtures(fixtures, site.faces, sizes) },
			{ id: 'names', marks: names },
			{ id: 'sheet', marks: furniture }
		]
	};
}
