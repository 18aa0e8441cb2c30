import type { Point } from '../shared/geometry';
import { emptyLedger, placeFacts, type Yard } from '../yard';
import { makeAreas } from './areas';
import { existingLights, houseNumbers } from './existing';
import { gardenWalls } from './garden-walls';
import { makeHouse } from './house';
import { impossible } from './impossible';
import { boundsOf, makeLot } from './lot';
import { withMeetings } from './meetings';
import { withOpenings } from './openings';
import { pavedAreas } from './paved';
import { makeReceptacle } from './receptacle';
import { makeStrips } from './strips';
import type { Survey } from './survey';
import { makeTrees } from './trees';
import type { Site } from './types';

/**
 * The yard as geometry: metres, x along the house front, y out towards the street, every fact resolved. Total for any yard
 * valid by `yardSchema`: what is not told yet is left out or taken by a default, and said in `missing` and `assumptions`;
 * what cannot be is kept as told and said in `findings`.
 */
export function makeSite(yard: Yard): Site {
	const ledger = emptyLedger();
	const place = placeFacts(yard, ledger);
	const survey: Survey = { yard, units: place.units, ledger, findings: [] };
	const house = makeHouse(survey);
	const houseWalls = withOpenings(survey, house);
	const laid = makeStrips(survey);
	const lot = makeLot(survey, house, laid);
	const strips = withMeetings(laid, lot);
	const trees = makeTrees(survey, strips, house.outline, lot.street);
	const areas = [...makeAreas(survey, house), ...pavedAreas(survey)];
	const freeWalls = gardenWalls(
		survey,
		strips,
		lot.street,
		houseWalls.map((wall) => wall.id)
	);
	const site: Omit<Site, 'bounds'> = {
		...place,
		house: house.outline,
		eaves: house.eaves,
		walls: [...houseWalls, ...freeWalls],
		trees,
		strips,
		areas,
		existing: existingLights(survey),
		houseNumber: houseNumbers(survey),
		...lot,
		receptacle: makeReceptacle(survey, house),
		findings: survey.findings,
		assumptions: ledger.assumptions,
		missing: ledger.missing
	};
	impossible(survey, site);
	return { ...site, bounds: boundsOf(site, toldSpots(yard)) };
}
/** Where the person said that transformer and sensor hang. */
function toldSpots(yard: Yard): Point[] {
	return [yard.power.transformer, yard.power.sensor].flatMap((spot) =>
		typeof spot === 'object' ? [{ x: spot.at.along, y: spot.at.out }] : []
	);
}
