/** What the plan says and takes for granted of the person's own lamps. */
import { fixtureModels } from '../../shared/catalogue';
import type { Assumption, Finding } from '../../shared/findings';
import type { OwnLamp, Yard } from '../../yard';
import type { Fixture } from '../types';
import { faultOf } from './check';
import { ownLightOf, ownName } from './models';

const known = new Set(fixtureModels.map(({ id }) => id));
const about = ({ id }: OwnLamp): Finding['about'] => ({ kind: 'lamp', id });

/** One for each lamp that cannot be used as it is told. */
export function ownLampFindings({ power }: Pick<Yard, 'power'>): Finding[] {
	const taken = new Map<string, OwnLamp>();
	return (power.lamps ?? []).flatMap((own): Finding[] => {
		const find = (rank: Finding['rank'], message: string): Finding[] => [
			{ code: 'lamp.own', rank, message, about: about(own), rule: null }
		];
		const named = `Your own lamp “${ownName(own)}”`;
		const fault = faultOf(own);
		if (fault !== null)
			return find(
				'look',
				`${named} ${fault}. The lamps of the list are taken instead. Open its file again on the page After dark, or take it away there.`
			);
		const models = own.for.filter((id) => known.has(id));
		if (models.length === 0)
			return find(
				'note',
				`${named} stands for no lamp of the list, so it is not used. Say on the page After dark which lights it is for.`
			);
		const other = models.map((id) => taken.get(id)).find((one) => one !== undefined);
		for (const id of models) if (!taken.has(id)) taken.set(id, own);
		return other
			? find(
					'note',
					`${named} and “${ownName(other)}” are both meant for the same lights: “${ownName(other)}” is taken there.`
				)
			: [];
	});
}

/** How a lamp that is not alike all round is turned in its fixture: no file can say. */
export function ownLampAssumptions({ power }: Pick<Yard, 'power'>, fixtures: readonly Fixture[]): Assumption[] {
	const used = new Set(fixtures.flatMap(({ lamp }) => (lamp.measured ? [lamp.measured] : [])));
	return (power.lamps ?? []).flatMap((own) => {
		const measured = ownLightOf(own)?.measured;
		if (!measured || !used.has(measured) || own.symmetry === 'rotational') return [];
		const message = `“${ownName(own)}” throws more light one way than another: its plane C0 is taken to point up, or away from the house where it looks straight down.`;
		return [{ path: 'power.lamps', message, about: about(own) }];
	});
}
