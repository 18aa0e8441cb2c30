/** The light of a lamp of the person's own: the table of its photometric file, as a lamp of the catalogue carries it. */
import type { MeasuredLight } from '../shared/catalogue';
import { tablePhotometry, type CandelaTable } from './table';
import type { Photometry } from './types';

/** As the rest of the room has tables. `light`: angles ascending, and as many candela as angles times planes. */
export const tableOfMeasured = ({ vertical, horizontal, symmetry, candela }: MeasuredLight): CandelaTable => ({
	vertical,
	horizontal,
	symmetry,
	candela: Float64Array.from(candela)
});

const kept = new WeakMap<MeasuredLight, Photometry>();
/** Its photometry, axis along the beam; one for each table, however many lamps carry it. */
export function measuredPhotometry(light: MeasuredLight): Photometry {
	const known = kept.get(light);
	if (known) return known;
	const photometry = tablePhotometry(tableOfMeasured(light));
	kept.set(light, photometry);
	return photometry;
}
