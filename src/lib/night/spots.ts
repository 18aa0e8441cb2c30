/** What stands in the yard besides house and trees: garden walls, gate posts, gates, rails, treads. */
import { directionAt, leftOf, lineLength, moved, pointAt, rightOf, type Point } from '../domain/shared/geometry';
import { leafOf, postsOf, type Site, type Strip, type Wall } from '../domain/site';
import { bodyOf, panelOf, type Panel } from './panels';
import { stroke, type Stroke } from './strokes';

type Name = (kind: string, name: string) => number;
/** Thickness of a garden wall, height of gate posts, gates and rails, metres: our assumptions (rail: 0.86 to 0.97 m, from memory). */
const sizes = { wall: 0.3, post: 1.4, gate: 1.1, rail: 0.9 } as const;

function gardenWall(wall: Wall, surface: number): (Panel | null)[] {
	const back = (p: Point): Point => moved(p, wall.outward, -sizes.wall);
	const at = (p: Point, z: number) => ({ x: p.x, y: p.y, z });
	const { from, to, height } = wall;
	const [a, b] = [back(from), back(to)];
	return [
		panelOf([at(from, 0), at(to, 0), at(to, height), at(from, height)], surface, 'wall', wall),
		panelOf([at(a, 0), at(b, 0), at(b, height), at(a, height)], surface, 'stone'),
		panelOf([at(from, height), at(to, height), at(b, height), at(a, height)], surface, 'stone'),
		panelOf([at(a, 0), at(from, 0), at(from, height), at(a, height)], surface, 'stone'),
		panelOf([at(b, 0), at(to, 0), at(to, height), at(b, height)], surface, 'stone')
	];
}
/** Garden walls, gate posts, gates and signs. */
export function gardenPanels(site: Site, name: Name): Panel[] {
	const walls = site.walls.filter((wall) => wall.of === 'garden');
	const posts = site.strips.flatMap((strip) =>
		postsOf(strip).flatMap((ring) =>
			bodyOf(ring, 0, sizes.post, name('posts', `gate posts of the ${strip.name}`), 'post')
		)
	);
	const gates = site.strips.flatMap((strip) =>
		strip.gates.map((gate) => {
			const [a, b] = leafOf(strip, gate);
			const at = (p: Point, z: number) => ({ x: p.x, y: p.y, z });
			return panelOf(
				[at(a, 0.08), at(b, 0.08), at(b, sizes.gate), at(a, sizes.gate)],
				name('gate', `gate of the ${strip.name}`),
				'gate'
			);
		})
	);
	return [...walls.flatMap((wall) => gardenWall(wall, name('wall', wall.name))), ...posts, ...gates].filter(
		(panel) => panel !== null
	);
}

const iron = [0.06, 0.06, 0.065] as const;
/** Rails beside walks: a rail on posts 1.2 m apart. */
export function railStrokes(site: Site, name: Name): Stroke[] {
	return site.strips
		.filter((strip) => strip.rail !== 'none')
		.flatMap((strip) => {
			const surface = name('rail', `rail of the ${strip.name}`);
			const sides = strip.rail === 'both' ? [leftOf, rightOf] : [strip.rail === 'left' ? leftOf : rightOf];
			return sides.flatMap((side) => railAlong(strip, side, surface));
		});
}
function railAlong(strip: Strip, side: (a: Point) => Point, surface: number): Stroke[] {
	const length = lineLength(strip.centre);
	const pieces = Math.max(1, Math.min(200, Math.round(length / 1.2)));
	const place = (i: number): Point => {
		const at = (length * i) / pieces;
		return moved(pointAt(strip.centre, at), side(directionAt(strip.centre, at)), strip.width / 2 + 0.04);
	};
	const up = (p: Point, z: number) => ({ x: p.x, y: p.y, z });
	return Array.from({ length: pieces + 1 }, (_, i) => i).flatMap((i) => [
		stroke(up(place(i), 0), up(place(i), sizes.rail), 0.016, surface, iron),
		...(i < pieces
			? [0.45, 1].map((share) =>
					stroke(up(place(i), sizes.rail * share), up(place(i + 1), sizes.rail * share), 0.016, surface, iron)
				)
			: [])
	]);
}
