/** For tests: what must hold of lights on walls with an upper floor, a gable or a porch, checked with geometry of its own. */
import { rules } from '../shared/rules';
import type { Finding } from '../shared/findings';
import type { Site } from '../site';
import type { Fixture } from './index';

/** Everything wrong, in words; and how many lights were looked at in each way. */
export function upstairsFaults(
	site: Site,
	fixtures: readonly Fixture[],
	findings: readonly Finding[]
): { wrong: string[]; under: number; beside: number; gable: number } {
	const wrong: string[] = [];
	const { clear } = rules['wall.openings'].figures;
	const { mostLit } = rules['wall.setback'].figures;
	let [under, beside, gable] = [0, 0, 0];
	const ofHouse = site.walls.filter((wall) => wall.of === 'house' && wall.light !== 'none' && wall.length > 0);
	for (const wall of ofHouse) {
		const ux = (wall.to.x - wall.from.x) / wall.length;
		const uy = (wall.to.y - wall.from.y) / wall.length;
		const along = (p: { x: number; y: number }): number => (p.x - wall.from.x) * ux + (p.y - wall.from.y) * uy;
		const out = (p: { x: number; y: number }): number =>
			(p.x - wall.from.x) * wall.outward.x + (p.y - wall.from.y) * wall.outward.y;
		// A garden wall may be called as a side of the house is.
		const row = fixtures.filter(
			({ target, aim }) => target.kind === 'wall' && target.id === wall.id && Math.abs(out(aim!.point)) < 1e-6
		);
		for (const f of row) {
			const s = along(f.at);
			for (const { start, end, sill } of wall.openings) {
				if (s <= start - clear + 1e-6 || s >= end + clear - 1e-6) continue;
				if (sill < 2) wrong.push(`${f.id} before an opening`);
				else if (f.technique === 'wash') {
					under++;
					const edge = 90 - f.aim!.tilt + f.lamp.beamAngle / 2;
					const to = (Math.atan2(sill - f.height, out(f.at)) * 180) / Math.PI;
					if (edge > to + 1e-6) wrong.push(`${f.id} shines ${edge - to}° into an upper window`);
				}
			}
			for (const { kind, polygon } of site.areas) {
				const outs = polygon.map(out);
				if (kind !== 'porch' || Math.max(...outs) < 0.05 || Math.min(...outs) > 0.5) continue;
				beside++;
				const places = polygon.map(along);
				// One round the corner is not before this wall.
				if (Math.min(wall.length, Math.max(...places)) - Math.max(0, Math.min(...places)) <= 0.05) continue;
				if (s > Math.min(...places) - clear + 1e-6 && s < Math.max(...places) + clear - 1e-6)
					wrong.push(`${f.id} before a porch`);
			}
			const top = wall.peak === null ? wall.height : Math.max(wall.height, wall.peak);
			if (f.aim!.point.z > Math.min(top, mostLit) + 1e-6) wrong.push(`${f.id} is aimed over the roof`);
		}
		if (wall.peak === null || row.length === 0 || Math.min(wall.peak, mostLit) - wall.height < 0.3) continue;
		const up = row.filter(({ aim }) => aim!.point.z > wall.height + 1e-6);
		gable += up.length;
		const said = findings.some(({ code, about }) => code === 'placement.gable-dark' && about?.id === wall.id);
		if (up.length > 0 === said)
			wrong.push(`gable of ${wall.id}: ${up.length} lights, ${said ? 'said dark' : 'unsaid'}`);
		if (up.length > 2) wrong.push(`gable of ${wall.id}: ${up.length} lights`);
	}
	return { wrong, under, beside, gable };
}
