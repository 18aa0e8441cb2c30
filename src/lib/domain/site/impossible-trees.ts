import { distance, distanceToPolygon } from '../shared/geometry';
import { calledThe, capital } from '../yard';
import { distanceToStrip } from './ground';
import type { Told } from './impossible';
import { measure, report, tape, type Survey } from './survey';
import type { Tree } from './types';

/** A tree stands in open ground, inside the lot, in a place of its own. */
export function treeStands(survey: Survey, site: Told, tree: Tree): void {
	const the = capital(calledThe(tree.name, 'tree'));
	const about = { kind: 'tree', id: tree.id };
	if (distanceToPolygon(tree.at, site.house) < 0) {
		report(
			survey,
			'stop',
			'tree-in-house',
			about,
			`${the} stands inside the house. Check how far along and how far out its trunk is.`
		);
		return;
	}
	const strip = site.strips.find((candidate) => distanceToStrip(tree.at, candidate) < 0);
	if (strip) {
		const message = `${the} stands in ${calledThe(strip.name, strip.kind)}. Check where its trunk is, or the edge of the paving.`;
		report(survey, 'stop', 'tree-in-paving', about, message);
	}
	const area = site.areas.find(
		({ kind, polygon }) => (kind === 'water' || kind === 'porch') && distanceToPolygon(tree.at, polygon) < 0
	);
	if (area?.kind === 'water') {
		const message = `${the} stands in ${calledThe(area.name, area.sort ?? 'water')}. Check where both are.`;
		report(survey, 'stop', 'tree-in-water', about, message);
	} else if (area) {
		report(survey, 'look', 'tree-in-porch', about, `${the} stands in the porch. Check how far out its trunk is.`);
	}
	inOnePlace(survey, site, tree, the);
	outsideLot(survey, site, tree, the);
}
function inOnePlace(survey: Survey, site: Told, tree: Tree, the: string): void {
	const earlier = site.trees.slice(0, site.trees.indexOf(tree));
	const twin = earlier.find((other) => distance(other.at, tree.at) < (other.trunkDiameter + tree.trunkDiameter) / 2);
	if (!twin) return;
	const message = `${the} stands in the same place as ${calledThe(twin.name, 'tree')}. Check both.`;
	report(survey, 'look', 'trees-in-one-place', { kind: 'tree', id: tree.id }, message);
}
/** Only against limits that were told: a guessed boundary proves nothing. */
function outsideLot(survey: Survey, site: Told, tree: Tree, the: string): void {
	const { lot } = survey.yard;
	const told = (limit: unknown): boolean => typeof limit === 'number';
	const beyond = [
		{ limit: lot.street, by: tree.at.y - site.street, what: 'the edge of the street' },
		{ limit: lot.left, by: site.leftBoundary - tree.at.x, what: 'the left boundary' },
		{ limit: lot.right, by: tree.at.x - site.rightBoundary, what: 'the right boundary' }
	].find(({ limit, by }) => told(limit) && by > tape);
	if (!beyond) return;
	const message = `${the} stands ${measure(survey, beyond.by)} beyond ${beyond.what}. Light it only if it is yours to light; otherwise check where it is.`;
	report(survey, 'look', 'tree-outside-lot', { kind: 'tree', id: tree.id }, message);
}
