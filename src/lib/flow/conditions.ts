/** What decides whether a question or a field is asked. Each takes the yard and the id of the item asked about. */
import type { Level, Yard } from '../domain/yard';

type Condition = (yard: Yard, item: string | null) => boolean;

const find = <T extends { id: string }>(list: readonly T[] | undefined, id: string | null): T | undefined =>
	list?.find((entry) => entry.id === id);
const lit = (light: Level | undefined) => light === 'soft' || light === 'bright';

export const treeIsLit: Condition = (yard, item) => lit(find(yard.trees, item)?.light);
export const gardenWallIsLit: Condition = (yard, item) => lit(find(yard.spots.walls, item)?.light);
export const walkIsLit: Condition = (yard, item) => (find(yard.walks, item)?.lights ?? 'none') !== 'none';
export const driveIsLit: Condition = (yard, item) => (find(yard.drives, item)?.lights ?? 'none') !== 'none';
export const driveIsLitAtBothEdges: Condition = (yard, item) => find(yard.drives, item)?.lights === 'both';
export const driveHasPosts: Condition = (yard, item) =>
	driveIsLit(yard, item) && find(yard.drives, item)?.posts === true;
export const receptacleMayExist: Condition = (yard) =>
	yard.power.receptacle !== undefined && yard.power.receptacle !== 'none';
export const cableByGauge: Condition = (yard) => yard.power.cable === 'awg';
export const cableByArea: Condition = (yard) => yard.power.cable === 'mm2';
const limited = (yard: Yard, by: 'fixtures' | 'money'): boolean =>
	yard.power.budget?.kind === by || yard.power.budget?.kind === 'both';
export const limitedInLights: Condition = (yard) => limited(yard, 'fixtures');
export const limitedInMoney: Condition = (yard) => limited(yard, 'money');
