/** A source and a point: the light there. Knows nothing of yards. Metres, lumens, candela, lux. */
export { beam, beamExponent, everywhere, intensity, lambertian, pathHead, type Distribution } from './distribution';
export { illuminance, towards, type Source, type Vector } from './illuminance';
