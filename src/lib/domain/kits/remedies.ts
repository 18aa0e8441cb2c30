/** What to add to a kit or change in it so that its circuit passes. */
import { fewerLights, secondRun } from './remedies-runs';
import { fromShelf, type Case } from './remedies-shelf';

/**
 * The cheapest loose cable or transformer of the shelf, or both, that makes it pass; where none does, a second cable for its far
 * lights; where that does not either, the lights to leave out. Each is solved before it is said. Null where nothing that was tried helps.
 */
export const remedyFor = (one: Case): string | null => fromShelf(one) ?? secondRun(one) ?? fewerLights(one);
