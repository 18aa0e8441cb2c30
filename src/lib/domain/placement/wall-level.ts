/** How bright a wall should be, and with which lamp: rule wall.level. Lux at the middle of the lit height. */
import type { FixtureModel } from '../shared/catalogue';
import { rules } from '../shared/rules';
import type { Level } from '../yard';
import type { WallLevel } from './wall-words';

export interface Band {
	low: number;
	high: number;
}

/**
 * The band for a wall by its surroundings and finish. A suburb counts as dark, the dimmer reading; a dark finish, for which
 * the tables have no column, as medium.
 */
export function wallBand(surroundings: 'rural' | 'suburb' | 'town', finish: 'light' | 'medium' | 'dark'): Band {
	const { darkLow, darkHighLight, darkHighMedium, brightLow, brightHighLight, brightHighMedium } =
		rules['wall.level'].figures;
	if (surroundings === 'town') return { low: brightLow, high: finish === 'light' ? brightHighLight : brightHighMedium };
	return { low: darkLow, high: finish === 'light' ? darkHighLight : darkHighMedium };
}

/** Part of the way up the band, in equal steps of ratio as the eye has it: our working value. */
const aimed = { soft: 1 / 3, bright: 2 / 3 } as const;

/** What is aimed at inside the band, lux. */
export const wallAim = ({ low, high }: Band, wish: Exclude<Level, 'none'>): number => low * (high / low) ** aimed[wish];

/**
 * The lamp whose light comes nearest to the aim, by ratio. `luxPerLumen`: lux on the wall for each lumen of a lamp, the
 * same for all of them since they share a beam. `models`: at least one.
 */
export function lampForWall(models: readonly FixtureModel[], luxPerLumen: number, aim: number): FixtureModel {
	const off = ({ lamp }: FixtureModel) => Math.abs(Math.log((lamp.lumens * luxPerLumen) / aim));
	return models.reduce((best, model) => (off(model) < off(best) ? model : best));
}

/** How many times as bright as the row the wall under a gable's light may be before the row follows: our assumption, well inside rule wall.spacing. */
const outstanding = 2;

/**
 * The lamp for a row by the lights up into its gable, and its lux on the wall at mid-height. Beside a light for the gable, which
 * lights the wall below it too, the row is brighter, within its band, so that the middle does not stand out.
 */
export const rowLevels =
	(models: readonly FixtureModel[], luxPerLumen: number, band: Band, aim: number) =>
	(up: readonly { below: number }[]): WallLevel => {
		const beside = Math.max(0, ...up.map(({ below }) => below)) / outstanding;
		const model = lampForWall(models, luxPerLumen, Math.min(Math.max(aim, beside), band.high));
		return { model, lux: luxPerLumen * model.lamp.lumens, ...band };
	};
