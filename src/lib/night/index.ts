/** The yard after dark as pictures: what a plan looks like, worked out from its light. Pure. */
export type * from './types';
export { luminancePicture, paintBands, type OnBand, type PictureOptions } from './picture';
export { develop, developer, type Developer } from './develop';
export { sceneOf } from './scene';
