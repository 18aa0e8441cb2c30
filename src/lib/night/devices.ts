/** Small things on walls and posts: house numbers, signs, and the transformer's box. Metres. */
import type { Plan } from '../domain/plan';
import { moved, nearestOnSegment, rightOf, sidesOf, unit, type Point } from '../domain/shared/geometry';
import { rules } from '../domain/shared/rules';
import type { Site } from '../domain/site';
import { bodyOf, type Panel } from './panels';
import { stroke, type Stroke } from './strokes';

type Name = (kind: string, name: string) => number;
type Sign = Site['houseNumber'][number];
/** A thing this near a wall hangs on it. */
const hangs = 0.6;
/** Width (of a number; a sign has its own), height and thickness: our assumptions. */
const plate = { number: 0.36, tall: { number: 0.2, sign: 0.5 }, thick: 0.04 } as const;
/** Middle of a number on a post of its own, as its lamp is reckoned. */
const onPost = 1;
const box = { wide: 0.26, tall: 0.42, deep: 0.16 } as const;

/** The side of a wall that a thing hangs on: its foot on the face and the way out of it; null where it stands free. */
function faceAt({ walls, house }: Site, at: Point): { foot: Point; out: Point } | null {
	const front = walls.map(({ from, to, outward }) => ({ ...nearestOnSegment(at, from, to), out: outward }));
	// The back of the house has no wall of its own.
	const sides = sidesOf(house).map(([a, b]) => {
		const near = nearestOnSegment(at, a, b);
		const away = { x: at.x - near.point.x, y: at.y - near.point.y };
		const along = unit({ x: b.x - a.x, y: b.y - a.y });
		const right = rightOf(along);
		const turn = away.x * right.x + away.y * right.y < 0 ? -1 : 1;
		return { ...near, out: { x: right.x * turn, y: right.y * turn } };
	});
	const near = [...front, ...sides].reduce<(typeof front)[number] | null>(
		(best, one) => (one.distance < (best?.distance ?? hangs) - 1e-9 ? one : best),
		null
	);
	return near && { foot: near.point, out: near.out };
}
/** The body of a flat thing that lies against a face. */
function against(
	{ foot, out }: { foot: Point; out: Point },
	[wide, thick]: readonly [number, number],
	[low, high]: readonly [number, number],
	surface: number,
	material: Panel['material']
): Panel[] {
	const along = rightOf(out);
	const ring = [
		[-1, 0],
		[1, 0],
		[1, 1],
		[-1, 1]
	].map(([side, off]) => moved(moved(foot, along, (side! * wide) / 2), out, off! * thick));
	return bodyOf(ring, low, high, surface, material);
}
const signSurface = (sign: Sign, name: Name): number =>
	name('sign', sign.name || (sign.kind === 'sign' ? 'sign' : 'house number'));
function placed(site: Site, sign: Sign): { face: { foot: Point; out: Point }; free: boolean; middle: number } {
	const face = faceAt(site, sign.at);
	const onFace = rules['number.light'].figures.number;
	const onPosts = sign.kind === 'sign' ? rules['number.sign'].figures.middle : onPost;
	const middle = face ? onFace : onPosts;
	// On posts it is taken to look at the street.
	return { face: face ?? { foot: sign.at, out: { x: 0, y: 1 } }, free: !face, middle };
}
export function signPanels(site: Site, name: Name): Panel[] {
	return site.houseNumber.flatMap((sign) => {
		const { face, middle } = placed(site, sign);
		const wide = sign.kind === 'sign' ? sign.width : plate.number;
		const tall = plate.tall[sign.kind];
		return against(face, [wide, plate.thick], [middle - tall / 2, middle + tall / 2], signSurface(sign, name), 'sign');
	});
}
const wood = [0.16, 0.12, 0.09] as const;
/** The posts of signs that stand free. */
export function signPosts(site: Site, name: Name): Stroke[] {
	return site.houseNumber.flatMap((sign) => {
		const { face, free, middle } = placed(site, sign);
		if (!free) return [];
		const top = middle + plate.tall[sign.kind] / 2;
		return [-1, 1].map((side) => {
			const foot = moved(face.foot, rightOf(face.out), side * ((sign.width || plate.number) / 2 + 0.04));
			return stroke({ ...foot, z: 0 }, { ...foot, z: top + 0.06 }, 0.04, signSurface(sign, name), wood);
		});
	});
}
/** The box on the wall, its lower edge as high as the plan hangs it; away from any wall it is drawn where it is. */
export function supplyPanels({ supply, site }: Plan, name: Name): Panel[] {
	if (!supply) return [];
	const face = faceAt(site, supply.at) ?? { foot: supply.at, out: { x: 0, y: 1 } };
	const low = supply.mountHeight;
	return against(face, [box.wide, box.deep], [low, low + box.tall], name('transformer', 'transformer'), 'box');
}
