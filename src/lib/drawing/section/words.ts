import type { Box, Line, Point } from '../../domain/shared/geometry';
import { formatLength } from '../../domain/shared/units';
import { placeLabels, type LabelWish } from '../labels';
import type { TextMark } from '../marks';
import { between } from '../path';
import { ray, reachOf, up, type Place } from './place';

/** The words of the section, each where it covers least; the light's own label first. */
export function words(place: Place, symbol: number, box: Box): TextMark[] {
	const { look, eye, tree, fixture, units, px, label } = place;
	const lamp = up(look.lamp.s, look.lamp.z);
	const { far, r } = reachOf(place);
	const wish = (key: string, text: string, anchors: Point[], clear: number, ink: LabelWish['ink']): LabelWish => ({
		key,
		text,
		anchors,
		clear: clear * px,
		size: label,
		ink,
		bold: false,
		optional: false
	});
	const wishes: LabelWish[] = [
		{ ...wish('lamp-label', fixture.label, [lamp], symbol + 1, 'house'), bold: true },
		wish('angle-words', `${Math.abs(Math.round(look.lean))}° from upright`, [ray(look, look.lean / 2, r)], 5, 'house')
	];
	const lines: Line[] = [
		[lamp, ray(look, look.lean, far)],
		...[-0.5, 0.5].map((half): Line => [lamp, ray(look, look.lean + half * look.beam, 2 * far)]),
		[up(0, 0), up(0, tree.crownBase)]
	];
	if (look.watcher && eye) {
		const at = up(eye.s, look.watcher.z);
		const off = eye.drawnNearer ? `eye, ${formatLength(look.watcher.far, units)} off` : 'eye';
		lines.push([lamp, at], [at, up(eye.s, 0)]);
		wishes.push(
			wish('eye-words', off, [at], 5, 'action'),
			wish(
				'off-words',
				`${Math.round(look.watcher.off)}° off the beam`,
				[0.5, 0.4, 0.65].map((t) => between(at, lamp, t)),
				3,
				'action'
			)
		);
	}
	const ground = [
		{ x: box.minX, y: 0 },
		{ x: box.maxX, y: 0 }
	];
	const round = (p: Point, far: number): Box => ({
		minX: p.x - far * px,
		maxX: p.x + far * px,
		minY: p.y - far * px,
		maxY: p.y + far * px
	});
	// Under the ground the distance from the bark is measured.
	const below = { minX: box.minX, maxX: box.maxX, minY: 2 * px, maxY: box.maxY };
	return placeLabels(wishes, { boxes: [round(lamp, symbol), below], near: [], lines, walls: [ground] }, px, box);
}
