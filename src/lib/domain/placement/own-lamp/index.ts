/** Real lamps, by their photometric files, in place of lamps of the list. */
export { faultOf } from './check';
export { ownLampAssumptions, ownLampFindings } from './findings';
export { withoutOwnLamp, withOwnLamp } from './list';
export { modelsAlike, ownLightOf, ownModels, type OwnLight } from './models';
export { ownLampOf, type OwnLampRead } from './read';
