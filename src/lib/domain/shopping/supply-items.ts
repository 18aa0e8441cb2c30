import { transformers } from '../shared/catalogue';
import { item } from './item';
import { material, type Basis } from './goods';
import type { ShoppingItem } from './types';

/** Two screws at each of the transformer's two brackets, two for the sensor, two for a fixture on a wall or riser. */
const anchorsFor = { transformer: 4, sensor: 2, fixture: 2 } as const;

function transformerItem({ cabling, yard, prices }: Basis): ShoppingItem[] {
	const supply = cabling.supply;
	if (!supply) return [];
	const model = transformers.find((one) => one.id === supply.model);
	const owned = yard.power.owned?.transformerVoltAmps;
	const load = `${Math.ceil(supply.loadVoltAmps)} VA of lamps and cable losses`;
	if (owned !== undefined && owned >= supply.ratedVoltAmps) {
		const why = `Carries ${load}. You have it already.`;
		return [
			item({
				id: 'transformer-in-hand',
				group: 'supply',
				name: `Transformer in hand, ${owned} VA`,
				quantity: 1,
				unit: 'each',
				price: 0,
				why
			})
		];
	}
	const small = owned === undefined ? '' : ` The one in hand, ${owned} VA, is too small.`;
	return [
		item({
			id: supply.model,
			group: 'supply',
			name: model?.name ?? `Transformer, ${supply.ratedVoltAmps} VA`,
			quantity: 1,
			unit: 'each',
			price: prices(supply.model, model?.price ?? 0),
			why: `Carries ${load}, within 80 % of its rating.${small}`
		})
	];
}
/** Transformer, control and what they hang on. */
export function supplyItems(basis: Basis): ShoppingItem[] {
	const { site, fixtures, cabling, yard, prices, sensor } = basis;
	const { supply } = cabling;
	const cover =
		site.receptacle?.inUseCover === false
			? material(
					'in-use-cover',
					'supply',
					1,
					'The receptacle has no cover that closes over a plug. Fitting it is mains work: for a licensed electrician where code says so.',
					prices
				)
			: [];
	if (!supply) return cover;
	const hours = yard.power.hours;
	const allNight = hours !== undefined && hours !== 'unsure' && hours.kind === 'dusk-to-dawn';
	const onWall = supply.on === 'wall' ? anchorsFor.transformer : 0;
	const sensorOnWall = sensor?.on === 'wall' ? anchorsFor.sensor : 0;
	const surface = fixtures.filter((fixture) => fixture.mount === 'surface').length;
	const ownPost =
		sensor?.on === 'post' &&
		!(supply.on === 'post' && Math.hypot(sensor.at.x - supply.at.x, sensor.at.y - supply.at.y) < 0.3);
	const posts = (supply.on === 'post' ? 1 : 0) + (ownPost ? 1 : 0);
	const postFor = [supply.on === 'post' ? 'the transformer' : '', ownPost ? 'the sensor' : '']
		.filter(Boolean)
		.join(' and one for ');
	const anchors = [
		onWall ? `${onWall} for the transformer` : '',
		sensorOnWall ? `${sensorOnWall} for the sensor` : '',
		surface ? `${anchorsFor.fixture} for each of ${surface} fixtures on a wall or riser` : ''
	].filter(Boolean);
	return [
		...transformerItem(basis),
		...material('photocell', 'supply', 1, 'Switches the lights on at dusk.', prices),
		...material(
			'timer',
			'supply',
			allNight ? 0 : 1,
			'Switches the lights off again before dawn. Leave it out if the transformer has one built in.',
			prices
		),
		...material('post', 'supply', posts, `One for ${postFor}.`, prices),
		...material(
			'wall-anchor',
			'supply',
			onWall + sensorOnWall + surface * anchorsFor.fixture,
			`${anchors.join(', ')}.`,
			prices
		),
		...cover
	];
}
