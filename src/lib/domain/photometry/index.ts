/** A source and a point: the light there. Knows nothing of yards. Metres, lumens, candela, lux. */
export { beam, beamExponent, everywhere, intensity, lambertian, pathHead, type Distribution } from './distribution';
export type { Photometry } from './types';
export { maintained } from './maintained';
export { photometryOf, stepLaw, symmetricLaw } from './laws';
export { candelaToward, sourceFrame, type SourceFrame } from './frame';
export { tableLumens, tablePhotometry, turned, type CandelaTable, type Symmetry } from './table';
export { tableBeam, type TableBeam } from './table-beam';
export { measuredPhotometry, tableOfMeasured } from './measured';
export { thinned, type Thinned, type ThinLimits } from './thin';
export type { FileAbout, FileRead, FileRefused, FileResult } from './files/reading';
export { readLm63 } from './files/lm63';
export { writeLm63 } from './files/lm63-write';
export { readEulumdat } from './files/eulumdat';
export { writeEulumdat } from './files/eulumdat-write';
export { illuminance, towards, type Source, type Vector } from './illuminance';
