export { pixelsApart, placed, toPicture, toYard, type Matrix, type Placed } from './placed';
export { bySecondPlace, measured, offBy, type SecondPlace } from './fit';
