/** What a fixture is called on lists: its model, and a lamp of the person's own that is in it. */
import { fixtureModels, type Lamp } from './catalogue';

const names = new Map(fixtureModels.map(({ id, name }) => [id, name]));

/** `Wall wash on a stake with your own lamp: …` where the lamp is one's own: the list's watts and beam are not its then. */
export function modelName(model: string, lamp?: Pick<Lamp, 'measured'>): string {
	const name = names.get(model) ?? model;
	return lamp?.measured ? `${name.split(',')[0]} with your own lamp: ${lamp.measured.name}` : name;
}
