/**
 * A change made on the drawing, as data, and the yard that it makes. Mouse, taps, keys and list all come through here, so the
 * same change makes the same yard, byte for byte once it is written.
 */
import type { Plan } from '$lib/domain/plan';
import type { Yard } from '$lib/domain/yard';
import { isYard } from '$lib/state/check';
import { changeDevice, isDevice } from './edits-devices';
import { changeFixture } from './edits-fixtures';
import { isListed } from './edits-kinds';
import { addListed, changeListed, gone, refused } from './edits-listed';
import type { Edit, Edited } from './edits-types';

/** Where what cannot be changed on the drawing is changed. */
export const elsewhere: Readonly<Record<string, string>> = {
	section: 'Parts of the front are set by their widths, under House: how wide the front is.',
	opening: 'Doors and windows are set by how far along their wall they are, under House.',
	porch: 'A porch is set by how far along the front it is, its width and its depth, under House.',
	steps: 'Steps are set by how far along their walk they begin, under Walks.',
	run: 'Cables follow their lights. To lay one another way, draw it on the page of its run.'
};

/** The yard with one change made, or why it cannot be made. Lengths are kept to a tenth of a millimetre. Pure; never throws. */
export function applied(yard: Yard, plan: Plan, edit: Edit): Edited {
	const edited = changed(yard, plan, edit);
	// The last word is the schema's: nothing that a file could not hold is taken.
	if (edited.ok && !isYard(edited.yard))
		return refused('The yard could not be saved with that change, so nothing was changed.');
	return edited;
}
function changed(yard: Yard, plan: Plan, edit: Edit): Edited {
	const key = edit.do === 'add' ? `${edit.kind}/` : edit.key;
	const cut = key.indexOf('/');
	const [kind, id] = [key.slice(0, cut), key.slice(cut + 1)];
	if (isListed(kind)) {
		return edit.do === 'add' ? addListed(yard, plan, kind, edit) : changeListed(yard, plan, kind, id, edit);
	}
	if (isDevice(kind)) return changeDevice(yard, plan, kind, edit);
	if (kind === 'fixture') return changeFixture(yard, plan, id, edit);
	return refused(elsewhere[kind] ?? gone);
}
