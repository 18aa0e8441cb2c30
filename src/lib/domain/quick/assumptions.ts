/** What was made up, in plain words, each with the path of its answer in the yard. */
import { rules } from '../shared/rules';
import { formatLength } from '../shared/units';
import { sizes } from './frame';
import { lampReach, pool as poolSize } from './ground';
import type { Made } from './made';
import { near } from './receptacle';
import { treeSizes } from './trees';
import type { QuickAssumption, Shape } from './types';

const waterClear = rules['water.clear'].figures.clear;
type Say = (path: string, words: string) => void;
type Length = (metres: number) => string;

const shapeWords: Record<Shape, string> = {
	straight: 'The walk is drawn straight from the street to the door, level and without steps.',
	bent: 'The walk is drawn with one bend of 45 degrees, level and without steps.',
	corner: 'The walk is drawn from the drive along the front and round to the door, level and without steps.',
	deep: 'The walk is drawn straight from where the drive ends to the door, level and without steps.'
};
function ofHouse({ frame, depth, answers }: Made, say: Say, length: Length): void {
	say(
		'house.sections',
		`The front is drawn ${length(frame.width)} wide, one straight line${answers.wall > 0 ? '' : ', and no wall of it is lit'}. Another front moves the lights, not their number, as long as what is lit is as long.`
	);
	say('house.openings', `A door ${length(sizes.door)} wide is drawn where the walk ends, with a window beside it.`);
	say('house.depth', `The house is drawn ${length(depth)} deep; no light stands behind it.`);
	if (answers.wall === 0) return;
	say(
		'house.eaves',
		`The eaves are taken as ${length(sizes.eaves)} up. Higher walls want lights further off, and fewer of them.`
	);
	say('house.finish', 'The wall is taken as neither light nor dark, and smooth. A dark or rough one wants more light.');
	say(
		'house.openings.front-door',
		'No window or door lies in the stretch of wall that is lit. Where one does, lights stand beside it and not before it.'
	);
}
function ofWays({ frame, answers }: Made, say: Say, length: Length): void {
	if (frame.walk.length > 0) {
		const shape = answers.shape === 'corner' && frame.walk.length < 3 ? 'straight' : answers.shape;
		say('walks.front-walk.line', `${shapeWords[shape]} Steps want lights of their own.`);
		say('walks.front-walk.width', `The walk is taken as ${length(sizes.walk)} wide.`);
		say(
			'walks.front-walk.lights',
			'Lights go along one side of the walk, the receptacle’s, so that no cable has to pass under it. On both sides in turn they light it more evenly.'
		);
	}
	for (const { id, lit } of frame.drives) {
		say(
			`drives.${id}.line`,
			lit
				? 'The drive is drawn as long as the edge that is marked, with a pair of lights at the street and the rest on the side of the house.'
				: 'A drive that nobody lights is drawn where the walk or the cable meets it.'
		);
		say(`drives.${id}.width`, `The drive is taken as ${length(sizes.drive)} wide, one car.`);
	}
	if (frame.crossing)
		say(
			`drives.${frame.crossing.drive}.crossings`,
			`Cable crosses the drive by one bore, ${length(sizes.drive)} wide. A sleeve that is there, or a joint in the paving, saves the boring.`
		);
	else if (answers.drive > 0)
		say(
			'drives.drive.crossings',
			'No sleeve under the drive is known. The light on its far side at the street is reached by a bore, or round its end.'
		);
}
function ofTrees({ trees, frame }: Made, say: Say, length: Length): void {
	for (const { id, name, kind } of trees) {
		const { spread, height } = treeSizes[kind];
		say(
			`trees.${id}`,
			`The ${name} is taken as ${length(spread)} across and ${length(height)} tall, round, in mown lawn, looked at from the street. In a bed its lights stand on stakes; wider, it wants more of them.`
		);
	}
	if (trees.length > 0)
		say(
			'trees',
			`The trees are drawn in front of the house, clear of the walk${frame.drives.length > 0 ? ' and the drive' : ''}. Where they stand decides how much cable they take: pace it out before you cut any.`
		);
}
function ofSpots({ answers: { clear, units }, lot }: Made, say: Say, length: Length): void {
	if (clear.includes('pool'))
		say(
			'spots.water.pool',
			`The pool is drawn beside the house on the left, ${length(poolSize.along)} by ${length(poolSize.out)}. No light and no transformer comes within ${formatLength(waterClear, units)} of its edge; ask where it really is.`
		);
	if (clear.includes('street-lamp'))
		say(
			'spots.lights.street-lamp',
			`The street lamp is drawn at the street, beside the way in, and taken to light the ground ${length(lampReach)} around it. What it lights gets no light of its own.`
		);
	if (clear.includes('neighbour'))
		say(
			'lot.right',
			`The boundary on the right is drawn ${length(lot.right)} from the house, with a neighbour’s window on it. If it is on the left, all of it is the mirror image.`
		);
	else
		say('lot.left', 'Boundaries are drawn clear of all lights. Ask whether a neighbour’s window is nearer than that.');
}
function ofPower({ receptacle, answers, frame }: Made, say: Say, length: Length): void {
	const where = {
		front: 'on the front of the house',
		side: 'on the left side of the house',
		garage: 'on a garage beyond the drive'
	}[receptacle.on];
	const { way } = receptacle;
	const isOff = way !== null && Math.abs(way - answers.receptacle) > near;
	const far =
		way === null
			? ''
			: `, about ${length(way)} along the ground from the nearest light; cable takes slack on top of that`;
	const asked = isOff
		? ` You said ${length(answers.receptacle)}; with what is lit here, no place comes nearer to that.`
		: '';
	say('power.receptacle', `The receptacle is drawn ${where}${far}.${asked}`);
	if (frame.garage)
		say('spots.walls.garage', 'A garage wall is drawn beyond the drive for the receptacle and the transformer.');
	say(
		'power.gfci',
		'Nobody has said that the receptacle is GFCI-protected and has a cover that closes over the plug. Without both a licensed electrician comes first.'
	);
	say('power.transformer', 'The transformer hangs where the plan suggests, on the wall near the receptacle.');
}

/** In the order in which a person would ask. */
export function assumptionsOf(made: Made, scale: number): QuickAssumption[] {
	const { answers, frame } = made;
	const list: QuickAssumption[] = [];
	const say: Say = (path, words) => void list.push({ path, words });
	const length: Length = (metres) => formatLength(metres * scale, answers.units);
	ofWays(made, say, length);
	say('lot.street', `The street is drawn ${length(frame.street)} from the front.`);
	ofHouse(made, say, length);
	ofTrees(made, say, length);
	ofSpots(made, say, length);
	ofPower(made, say, length);
	say(
		'place.location',
		'Where the house is was not asked. Dusk and the hours of light are worked out for latitude 40 north until it is told.'
	);
	say('place.faces', 'The front is taken to face south, in a suburb.');
	return list;
}
