import { rules } from '../shared/rules';

/** Part of a new lamp's light that is left on an ordinary night, faded and dirty: rule light.maintained. */
export function maintained(): number {
	const { lumens, dirt } = rules['light.maintained'].figures;
	return lumens * dirt;
}
